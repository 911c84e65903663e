import type { DayCurve, DressingDay } from "../analysis/index.ts";
import { mostWithin } from "../analysis/index.ts";
import type { Provenance } from "../physics/index.ts";
import type { CauseName } from "../scenario/index.ts";
import type { Condition } from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import type { Placed, Trouble, TroubleEnd } from "./bedside.ts";
import { Belief, type Likelihoods } from "./belief.ts";
import { causeFacts, explainedBy } from "./causes.ts";
import { clockText } from "./clock-text.ts";
import { type BankSize, courseBank } from "./course-bank.ts";
import { factsOf } from "./facts.ts";
import { rehearsalNumbers } from "./hazards.ts";
import type { Entry } from "./log.ts";
import { takings } from "./minutes.ts";
import { needlessWords } from "./needless.ts";
import { type Played, playOrderly } from "./orderly.ts";
import type { Place } from "./places.ts";
import type { Ended } from "./rehearsal.ts";
import { beliefWords, searchSentences } from "./search-words.ts";
import type { Case } from "./shift.ts";

/** What a rehearsal came to: format `slackwater/debrief@1`. Minutes count from the start of the shift. */
export interface Debrief {
	readonly format: "slackwater/debrief@1";
	readonly case: {
		readonly title: string;
		readonly brief: string;
		readonly seed: string;
		readonly start: string;
		readonly startClockMin: number;
		readonly horizonMin: number;
		readonly endedMin: number;
		readonly ended: Ended;
	};
	/** The day in sentences. */
	readonly facts: readonly string[];
	readonly causes: readonly CauseCourse[];
	readonly help: {
		readonly needed: boolean;
		readonly calledMin: number | null;
		readonly cameMin: number | null;
		/** Minutes from when it was needed until it was called. */
		readonly afterMin: number | null;
	};
	readonly offSuction: {
		/** The most within any 24 h. */
		readonly minutes: number;
		readonly limitMin: number;
		readonly spells: readonly {
			readonly startMin: number;
			readonly endMin: number;
		}[];
	};
	readonly log: readonly LoggedEntry[];
	readonly search: Search;
	readonly day: {
		readonly id: string;
		readonly regimen: {
			readonly depthMmHg: number;
			readonly fillMl: number;
		};
		readonly phases: DressingDay["phases"];
		readonly alarms: DressingDay["alarms"];
		readonly curve: DayCurve;
		readonly totals: DressingDay["totals"];
	};
	readonly assumptions: readonly {
		readonly name: string;
		readonly value: number;
		readonly unit: string;
		readonly provenance: Provenance;
		readonly source: string;
	}[];
}

/** A cause with what became of it; null for what did not come about. */
export interface CauseCourse {
	readonly cause: CauseName;
	readonly words: string;
	readonly onsetMin: number | null;
	/** The first alarm that it raised. */
	readonly signMin: number | null;
	readonly noticedMin: number | null;
	readonly foundMin: number | null;
	readonly foundAt: Place | null;
	readonly endMin: number | null;
	readonly endedBy: TroubleEnd | null;
	/** From its onset. */
	readonly minutesToNotice: number | null;
	readonly minutesToFind: number | null;
	readonly minutesToMend: number | null;
}

/** A look or an act, with why it was not needed ("" where it was) and, after a look, what could be believed. */
export interface LoggedEntry {
	readonly kind: "look" | "act";
	readonly what: Place | Act;
	readonly startMin: number;
	readonly endMin: number;
	readonly clock: string;
	readonly answer: string;
	readonly needless: string;
	readonly belief: Likelihoods | null;
	/** The same in words; "" where there is none. */
	readonly believed: string;
}

/** What an orderly search would have been, from the first alarm on, or from the first round where none came. */
export interface Search {
	readonly startMin: number;
	readonly sign: boolean;
	readonly steps: Played["steps"];
	readonly deeds: Played["deeds"];
	readonly mendedMin: number | null;
	/** The search in sentences. */
	readonly sentences: readonly string[];
}

/** All that the debrief is made from. */
export interface Shift {
	readonly of: Case;
	readonly bank: BankSize;
	readonly placed: readonly Placed[];
	readonly troubles: readonly Trouble[];
	readonly log: readonly Entry[];
	/** When each alarm was raised. */
	readonly signs: ReadonlyMap<Condition, readonly number[]>;
	readonly calledMin: number | null;
	readonly cameMin: number | null;
	readonly endedMin: number;
	readonly ended: Ended;
	readonly day: DressingDay;
	readonly off: readonly { readonly start: number; readonly end: number }[];
}

export function debriefOf(course: Shift): Debrief {
	const { of, day } = course;
	const causes = course.troubles.map((trouble) => causeCourse(trouble, course));
	const [regimen] = of.dressings[of.rehearsal.dressing].regimens;
	const played = playOrderly(of, course.placed, courseBank(of, course.bank));
	const whole: Omit<Debrief, "facts"> = {
		format: "slackwater/debrief@1",
		case: {
			title: of.title,
			brief: of.rehearsal.brief,
			seed: of.seed,
			start: of.start,
			startClockMin: of.startClockMin,
			horizonMin: of.horizonMin,
			endedMin: course.endedMin,
			ended: course.ended,
		},
		causes,
		help: helpOf(course),
		offSuction: {
			minutes: mostWithin(course.off, 1440),
			limitMin: of.constants["off.caution"],
			spells: course.off.map(({ start, end }) => ({
				startMin: start,
				endMin: end,
			})),
		},
		log: logOf(course),
		search: {
			startMin: played.startMin,
			sign: played.sign,
			steps: played.steps,
			deeds: played.deeds,
			mendedMin: played.mendedMin,
			sentences: searchSentences(played, of.startClockMin),
		},
		day: {
			id: day.id,
			regimen: { depthMmHg: regimen.depthMmHg, fillMl: regimen.fillMl },
			phases: day.phases,
			alarms: day.alarms,
			curve: day.curve,
			totals: day.totals,
		},
		assumptions: assumptionsOf(of),
	};
	return { ...whole, facts: factsOf(whole) };
}

function causeCourse(trouble: Trouble, course: Shift): CauseCourse {
	const { cause, onsetMin, endMin, endedBy } = trouble;
	const { log, signs } = course;
	const onset = onsetMin ?? Number.POSITIVE_INFINITY;
	const raised = [...signs].flatMap(([condition, at]) =>
		explainedBy[condition].includes(cause)
			? at.filter((atMin) => atMin >= onset && atMin <= (endMin ?? Infinity))
			: [],
	);
	const signMin = onsetMin === null ? null : least(raised);
	const finding = log.find(
		(entry) =>
			entry.kind === "look" &&
			entry.endMin >= onset &&
			entry.found.includes(cause),
	);
	const after = log.find(
		({ startMin }) => signMin !== null && startMin >= signMin,
	);
	const noticedMin = least(
		[finding?.startMin, after?.startMin]
			.filter((at) => at !== undefined)
			.map((at) => Math.max(at, onset)),
	);
	const since = (at: number | null) => (at === null ? null : at - onset);
	return {
		cause,
		words: causeFacts[cause].words,
		onsetMin,
		signMin,
		noticedMin,
		foundMin: finding?.endMin ?? null,
		foundAt: finding?.kind === "look" ? finding.what : null,
		endMin,
		endedBy,
		minutesToNotice: since(noticedMin),
		minutesToFind: since(finding?.endMin ?? null),
		minutesToMend: endedBy === "by-itself" ? null : since(endMin),
	};
}

const least = (values: readonly number[]): number | null =>
	values.length === 0 ? null : Math.min(...values);

function helpOf(course: Shift): Debrief["help"] {
	const { of, troubles, calledMin, cameMin } = course;
	const rule = of.rehearsal.help;
	const calling = troubles.filter(
		({ cause }) => rule === "needed" || (rule === null && cause === "bleeding"),
	);
	const from = least(
		calling.flatMap(({ onsetMin }) => (onsetMin === null ? [] : [onsetMin])),
	);
	return {
		needed: from !== null,
		calledMin,
		cameMin,
		afterMin: from === null || calledMin === null ? null : calledMin - from,
	};
}

/** The log with what was needless in it, and after each look what could be believed, given all that was seen and done. */
function logOf({ of, bank, log }: Shift): LoggedEntry[] {
	const deeds = log.flatMap((entry) =>
		entry.kind === "act" && entry.done
			? [{ act: entry.what, startMin: entry.startMin, endMin: entry.endMin }]
			: [],
	);
	const looks = log.some(({ kind }) => kind === "look");
	const belief = looks ? new Belief(courseBank(of, bank, deeds)) : null;
	return log.map((entry, index) => {
		const { kind, what, startMin, endMin, answer } = entry;
		let after: Likelihoods | null = null;
		if (entry.kind === "look" && entry.code !== null && belief !== null) {
			belief.see(entry.shown);
			belief.find(entry.what, entry.code, entry.endMin);
			after = belief.at(entry.endMin);
		}
		return {
			kind,
			what,
			startMin,
			endMin,
			clock: clockText(startMin, of.startClockMin),
			answer,
			needless: needlessWords(log, index),
			belief: after,
			believed: after === null ? "" : beliefWords(after),
		};
	});
}

function assumptionsOf(of: Case): Debrief["assumptions"] {
	const minutes = takings(of.constants).map(
		({ what, minutes, provenance, source }) => ({
			name: `minutes.${what}`,
			value: minutes,
			unit: "min",
			provenance,
			source,
		}),
	);
	const n = rehearsalNumbers;
	const assumed = (name: string, value: number, unit: string) => ({
		name,
		value,
		unit,
		provenance: "assumed" as const,
		source: "placeholder until a site calibrates it",
	});
	return [
		...minutes,
		assumed("chance.left-off", n.leftOffPerHour, "/h"),
		assumed("chance.bleeding", n.bleedsPerHour, "/h"),
		assumed("chance.passed-over", n.passedOver, ""),
		assumed("chance.kink-frees-itself", n.freed, ""),
		assumed("corner.times", n.cornerTimes, ""),
		assumed("clog.share", n.clogShare, ""),
		assumed("clog.in-suction", n.clogsInSuction, ""),
	];
}
