import type { Condition, Phase } from "../therapy/index.ts";
import { priorityOf } from "../therapy/index.ts";
import type { Bedside } from "./bedside.ts";
import { clockText } from "./clock-text.ts";
import { dressingWords } from "./dressing-words.ts";
import { filledMl } from "./filled.ts";
import type { Case } from "./shift.ts";

/** What anybody sees who stands at the bedside and touches nothing. Minutes from the start of the shift. */
export interface View {
	readonly atMin: number;
	/** The time on the wall, '14:20'. */
	readonly clock: string;
	/** Minutes that are left of the shift. */
	readonly leftMin: number;
	readonly phase: Phase;
	readonly phaseSinceMin: number;
	/** As the unit shows it, mmHg, negative below ambient. */
	readonly depthMmHg: number;
	readonly setDepthMmHg: number;
	/** Read off the wall of the canister and of the source, to the mark below, mL. */
	readonly canisterMl: number;
	readonly sourceMl: number;
	/** Run in since the last fill began, mL, and fills begun in the shift. */
	readonly filledMl: number;
	readonly fills: number;
	readonly alarms: readonly {
		readonly condition: Condition;
		readonly priority: "medium" | "high";
		readonly sinceMin: number;
	}[];
	/** How the dressing looks from where one stands. */
	readonly dressing: string;
	/** What the trainee has been told so far. */
	readonly told: readonly { readonly atMin: number; readonly says: string }[];
	readonly over: boolean;
}

/** Marks on canister and source, mL. */
const markMl = 10;
const toMark = (volumeMl: number) =>
	markMl * Math.floor((volumeMl + 1e-6) / markMl);

/** Made of the state of the dressing as it can be seen, and of nothing that is hidden. */
export function viewOf(
	bedside: Bedside,
	of: Case,
	told: View["told"],
	over: boolean,
): View {
	const { process, now } = bedside;
	return {
		atMin: now,
		clock: clockText(now, of.startClockMin),
		leftMin: of.horizonMin - now,
		phase: process.phase,
		phaseSinceMin: bedside.phaseSince,
		depthMmHg: 0 - Math.round(process.depthAt(now)),
		setDepthMmHg: -process.regimen.depthMmHg,
		canisterMl: toMark(process.canisterAt(now)),
		sourceMl: toMark(Math.max(0, process.sourceAt(now))),
		filledMl: filledMl(process, now),
		fills: process.fills,
		alarms: bedside.alarms.map(({ condition, sinceMin }) => ({
			condition,
			priority: priorityOf(condition),
			sinceMin,
		})),
		dressing: dressingWords(bedside),
		told,
		over,
	};
}
