import type { CauseCourse, Debrief, Deed } from "../../results/index.ts";
import { mostWithin } from "../../studies/index.ts";
import { cautionSentences } from "../../vocabulary/index.ts";
import { courseBank } from "../belief/course-bank.ts";
import { causeOf } from "../causes/causes.ts";
import { assumedNumbers } from "../causes/chance.ts";
import { placeholder, takings } from "../places/takings.ts";
import { playOrderly } from "../search/orderly.ts";
import { likelihoodNote, searchSentences } from "../search/search-words.ts";
import type { Case } from "../shift/shift.ts";
import { bleedingOf, causeCourse, least } from "./cause-course.ts";
import { factsOf } from "./facts.ts";
import { logOf } from "./log.ts";
import type { ShiftRecord } from "./shift-record.ts";

export function debriefOf(course: ShiftRecord): Debrief {
	const { of, endedMin, ended, off } = course;
	const { title, seed, start, startClockMin, horizonMin } = of;
	const { brief, dressing } = of.rehearsal;
	const { id, phases, alarms, curve, totals } = course.day;
	const [{ depthMmHg, fillMl }] = of.dressings[dressing].regimens;
	const causes = course.troubles.map((trouble) => causeCourse(trouble, course));
	const revealed = [...course.known, ...(endedEarly(course, causes) ? (["ended-early"] as const) : [])];
	const bankOf = remembered((deeds: readonly Deed[]) => courseBank(of, course.bank, deeds));
	const played = playOrderly(of, course.placed, bankOf);
	const whole: Omit<Debrief, "facts"> = {
		format: "slackwater/debrief@1",
		case: { title, brief, seed, start, startClockMin, horizonMin, endedMin, ended, revealed },
		causes,
		help: helpOf(course),
		bleeding: bleedingOf(causes, course),
		offSuction: {
			minutes: mostWithin(off, 1440),
			limitMin: of.constants["off.caution"],
			spells: off.map(({ start, end }) => ({ startMin: start, endMin: end })),
		},
		log: logOf(course, bankOf),
		search: {
			stages: played.map(({ looks: _, ...stage }) => stage),
			sentences: played.flatMap((stage) => searchSentences(stage, startClockMin)),
			note: likelihoodNote,
		},
		day: { id, regimen: { depthMmHg, fillMl }, phases, alarms, curve, totals },
		assumptions: assumptionsOf(of),
		cautions: cautionSentences,
	};
	return { ...whole, facts: factsOf(whole) };
}

/** The shift was left while something hidden was neither found nor over: the debrief gives it away. */
const endedEarly = ({ of, ended, endedMin }: ShiftRecord, causes: readonly CauseCourse[]): boolean =>
	ended === "left" &&
	endedMin < of.horizonMin &&
	causes.some(({ foundMin, endMin }) => foundMin === null && endMin === null);

function helpOf(course: ShiftRecord): Debrief["help"] {
	const { of, troubles, calledMin, cameMin } = course;
	const rule = of.rehearsal.help;
	const calling = troubles.filter(({ cause }) => rule === "needed" || (rule === null && causeOf(cause).forClinician));
	const from = least(calling.flatMap(({ onsetMin }) => (onsetMin === null ? [] : [onsetMin])));
	return {
		needed: from !== null,
		calledMin,
		cameMin,
		afterMin: from === null || calledMin === null ? null : calledMin - from,
	};
}

/** What was worked out once for the same deeds is not worked out again: it takes most of a debrief's time. */
function remembered<T>(make: (deeds: readonly Deed[]) => T): (deeds: readonly Deed[]) => T {
	const made = new Map<string, T>();
	return (deeds) => {
		const key = JSON.stringify(deeds);
		const value = made.get(key) ?? make(deeds);
		made.set(key, value);
		return value;
	};
}

function assumptionsOf(of: Case): Debrief["assumptions"] {
	return [
		...takings(of.constants).map(({ what, minutes, provenance, source }) => ({
			name: `minutes.${what}`,
			value: minutes,
			unit: "min",
			provenance,
			source,
		})),
		...Object.entries(assumedNumbers).map(([name, { value, unit }]) => ({ name, value, unit, ...placeholder })),
	];
}
