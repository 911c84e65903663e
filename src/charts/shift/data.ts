import type { Debrief } from "../../results/index.ts";
import type { Condition } from "../../vocabulary/index.ts";
import type { Clock } from "../../words/index.ts";
import { type ChartEvent, eventList } from "../time/chart-events.ts";

export type RehearsalChartData = Pick<Debrief, "case" | "causes" | "log" | "day">;

/** A look or an act of the trainee. */
type Taken = Pick<Debrief["log"][number], "kind" | "what" | "startMin" | "endMin">;

/** What the bedside has shown of a shift that is under way, and what the trainee has done. */
export interface ShiftLineData {
	readonly title: string;
	/** The whole shift, which the line has still to fill. */
	readonly clock: Clock;
	readonly nowMin: number;
	readonly regimen: { readonly depthMmHg: number; readonly fillMl: number };
	readonly soFar: {
		readonly curve: {
			readonly atMin: readonly number[];
			readonly depthMmHg: readonly number[];
			/** Run in since the last drain began. */
			readonly filledMl: readonly number[];
		};
		/** `endMin` null: it stands. */
		readonly alarms: readonly {
			readonly condition: Condition;
			readonly startMin: number;
			readonly endMin: number | null;
		}[];
		readonly taken: readonly Taken[];
	};
}

/** A trainee's looks, or acts, as events of a chart. */
export const takenEvents = (taken: readonly Taken[], kind: "look" | "act"): ChartEvent[] =>
	taken
		.filter((one) => one.kind === kind)
		.map(({ what, startMin, endMin }) => ({
			kind: kind === "look" ? "look" : "dressing",
			lane: `${kind}s`,
			startMin,
			endMin,
			label: what.replaceAll("-", " "),
		}));

/** Events in a sentence of their own. */
export const eventSentence = (heading: string, events: readonly ChartEvent[], clock: Clock, more = ""): string =>
	`${heading}: ${events.length === 0 ? "none" : `${eventList(events, clock)}${more}`}.`;
