import type { SoFar } from "../rehearsal/index.ts";
import type { ChartEvent } from "./chart-events.ts";

/** A trainee's looks, or acts, as events of a chart. */
export const takenEvents = (
	taken: SoFar["taken"],
	kind: "look" | "act",
): ChartEvent[] =>
	taken
		.filter((one) => one.kind === kind)
		.map(({ what, startMin, endMin }) => ({
			kind: kind === "look" ? "look" : "dressing",
			lane: `${kind}s`,
			startMin,
			endMin,
			label: what.replaceAll("-", " "),
		}));
