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

interface Lasting {
	readonly startMin: number;
	readonly endMin: number;
}

/** Something that happened for a while, or at an instant (`endMin` = `startMin`). */
export interface ChartEvent extends Lasting {
	readonly kind: "alarm" | "canister" | "source" | "dressing" | "off" | "look" | "hidden";
	/** Lane it falls into when there are too many to label one by one. */
	readonly lane: string;
	readonly label: string;
}

/** Something that lasted, named by its lane and its length. */
export function lastingEvent(kind: ChartEvent["kind"], lane: string, span: Lasting, more = ""): ChartEvent {
	const { startMin, endMin } = span;
	return { kind, lane, startMin, endMin, label: `${lane}, ${durationWords(endMin - startMin)}${more}` };
}

export const alarmEvents = (day: Pick<DressingDay, "alarms">): ChartEvent[] =>
	day.alarms.map((alarm) =>
		lastingEvent("alarm", conditionWords[alarm.condition], alarm, `: ${endingWords[alarm.endedBy]}`),
	);

/** What care did: changes of canister, solution and dressing, and times switched off. */
export function careEvents(day: DressingDay): ChartEvent[] {
	const instant = (kind: ChartEvent["kind"], lane: string, startMin: number, reason: string): ChartEvent => {
		return { kind, lane, startMin, endMin: startMin, label: `${lane} (${reason})` };
	};
	return [
		...day.canisterChanges.map((change) =>
			instant("canister", "canister changed", change.atMin, canisterReasonWords[change.reason]),
		),
		...day.sourceChanges.map((change) =>
			instant("source", "solution renewed", change.atMin, sourceReasonWords[change.reason]),
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
