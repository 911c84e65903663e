import type { DressingDay } from "../analysis/index.ts";
import { mostWithin } from "../analysis/index.ts";
import type { Condition } from "../therapy/index.ts";
import type { Placed, Trouble } from "./bedside.ts";
import { Belief, type Likelihoods } from "./belief.ts";
import { causeFacts, explainedBy } from "./causes.ts";
import { clockSpan, clockText } from "./clock-text.ts";
import type { Course } from "./course.ts";
import { type BankSize, courseBank } from "./course-bank.ts";
import type {
	CauseCourse,
	Debrief,
	Ended,
	LoggedEntry,
	Revealed,
} from "./debrief-data.ts";
import type { Deed } from "./deed.ts";
import { factsOf } from "./facts.ts";
import { rehearsalNumbers } from "./hazards.ts";
import type { Entry } from "./log.ts";
import { takings } from "./minutes.ts";
import { needlessWords } from "./needless.ts";
import { playOrderly } from "./orderly.ts";
import {
	beliefWords,
	likelihoodNote,
	searchSentences,
} from "./search-words.ts";
import type { Case } from "./shift.ts";

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
	/** What was known before the shift began. */
	readonly known: readonly Revealed[];
	readonly day: DressingDay;
	readonly off: readonly { readonly start: number; readonly end: number }[];
}

export function debriefOf(course: Shift): Debrief {
	const { of, day } = course;
	const causes = course.troubles.map((trouble) => causeCourse(trouble, course));
	const [regimen] = of.dressings[of.rehearsal.dressing].regimens;
	const bankOf = remembered((deeds: readonly Deed[]) =>
		courseBank(of, course.bank, deeds),
	);
	const played = playOrderly(of, course.placed, bankOf);
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
			revealed: [
				...course.known,
				...(endedEarly(course, causes) ? (["ended-early"] as const) : []),
			],
		},
		causes,
		help: helpOf(course),
		bleeding: bleedingOf(causes, course),
		offSuction: {
			minutes: mostWithin(course.off, 1440),
			limitMin: of.constants["off.caution"],
			spells: course.off.map(({ start, end }) => ({
				startMin: start,
				endMin: end,
			})),
		},
		log: logOf(course, bankOf),
		search: {
			stages: played.map(({ looks: _, ...stage }) => stage),
			sentences: played.flatMap((stage) =>
				searchSentences(stage, of.startClockMin),
			),
			note: likelihoodNote,
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

/** The shift was left while something hidden was neither found nor over: the debrief gives it away. */
const endedEarly = (
	{ of, ended, endedMin }: Shift,
	causes: readonly CauseCourse[],
): boolean =>
	ended === "left" &&
	endedMin < of.horizonMin &&
	causes.some(({ foundMin, endMin }) => foundMin === null && endMin === null);

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
		(entry) => entry.endMin >= onset && entry.found.includes(cause),
	);
	const foundMin =
		finding === undefined
			? null
			: finding.kind === "look"
				? finding.endMin
				: Math.max(finding.startMin, onset);
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
		foundMin,
		foundAt:
			finding === undefined
				? null
				: finding.kind === "look"
					? finding.what
					: "dressing",
		endMin,
		endedBy,
		minutesToNotice: since(noticedMin),
		minutesToFind: since(foundMin),
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

/** How long suction and washes went on in a bleed; off the spells in which they did not. */
function bleedingOf(
	causes: readonly CauseCourse[],
	{ off, log, day, endedMin }: Shift,
): Debrief["bleeding"] {
	const bleed = causes.find(
		({ cause, onsetMin }) => cause === "bleeding" && onsetMin !== null,
	);
	if (bleed === undefined) return null;
	const { onsetMin, foundMin } = bleed;
	const startMin = onsetMin ?? 0; // told from null above
	const endMin = bleed.endMin ?? endedMin;
	const ran = (fromMin: number, toMin: number) =>
		off.reduce(
			(left, { start, end }) =>
				left - Math.max(0, Math.min(end, toMin) - Math.max(start, fromMin)),
			toMin - fromMin,
		);
	return {
		therapyMin: ran(startMin, endMin),
		washes: day.phases.filter(
			({ phase, startMin: at }) =>
				phase === "fill" &&
				at >= startMin &&
				at < endMin &&
				!off.some(({ start, end }) => start <= at && at < end),
		).length,
		// A bleed that has stopped is still for a clinician to see to.
		therapyAfterFoundMin: foundMin === null ? null : ran(foundMin, endedMin),
		stopped: log.some(
			(entry) =>
				entry.kind === "act" &&
				entry.what === "pause" &&
				entry.done &&
				entry.endMin >= startMin,
		),
	};
}

/** What was worked out once for the same deeds is not worked out again: it takes most of a debrief's time. */
function remembered<T>(
	make: (deeds: readonly Deed[]) => T,
): (deeds: readonly Deed[]) => T {
	const made = new Map<string, T>();
	return (deeds) => {
		const key = JSON.stringify(deeds);
		const value = made.get(key) ?? make(deeds);
		made.set(key, value);
		return value;
	};
}

/** The log with what was needless in it, and after each look what could be believed, given all that was seen and done. */
function logOf(
	{ of, log, cameMin }: Shift,
	bankOf: (deeds: readonly Deed[]) => readonly Course[],
): LoggedEntry[] {
	const deeds = log.flatMap((entry) =>
		entry.kind === "act" && entry.done
			? [{ act: entry.what, startMin: entry.startMin, endMin: entry.endMin }]
			: [],
	);
	const looks = log.some(({ kind }) => kind === "look");
	const belief = looks ? new Belief(bankOf(deeds)) : null;
	// Where help has come and the shift has gone on, a clinician has seen that nothing bled.
	let helpLeftMin = of.rehearsal.help === null ? cameMin : null;
	return log.map((entry, index) => {
		const { kind, what, startMin, endMin, answer } = entry;
		let after: Likelihoods | null = null;
		if (entry.kind === "act")
			for (const { atMin, code } of entry.seen)
				belief?.find("dressing", code, atMin);
		if (entry.kind === "look" && entry.code !== null && belief !== null) {
			if (helpLeftMin !== null && entry.endMin > helpLeftMin) {
				belief.helpLeft(helpLeftMin);
				helpLeftMin = null;
			}
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
			span: clockSpan(startMin, endMin, of.startClockMin),
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
