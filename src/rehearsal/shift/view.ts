import type { RehearsalPlan } from "../../scenario/index.ts";
import { priorityOf } from "../../vocabulary/index.ts";
import type { Bedside } from "./bedside.ts";
import { filledMl } from "./recorder.ts";
import type { Case } from "./shift.ts";
import { clockText, plain } from "./shift-words.ts";

/** Share of the set depth at which a dressing looks held, and depth below which it looks slack, mmHg; assumed. */
const firmShare = 0.8;
const slackMmHg = 10;

/** How depth shows: held, lower than it should be, or not at all. */
export type DepthShown = "held" | "low" | "none";

export function depthShown(depthMmHg: number, setDepthMmHg: number): DepthShown {
	if (depthMmHg >= firmShare * setDepthMmHg) return "held";
	return depthMmHg >= slackMmHg ? "low" : "none";
}

export type Shown = Readonly<ReturnType<typeof shownAt>>;

/** What shows without a look, as a belief takes note of it. */
export const shownAt = ({ process, now, signBits }: Bedside) => ({
	atMin: now,
	signs: signBits,
	depth: depthShown(process.depthAt(now), process.regimen.depthMmHg),
});

/** Marks on canister and source, mL. */
const markMl = 10;
const toMark = (volumeMl: number) => markMl * Math.floor((volumeMl + 1e-6) / markMl);

export type View = Readonly<ReturnType<typeof viewOf>>;

/**
 * What anybody sees who stands at the bedside and touches nothing: made of the state of the dressing as it can be seen, and
 * of nothing that is hidden. Minutes count from the start of the shift. `told`: what the trainee has been told so far.
 */
export function viewOf(bedside: Bedside, of: Case, told: RehearsalPlan["told"], over: boolean) {
	const { process, now } = bedside;
	return {
		atMin: now,
		/** The time on the wall, '14:20'. */
		clock: clockText(now, of.startClockMin),
		/** Minutes that are left of the shift. */
		leftMin: of.horizonMin - now,
		phase: process.phase,
		phaseSinceMin: bedside.phaseSince,
		/** As the unit shows it, mmHg, negative below ambient. */
		depthMmHg: 0 - Math.round(process.depthAt(now)),
		setDepthMmHg: -process.regimen.depthMmHg,
		/** Read off the wall of the canister and of the source, to the mark below, mL. */
		canisterMl: toMark(process.canisterAt(now)),
		sourceMl: toMark(Math.max(0, process.sourceAt(now))),
		/** Run in since the last fill began, mL, and fills begun in the shift. */
		filledMl: filledMl(process, now),
		fills: process.cycle.fills,
		alarms: bedside.alarms.map(({ condition, sinceMin }) => ({ condition, priority: priorityOf(condition), sinceMin })),
		/** How the dressing looks from where one stands. */
		dressing: dressingWords(bedside),
		told,
		over,
	};
}

/** The dressing in a sentence, as it looks through the film from where one stands: what depth and liquid make of it. */
function dressingWords({ process, now }: Bedside): string {
	if (process.phase === "change") return "The old dressing is off and a new one is going on.";
	const level = process.levelAt(now);
	const full = process.capacity;
	const foam = foamWords[depthShown(process.depthAt(now), process.regimen.depthMmHg)];
	const liquid =
		level > full + 1e-6 ? ", and liquid stands under the film" : level > full / 4 ? ", and the foam is wet" : "";
	return `The foam ${foam}${liquid}.`;
}

const foamWords: { readonly [D in DepthShown]: string } = {
	held: "is drawn in, wrinkled and firm",
	low: "is drawn in only a little and gives under a finger",
	none: "is soft and stands as high as the skin around it",
};

/** What is seen at the bedside, in a line or two: for a terminal, and for a reader who has it read out. */
export function viewWords(view: View): string {
	const depth = (value: number) => `${value < 0 ? "−" : ""}${Math.abs(value)}`;
	const alarms =
		view.alarms.length === 0 ? "no alarm" : `alarm: ${view.alarms.map(({ condition }) => plain(condition)).join(", ")}`;
	const filled = view.fills === 0 ? "no fill yet" : `last fill ${view.filledMl} mL`;
	return `${view.clock}  ${view.phase}, ${depth(view.depthMmHg)} of ${depth(view.setDepthMmHg)} mmHg; canister ${view.canisterMl} mL, source ${view.sourceMl} mL, ${filled}; ${alarms}. ${view.dressing}`;
}
