import type { DayCurve, DressingDay } from "../../results/index.ts";
import type { Regimen, Scenario } from "../../scenario/index.ts";
import type { DressingProcess, Observer } from "../../therapy/index.ts";
import {
	type CanisterReason,
	type Condition,
	conditions,
	type Ending,
	type Notice,
	type PauseReason,
	type Phase,
	priorityOf,
	type SourceReason,
} from "../../vocabulary/index.ts";
import { spanTimes } from "./span-times.ts";
import { totalsOf } from "./totals.ts";

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
type Lists = {
	[K in
		| "phases"
		| "pauses"
		| "notices"
		| "alarms"
		| "canisterChanges"
		| "sourceChanges"
		| "dressingChanges"
		| "takeovers"]: DressingDay[K][number][];
};
type Columns = { [K in keyof DayCurve]: number[] };

/** Keeps everything that happens on one day, for each dressing. */
export class Recorder implements Observer {
	readonly off: { start: number; end: number }[][];
	readonly #lists: Lists[];
	readonly #curves: Columns[];
	readonly #scenario: Scenario;
	/** The regimen in force. */
	readonly #regimens: Regimen[];

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#lists = scenario.dressings.map(() => ({
			phases: [],
			pauses: [],
			notices: [],
			alarms: [],
			canisterChanges: [],
			sourceChanges: [],
			dressingChanges: [],
			takeovers: [],
		}));
		this.#regimens = scenario.dressings.map(({ regimens }) => regimens[0]);
		this.#curves = scenario.dressings.map(() => ({
			atMin: [],
			depthMmHg: [],
			liquidMl: [],
			canisterMl: [],
			sourceMl: [],
		}));
		this.off = scenario.dressings.map(() => []);
	}

	span(dressing: number, process: DressingProcess, start: number, end: number): void {
		if (process.regimen !== this.#regimens[dressing]) {
			this.#regimens[dressing] = process.regimen;
			const list = this.#scenario.dressings[dressing].regimens;
			this.#lists[dressing].takeovers.push({
				regimen: list.indexOf(process.regimen),
				fromMin: process.regimen.fromMin,
				atMin: start,
			});
		}
		const curve = this.#curves[dressing];
		for (const at of spanTimes(process, start, end)) {
			const row = [process.depthAt(at), process.levelAt(at), process.canisterAt(at), process.sourceAt(at)] as const;
			const last = curve.atMin.length - 1;
			if (
				last >= 0 &&
				curve.atMin[last] === at &&
				curve.depthMmHg[last] === row[0] &&
				curve.liquidMl[last] === row[1] &&
				curve.canisterMl[last] === row[2] &&
				curve.sourceMl[last] === row[3]
			)
				continue;
			curve.atMin.push(at);
			curve.depthMmHg.push(row[0]);
			curve.liquidMl.push(row[1]);
			curve.canisterMl.push(row[2]);
			curve.sourceMl.push(row[3]);
		}
	}

	phase(dressing: number, phase: Phase, startMin: number, endMin: number): void {
		const lists = this.#lists[dressing];
		lists.phases.push({ phase, startMin, endMin });
		if (phase === "change") lists.dressingChanges.push({ startMin, endMin });
	}

	pause(dressing: number, reason: PauseReason, startMin: number, endMin: number): void {
		this.#lists[dressing].pauses.push({ reason, startMin, endMin });
	}

	notice(dressing: number, notice: Notice, atMin: number): void {
		this.#lists[dressing].notices.push({ notice, atMin });
	}

	alarmStarts(): void {}

	alarmEnds(dressing: number, condition: Condition, startMin: number, endMin: number, endedBy: Ending): void {
		this.#lists[dressing].alarms.push({ condition, priority: priorityOf(condition), startMin, endMin, endedBy });
	}

	canisterChange(dressing: number, reason: CanisterReason, atMin: number): void {
		this.#lists[dressing].canisterChanges.push({ atMin, reason });
	}

	sourceChange(dressing: number, reason: SourceReason, atMin: number, wastedMl: number): void {
		this.#lists[dressing].sourceChanges.push({ atMin, reason, wastedMl });
	}

	offSuction(dressing: number, start: number, end: number): void {
		this.off[dressing].push({ start, end });
	}

	breach(): void {}

	/** The day of one dressing, lists in order of their starts. */
	day(dressing: number, process: DressingProcess): DressingDay {
		const lists = this.#lists[dressing];
		const byStart = (a: { startMin: number }, b: { startMin: number }) => a.startMin - b.startMin;
		const rank = (condition: Condition) => conditions.indexOf(condition);
		lists.alarms.sort((a, b) => byStart(a, b) || rank(a.condition) - rank(b.condition));
		lists.pauses.sort((a, b) => byStart(a, b) || (a.reason < b.reason ? -1 : 1));
		const day: Mutable<DressingDay> = {
			id: process.id,
			...lists,
			totals: totalsOf(process, this.#scenario.horizonMin),
			curve: this.#curves[dressing],
		};
		return day;
	}
}
