import type { CauseCourse, Debrief } from "../../results/index.ts";
import type { Revealed, TroubleEnd } from "../../vocabulary/index.ts";
import { clockText, minutesText } from "../shift/shift-words.ts";

/** The day in sentences: what was wrong, what became of it, suction, help, and what was not needed. No points, no praise. */
export function factsOf(debrief: Omit<Debrief, "facts">): string[] {
	const { causes, help, log } = debrief;
	const clock = (atMin: number) => clockText(atMin, debrief.case.startClockMin);
	const needless = log.filter((entry) => entry.needless !== "");
	const came = causes.filter(({ onsetMin }) => onsetMin !== null);
	const sentences = [
		...debrief.case.revealed.map((how) => revealedWords[how](clock(debrief.case.endedMin))),
		came.length > 0
			? ""
			: debrief.case.ended === "left" && debrief.case.endedMin < debrief.case.horizonMin
				? `You left at ${clock(debrief.case.endedMin)}, before anything had gone wrong.`
				: "Nothing went wrong in this shift.",
		...causes.flatMap((cause) => causeSentences(cause, clock)),
		bleedingSentence(debrief.bleeding),
		offSentence(debrief),
		helpSentence(help, clock),
		needless.length === 0
			? log.length === 0
				? "Nothing was looked at and nothing was done."
				: `Every look and every act had a reason${leftRunning(debrief.bleeding) ? "; stopping the therapy was not among them" : ""}.`
			: `Not needed, or out of order: ${needless.length} of ${log.length} looks and acts.`,
	];
	return sentences.filter((sentence) => sentence !== "");
}

/** Said first: what was given away was not found. */
const revealedWords: { readonly [R in Revealed]: (endedAt: string) => string } = {
	"ended-early": (endedAt) =>
		`The shift was ended at ${endedAt}, before all that was hidden had been found: this debrief gives it away, and is recorded as such.`,
	"opened-on-bench": () =>
		"The case lay open on the bench before the shift: what it hides could be read there, and this debrief is recorded as such.",
	"run-again": () =>
		"The same case had been debriefed before: what it hides was known, and this debrief is recorded as such.",
};

function causeSentences(cause: CauseCourse, clock: (atMin: number) => string): string[] {
	const { onsetMin, words } = cause;
	if (onsetMin === null) return [`It did not come about that ${words}: it was prevented, or the shift ended before.`];
	const course = [
		cause.signMin === null
			? "no alarm showed it"
			: `the first alarm came ${minutesText(cause.signMin - onsetMin)} later`,
		cause.minutesToNotice === null
			? "it was not noticed"
			: `it was noticed after ${minutesText(cause.minutesToNotice)}`,
		cause.minutesToFind === null ? "it was not found" : `found after ${minutesText(cause.minutesToFind)}`,
		endWords(cause),
	];
	return [`From ${clock(onsetMin)} on ${words}: ${course.join(", ")}.`];
}

function endWords({ endedBy, endMin, onsetMin }: CauseCourse): string {
	return endedBy === null
		? "and not mended"
		: `and ${ended[endedBy]} after ${minutesText((endMin ?? 0) - (onsetMin ?? 0))}`;
}

const ended: { readonly [E in TroubleEnd]: string } = {
	mended: "mended",
	"by-itself": "it was gone by itself",
	"handed-over": "in a clinician's hands",
};

/** Fresh blood was found, and nobody stopped the therapy. */
const leftRunning = (bleeding: Debrief["bleeding"]): boolean =>
	bleeding !== null && !bleeding.stopped && (bleeding.therapyAfterFoundMin ?? 0) > 0;

function bleedingSentence(bleeding: Debrief["bleeding"]): string {
	if (bleeding === null) return "";
	const { therapyMin, washes, therapyAfterFoundMin: after } = bleeding;
	const washed = washes === 0 ? "" : `, with ${washes === 1 ? "a wash" : `${washes} washes`} run in`;
	const found = after === null ? "" : `, and for ${minutesText(after)} after fresh blood was found`;
	return `Suction went on for ${minutesText(therapyMin)} while the wound bled${washed}${found}${leftRunning(bleeding) ? ": it had to be stopped, and was not" : ""}.`;
}

function offSentence({ offSuction: { minutes: off, limitMin }, bleeding }: Omit<Debrief, "facts">): string {
	const limit = `${minutesText(limitMin)} in 24 h`;
	const after = off > limitMin ? ": too long, so the dressing has to be looked at and changed" : "";
	return bleeding === null
		? `Off suction for ${minutesText(off)} of at most ${limit} (common practice; local policy comes first)${after}.`
		: `Off suction for ${minutesText(off)}${after}. The limit of ${limit} (common practice; local policy comes first) is not for a wound that bleeds: there suction stays off until a clinician has seen it.`;
}

function helpSentence(help: Debrief["help"], clock: (atMin: number) => string): string {
	if (!help.needed)
		return help.calledMin === null
			? ""
			: `Help was called at ${clock(help.calledMin)}; nothing in this shift needed it, and calling early is no fault.`;
	if (help.calledMin === null || help.afterMin === null) return "Help had to be called, and was not.";
	return help.afterMin < 0
		? `Help had to be called; it was called at ${clock(help.calledMin)}, before there was need.`
		: `Help had to be called; it was called at ${clock(help.calledMin)}, ${minutesText(help.afterMin)} after the need began.`;
}
