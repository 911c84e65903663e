import type { DressingDay, DressingProjection, DressingSummary } from "../../results/index.ts";
import type { Clock } from "../../words/index.ts";
import type { Span } from "../time/time-plot.ts";

export interface WaterLineData {
	readonly title: string;
	readonly clock: Clock;
	readonly dressing: DressingSummary;
	readonly day: DressingDay;
	/** Band and change windows are drawn where it holds more than one replication. */
	readonly projection?: DressingProjection;
	readonly replications: number;
	/** Share of the canister at which a round changes it. */
	readonly roundShare: number;
	/** What the lens enlarges; by default the first undisturbed cycle. Null: there is no lens and the panels are lower, for a page that has little room. */
	readonly lens?: CycleSpan | null;
	/** What is drawn begins here; at the start by default. */
	readonly fromMin?: number;
	/** How long what is drawn lasts; until the end of the day by default. */
	readonly spanMin?: number;
	/** The day as it was before the last change, left as a pale line. */
	readonly before?: Pick<DressingDay, "curve">;
	/** False where there is no room for the care that was given. */
	readonly withCare?: boolean;
	/** Days that are drawn above or below it, so that all stand on the same heights. */
	readonly beside?: readonly Pick<WaterLineData, "day" | "dressing">[];
}

/** A part of the day that a lens enlarges. */
export interface CycleSpan extends Span {
	readonly heading: string;
}
