import type { Scenario } from "../../scenario/index.ts";
import type { HistogramParts, VectorMomentsParts } from "../../statistics/index.ts";
import { Histogram, partsOf, replicationsIn, VectorMoments } from "../../statistics/index.ts";
import { TherapyDay } from "../../therapy/index.ts";
import { measureFact, measureNames } from "../../vocabulary/index.ts";
import { blocked } from "../day/collector.ts";
import { MeasureReader, ownersOf } from "./measure-reader.ts";

/**
 * A study: scenarios that are run on the same random numbers. Arms of one group meet in every replication, so that their
 * differences are paired; an arm may stand in many groups (the regimen that all others are held against).
 */
export interface Study {
	readonly arms: readonly Scenario[];
	/** Places in `arms`. */
	readonly groups: readonly (readonly number[])[];
	/** Whether the values are kept in histograms too, for quantiles. */
	readonly detailed: boolean;
}

/** One group over the blocks `first` … `last` − 1. */
export interface StudyTask {
	readonly group: number;
	readonly first: number;
	readonly last: number;
}

/** What one block of one group comes to; vectors run over owners, then measures. */
export interface StudyBlock {
	readonly arms: readonly VectorMomentsParts[];
	/** Differences a − b for every pair a < b of the group, in the order (0,1), (0,2), …, (1,2), … */
	readonly pairs: readonly VectorMomentsParts[];
	/** Replications in which a has more, in which b has more. */
	readonly higher: readonly (readonly number[])[];
	readonly lower: readonly (readonly number[])[];
}

export interface StudyPart {
	readonly task: StudyTask;
	readonly blocks: readonly StudyBlock[];
	/** By arm, and by pair, then value; empty where the study is not detailed. */
	readonly armCounts: readonly (readonly HistogramParts[])[];
	readonly pairCounts: readonly (readonly HistogramParts[])[];
}

/** Volumes that should be equal are equal within this, mL; no count, time or share that matters is smaller. */
const equalWithin = 1e-9;

/** Pairs of places of a group of `size`, in the order in which their differences are kept. */
export function pairsOf(size: number): (readonly [number, number])[] {
	const places = Array.from({ length: size }, (_, i) => i);
	return places.flatMap((a) => places.slice(a + 1).map((b) => [a, b] as const));
}

/** Runs the tasks of a study; arms that stand in many groups are simulated once for each block. */
export class StudyRunner {
	readonly #study: Study;
	readonly #length: number;
	readonly #bins: readonly number[];
	/** Values of arms that stand in several groups, by arm, then block. */
	readonly #kept = new Map<number, Map<number, Float64Array[]>>();
	readonly #shared: ReadonlySet<number>;

	constructor(study: Study) {
		this.#study = study;
		const owners = ownersOf(study.arms[0]).length;
		this.#bins = Array.from({ length: owners }, () => measureNames.map((name) => measureFact(name).bin)).flat();
		this.#length = this.#bins.length;
		const times = new Map<number, number>();
		for (const group of study.groups) for (const arm of group) times.set(arm, (times.get(arm) ?? 0) + 1);
		this.#shared = new Set([...times].filter(([, count]) => count > 1).map(([arm]) => arm));
	}

	/** `progress` is told, after each block, how many replications of an arm have been run. */
	run(task: StudyTask, progress: (replications: number) => void = () => {}): StudyPart {
		const group = this.#study.groups[task.group];
		const pairs = pairsOf(group.length);
		const simulations = group.map((arm) => new ArmSimulation(this.#study.arms[arm]));
		const { detailed } = this.#study;
		const histograms = (count: number) =>
			Array.from({ length: detailed ? count : 0 }, () => this.#bins.map((width) => new Histogram(width)));
		const [armCounts, pairCounts] = [histograms(group.length), histograms(pairs.length)];
		const blocks: StudyBlock[] = [];
		let done = 0;
		for (let block = task.first; block < task.last; block++) {
			const values = group.map((arm, i) => this.#valuesOf(arm, simulations[i], block));
			blocks.push(this.#sum(values, pairs, armCounts, pairCounts));
			done += values[0].length;
			progress(done);
		}
		return { task, blocks, armCounts: armCounts.map(partsOf), pairCounts: pairCounts.map(partsOf) };
	}

	#valuesOf(arm: number, simulation: ArmSimulation, block: number): Float64Array[] {
		if (!this.#shared.has(arm)) return simulation.values(block);
		let blocks = this.#kept.get(arm);
		if (blocks === undefined) {
			blocks = new Map();
			this.#kept.set(arm, blocks);
		}
		let values = blocks.get(block);
		if (values === undefined) {
			values = simulation.values(block);
			blocks.set(block, values);
		}
		return values;
	}

	#sum(
		values: readonly (readonly Float64Array[])[],
		pairs: readonly (readonly [number, number])[],
		armCounts: readonly (readonly Histogram[])[],
		pairCounts: readonly (readonly Histogram[])[],
	): StudyBlock {
		const count = values[0].length;
		const arms = values.map((rows, arm) => {
			const moments = new VectorMoments(this.#length);
			for (const row of rows) {
				moments.add(row);
				armCounts[arm]?.forEach((histogram, i) => {
					histogram.add(row[i]);
				});
			}
			return moments.parts();
		});
		const difference = new Float64Array(this.#length);
		const sums = pairs.map(([a, b], pair) => {
			const moments = new VectorMoments(this.#length);
			const higher = new Array<number>(this.#length).fill(0);
			const lower = new Array<number>(this.#length).fill(0);
			for (let row = 0; row < count; row++) {
				const [left, right] = [values[a][row], values[b][row]];
				for (let i = 0; i < this.#length; i++) {
					const exact = left[i] - right[i];
					const d = Math.abs(exact) <= equalWithin ? 0 : exact;
					difference[i] = d;
					if (d > 0) higher[i]++;
					else if (d < 0) lower[i]++;
				}
				moments.add(difference);
				pairCounts[pair]?.forEach((histogram, i) => {
					histogram.add(difference[i]);
				});
			}
			return { moments: moments.parts(), higher, lower };
		});
		return {
			arms,
			pairs: sums.map((sum) => sum.moments),
			higher: sums.map((sum) => sum.higher),
			lower: sums.map((sum) => sum.lower),
		};
	}
}

/** One arm, made when it is first asked for. */
class ArmSimulation {
	readonly #scenario: Scenario;
	#made: { readonly day: TherapyDay; readonly reader: MeasureReader } | null = null;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
	}

	/** The values of every replication of a block. */
	values(block: number): Float64Array[] {
		const scenario = this.#scenario;
		if (this.#made === null) {
			const reader = new MeasureReader(scenario);
			this.#made = { reader, day: new TherapyDay(scenario, reader) };
		}
		const { day, reader } = this.#made;
		return replicationsIn(block, blocked(scenario)).map((replication) => {
			reader.begin();
			day.run(replication, reader);
			return reader.read(day).slice();
		});
	}
}
