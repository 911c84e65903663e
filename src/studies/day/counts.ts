import type { Scenario } from "../../scenario/index.ts";
import { Histogram, type HistogramParts } from "../../statistics/index.ts";
import { nextClock } from "../../therapy/index.ts";
import { conditions, totalFacts, totalNames } from "../../vocabulary/index.ts";

export const halfHourMin = 30;

/** Minutes between the points at which the content of the canister is sampled. */
export const levelStep = (horizonMin: number): number => Math.max(halfHourMin, Math.ceil(horizonMin / 96));

/** Minutes from the start of every round after it, within the horizon. */
export function roundTimes({
	care,
	startClockMin,
	horizonMin,
}: Pick<Scenario, "care" | "startClockMin" | "horizonMin">): number[] {
	const times: number[] = [];
	const next = (from: number) => nextClock(from, startClockMin, care.roundsClockMin);
	// A round is at a whole minute, and the next one at least a minute later.
	for (let at = next(0); at < horizonMin; at = next(at + 1)) if (at > 0) times.push(at);
	return times;
}

/** What is kept as histograms: totals by name, times by ordinal, contents of the canister by point, round and at the end. */
const kept = [
	"totals",
	"canisterChanges",
	"sourceChanges",
	"canisterNeeds",
	"fills",
	"levels",
	"rounds",
	"atEnd",
] as const;

type Kept<T> = { readonly [K in (typeof kept)[number]]: T[] };

/** Plain data, fit for a thread. */
export interface DressingParts {
	readonly histograms: Kept<HistogramParts>;
	readonly alarmBins: readonly Int32Array[];
	readonly chanceBins: readonly Int32Array[];
	readonly offTooLong: number;
}

/** Counts of any number of replications of one dressing: they merge exactly, in any order. */
export class DressingCounts {
	readonly histograms: Kept<Histogram>;
	/** By condition, then half-hour: replications in which such an alarm starts in it. */
	readonly alarmBins: readonly Int32Array[];
	/** The same of those that nothing listed brings. */
	readonly chanceBins: readonly Int32Array[];
	/** Replications with more time off suction than the caution allows. */
	offTooLong = 0;

	constructor(scenario: Scenario) {
		const { horizonMin } = scenario;
		const bins = () => conditions.map(() => new Int32Array(Math.ceil(horizonMin / halfHourMin)));
		const contents = (length: number) => Array.from({ length }, () => new Histogram(1));
		this.alarmBins = bins();
		this.chanceBins = bins();
		this.histograms = {
			totals: totalNames.map((name) => new Histogram(totalFacts[name].bin)),
			canisterChanges: [],
			sourceChanges: [],
			canisterNeeds: [],
			fills: [],
			levels: contents(Math.floor(horizonMin / levelStep(horizonMin)) + 1),
			rounds: contents(roundTimes(scenario).length),
			atEnd: contents(1),
		};
	}

	parts(): DressingParts {
		const entries = kept.map((name) => [name, this.histograms[name].map((histogram) => histogram.parts())]);
		return {
			histograms: Object.fromEntries(entries) as Kept<HistogramParts>, // fromEntries forgets the names of `kept`
			alarmBins: this.alarmBins,
			chanceBins: this.chanceBins,
			offTooLong: this.offTooLong,
		};
	}

	merge(parts: DressingParts): void {
		for (const name of kept)
			parts.histograms[name].forEach((part, i) => {
				this.histograms[name][i] ??= new Histogram(part.width); // there are as many as there were changes or fills
				this.histograms[name][i].merge(part);
			});
		addBins(this.alarmBins, parts.alarmBins);
		addBins(this.chanceBins, parts.chanceBins);
		this.offTooLong += parts.offTooLong;
	}
}

function addBins(into: readonly Int32Array[], counts: readonly Int32Array[]): void {
	counts.forEach((bins, i) => {
		for (let bin = 0; bin < bins.length; bin++) into[i][bin] += bins[bin];
	});
}

/** Starts of alarms by condition: how many in a replication, and in how many replications one falls into a half-hour. */
export class AlarmStarts {
	readonly count = new Int32Array(conditions.length);
	readonly #bins: readonly Int32Array[];
	readonly #lastIn: readonly Int32Array[];

	constructor(bins: readonly Int32Array[]) {
		this.#bins = bins;
		this.#lastIn = bins.map(({ length }) => new Int32Array(length).fill(-1));
	}

	note(condition: number, bin: number, replication: number): void {
		this.count[condition]++;
		if (this.#lastIn[condition][bin] === replication) return;
		this.#lastIn[condition][bin] = replication;
		this.#bins[condition][bin]++;
	}
}
