import type { WardScenario } from "../scenario/index.ts";
import { Histogram } from "./histogram.ts";
import type { SupplyPart } from "./supply-collector.ts";
import { supplyLayout } from "./supply-layout.ts";
import { Tally } from "./tally.ts";

/** Parts that follow each other from `firstBlock` on, as one part: what the threads of one machine made. The same bytes for any number of threads. */
export function mergedPart(
	ward: WardScenario,
	parts: readonly SupplyPart[],
	firstBlock: number,
): SupplyPart {
	const layout = supplyLayout(ward);
	const tallies = Array.from({ length: layout.tallies }, () => new Tally());
	const measures = layout.measures.map((width) => new Histogram(width));
	const inOrder = [...parts].sort((a, b) => a.firstBlock - b.firstBlock);
	for (const part of inOrder) {
		part.tallies.forEach((one, i) => {
			tallies[i].merge(one);
		});
		part.measures.forEach((one, i) => {
			measures[i].merge(one);
		});
	}
	return {
		firstBlock,
		replications: inOrder.reduce((sum, part) => sum + part.replications, 0),
		sums: inOrder.flatMap(({ sums }) => sums),
		tallies: tallies.map((tally) => tally.parts()),
		measures: measures.map((histogram) => {
			const { width, bins } = histogram.parts();
			return { width, bins: [...bins].sort((a, b) => a.bin - b.bin) };
		}),
	};
}
