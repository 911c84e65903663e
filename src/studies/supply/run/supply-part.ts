import type { WardScenario } from "../../../scenario/index.ts";
import type { Blocked, Moments } from "../../../statistics/index.ts";
import { blocksIn, FrequencyTable, Histogram, mergeEach, partsOf } from "../../../statistics/index.ts";
import { supplyLayout } from "./layout.ts";

/** Replications are summed in blocks of this many, which are merged by index. */
export const wardBlock = 5;

export const wardBlocked = ({ replications }: WardScenario): Blocked => ({ size: wardBlock, replications });

/** How many blocks a ward's replications make. */
export const wardBlocks = (ward: WardScenario): number => blocksIn(wardBlocked(ward));

/** What is counted of a ward, by the places of its layout: it merges exactly, in any order. */
export class SupplyCounts {
	readonly layout;
	readonly tallies: readonly FrequencyTable[];
	readonly measures: readonly Histogram[];

	constructor(ward: WardScenario) {
		this.layout = supplyLayout(ward);
		this.tallies = Array.from({ length: this.layout.tallies }, () => new FrequencyTable());
		this.measures = this.layout.measures.map((width) => new Histogram(width));
	}

	merge({ tallies, measures }: Readonly<ReturnType<SupplyCounts["parts"]>>): void {
		mergeEach(this.tallies, tallies);
		mergeEach(this.measures, measures);
	}

	parts() {
		return { tallies: partsOf(this.tallies), measures: partsOf(this.measures) };
	}
}

/** What a span of blocks comes to; plain data, fit for a thread or a file. */
export interface SupplyPart extends Readonly<ReturnType<SupplyCounts["parts"]>> {
	readonly firstBlock: number;
	readonly replications: number;
	/** By block, then by place in the layout's measures. */
	readonly sums: readonly (readonly Moments[])[];
}

/** Parts that follow each other from `firstBlock` on, as one part: what the threads of one machine made. The same bytes for any number of threads. */
export function mergedPart(ward: WardScenario, parts: readonly SupplyPart[], firstBlock: number): SupplyPart {
	const counts = new SupplyCounts(ward);
	const inOrder = parts.toSorted((a, b) => a.firstBlock - b.firstBlock);
	for (const part of inOrder) counts.merge(part);
	const { tallies, measures } = counts.parts();
	return {
		firstBlock,
		replications: inOrder.reduce((sum, part) => sum + part.replications, 0),
		sums: inOrder.flatMap(({ sums }) => sums),
		tallies,
		measures: measures.map(({ width, bins }) => ({ width, bins: bins.toSorted((a, b) => a.bin - b.bin) })),
	};
}
