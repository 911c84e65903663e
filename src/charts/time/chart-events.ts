import type { DressingDay } from "../../results/index.ts";
import {
	type Clock,
	canisterReasonWords,
	clockTime,
	conditionWords,
	durationWords,
	endingWords,
	pauseWords,
	sourceReasonWords,
} from "../../words/index.ts";

/** Something that happened for a while, or at an instant (`endMin` = `startMin`). */
export interface ChartEvent {
	readonly kind: "alarm" | "canister" | "source" | "dressing" | "off" | "look" | "hidden";
	/** Lane it falls into when there are too many to label one by one. */
	readonly lane: string;
	readonly startMin: number;
	readonly endMin: number;
	readonly label: string;
}

/** Something that lasted, named by its lane and its length. */
export const lastingEvent = (
	kind: ChartEvent["kind"],
	lane: string,
	{ startMin, endMin }: Pick<ChartEvent, "startMin" | "endMin">,
	more = "",
): ChartEvent => ({ kind, lane, startMin, endMin, label: `${lane}, ${durationWords(endMin - startMin)}${more}` });

export const alarmEvents = (day: Pick<DressingDay, "alarms">): ChartEvent[] =>
	day.alarms.map((alarm) =>
		lastingEvent("alarm", conditionWords[alarm.condition], alarm, `: ${endingWords[alarm.endedBy]}`),
	);

/** What care did: changes of canister, solution and dressing, and times switched off. */
export function careEvents(day: DressingDay): ChartEvent[] {
	const instant = (kind: ChartEvent["kind"], lane: string, atMin: number, reason: string): ChartEvent => ({
		kind,
		lane,
		startMin: atMin,
		endMin: atMin,
		label: `${lane} (${reason})`,
	});
	return [
		...day.canisterChanges.map(({ atMin, reason }) =>
			instant("canister", "canister changed", atMin, canisterReasonWords[reason]),
		),
		...day.sourceChanges.map(({ atMin, reason }) =>
			instant("source", "solution renewed", atMin, sourceReasonWords[reason]),
		),
		...day.dressingChanges.map((change) => lastingEvent("dressing", "dressing changed", change)),
		...day.pauses
			.filter(({ reason }) => reason === "off" || reason === "port")
			.map((pause) => lastingEvent("off", pauseWords[pause.reason], pause)),
	].sort((a, b) => a.startMin - b.startMin);
}

/** Events in words, each by its time: '07:28 seal leak, 17 min: nurse called; 09:00 …'. */
export const eventList = (events: readonly ChartEvent[], clock: Clock): string =>
	events.map(({ startMin, label }) => `${clockTime(startMin, clock)} ${label}`).join("; ");
