import type { DressingDay } from "../analysis/day-result.ts";
import { durationWords } from "./duration.ts";
import {
	canisterReasonWords,
	conditionWords,
	endingWords,
	pauseWords,
	sourceReasonWords,
} from "./vocabulary.ts";

/** Something that happened for a while, or at an instant (`endMin` = `startMin`). */
export interface ChartEvent {
	readonly kind:
		| "alarm"
		| "canister"
		| "source"
		| "dressing"
		| "off"
		| "look"
		| "hidden";
	/** Lane it falls into when there are too many to label one by one. */
	readonly lane: string;
	readonly startMin: number;
	readonly endMin: number;
	readonly label: string;
}

/** Alarms with their length and what ended them. */
export function alarmEvents(day: Pick<DressingDay, "alarms">): ChartEvent[] {
	return day.alarms.map((alarm) => ({
		kind: "alarm",
		lane: conditionWords[alarm.condition],
		startMin: alarm.startMin,
		endMin: alarm.endMin,
		label: `${conditionWords[alarm.condition]}, ${durationWords(alarm.endMin - alarm.startMin)}: ${endingWords[alarm.endedBy]}`,
	}));
}

/** What care did: changes of canister, solution and dressing, and times switched off. */
export function careEvents(day: DressingDay): ChartEvent[] {
	const instant = (
		kind: ChartEvent["kind"],
		lane: string,
		atMin: number,
		label: string,
	): ChartEvent => ({
		kind,
		lane,
		startMin: atMin,
		endMin: atMin,
		label,
	});
	return [
		...day.canisterChanges.map((change) =>
			instant(
				"canister",
				"canister changed",
				change.atMin,
				`canister changed (${canisterReasonWords[change.reason]})`,
			),
		),
		...day.sourceChanges.map((change) =>
			instant(
				"source",
				"solution renewed",
				change.atMin,
				`solution renewed (${sourceReasonWords[change.reason]})`,
			),
		),
		...day.dressingChanges.map(
			(change): ChartEvent => ({
				kind: "dressing",
				lane: "dressing changed",
				...change,
				label: `dressing changed, ${durationWords(change.endMin - change.startMin)}`,
			}),
		),
		...day.pauses
			.filter((pause) => pause.reason === "off" || pause.reason === "port")
			.map(
				(pause): ChartEvent => ({
					kind: "off",
					lane: pauseWords[pause.reason],
					startMin: pause.startMin,
					endMin: pause.endMin,
					label: `${pauseWords[pause.reason]}, ${durationWords(pause.endMin - pause.startMin)}`,
				}),
			),
	].sort((a, b) => a.startMin - b.startMin);
}
