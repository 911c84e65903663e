import type { ListedHappening, Schedule } from "../results/index.ts";
import type { HappeningKind } from "../vocabulary/index.ts";
import { type Clock, clockTime, timeOfDay } from "./clock.ts";
import { conditionWords } from "./code-words.ts";
import { durationWords } from "./numbers.ts";

const whatHappens: { readonly [K in HappeningKind]: string } = {
	transfer: "Transfer",
	turn: "Turn in bed",
	off: "Therapy off",
	"canister-change": "Canister changed",
	"source-change": "New bag of solution",
	"dressing-change": "Dressing change",
	breach: "the seal breaks",
	clog: "debris in the port",
	"kink-fill": "the fill line is kinked",
	"kink-suction": "the suction line is kinked",
	bleed: "bleeding",
};

/** What the scenario lists, as a row or a sentence names it: 'Therapy off until 14:45 (planned)', 'Listed failure: …'. */
export function happeningWords({ what, atMin, forMin, planned }: ListedHappening, clock: Clock): string {
	if (!planned) return `Listed failure: ${whatHappens[what]}${forMin === null ? "" : ` for ${durationWords(forMin)}`}`;
	const until = forMin === null ? "" : ` until ${timeOfDay(atMin + forMin, clock)}`;
	return `${whatHappens[what]}${until} (planned)`;
}

/** The alarm that a planned stretch without therapy brings: 'suction absent sounds at 14:20'; '' for none. */
export function soundsWords({ what, atMin, forMin }: ListedHappening, schedule: Schedule, clock: Clock): string {
	if (what !== "off" || forMin === null) return "";
	const alarm = schedule.alarms.find(
		({ condition, startMin }) => condition === "suction-absent" && startMin >= atMin && startMin <= atMin + forMin,
	);
	return alarm === undefined ? "" : `${conditionWords[alarm.condition]} sounds at ${clockTime(alarm.startMin, clock)}`;
}
