import ICAL from "ical.js";
import type { DayResult, PlannedOrder, SupplyResult } from "../results/index.ts";
import { type Clock, dateAt, dateTimeAt, percentWords, wardName } from "../words/index.ts";
import { likeliestWords, type Need } from "./day/answers/change-answers.ts";
import { orderWords } from "./supply/supply-words.ts";

interface Entry {
	readonly uid: string;
	readonly summary: string;
	readonly description: string;
	/** `2026-03-05` for a whole day, `2026-03-05T14:00` for a moment; local time without a zone. */
	readonly start: string;
	readonly end: string;
	readonly category: string;
	/** Where it takes place; left out of the calendar of a dressing. */
	readonly location?: string;
}

/** `orders.ics` (RFC 5545): when orders go out, and the days of their deliveries. */
export function supplyCalendar(result: SupplyResult): string {
	const { scenario } = result;
	const at = (minutes: number) => dateTimeAt(minutes, scenario);
	const ward = wardName(scenario);
	const location = scenario.title;
	const expected = (order: PlannedOrder) =>
		`${orderWords(order)} (${order.pieces} pieces), expected on ${dateAt(order.arrivesMin, scenario)}`;
	const sent = grouped(result.orders, ({ atMin }) => atMin).map(([atMin, orders]) => ({
		uid: `order-${ward}-${Math.round(atMin)}`,
		summary: `Order: ${orders.map(orderWords).join("; ")}`,
		description: orders.map(expected).join("\n"),
		start: at(atMin),
		end: at(atMin + 30),
		category: "order",
		location,
	}));
	const arriving = grouped(result.orders, ({ arrivesMin }) => dateAt(arrivesMin, scenario));
	const delivered = arriving.map(([date, orders]) => ({
		uid: `delivery-${ward}-${date}`,
		summary: `Delivery: ${orders.map(orderWords).join("; ")}`,
		description: "Look at the dates on the packs; oldest to the front.",
		start: date,
		end: dateAt(orders[0].arrivesMin + 1440, scenario),
		category: "delivery",
		location,
	}));
	return calendar(scenario, [...sent, ...delivered]);
}

/** `day.ics` (RFC 5545): windows in which a canister is likely to need changing, and dressing changes. */
export function dayCalendar(result: DayResult): string {
	const { scenario } = result;
	const at = (minutes: number) => dateTimeAt(minutes, scenario);
	const entries = result.projection.dressings.flatMap(({ id, canisterNeeds }, d): Entry[] => [
		...canisterNeeds
			.filter(({ probabilityWithinHorizon }) => probabilityWithinHorizon >= 0.5)
			.map((need) => ({
				uid: `canister-${d + 1}-${need.ordinal}`,
				summary: `${id}: canister likely to need changing`,
				description: needWords(need, scenario),
				start: at(need.p10Min),
				end: at(Math.max(need.p90Min, need.p10Min + 15)),
				category: "canister",
			})),
		...result.dressings[d].schedule.dressingChanges.map((change, i) => ({
			uid: `dressing-${d + 1}-${i + 1}`,
			summary: `${id}: dressing change`,
			description: "Have a kit at hand.",
			start: at(change.startMin),
			end: at(change.endMin),
			category: "dressing change",
		})),
	]);
	return calendar(scenario, entries);
}

/** When within its window a canister is likeliest to be wanted, and how sure that is. */
function needWords(need: Need, scenario: Clock): string {
	const likeliest = likeliestWords(need, scenario);
	const chance = need.probabilityWithinHorizon;
	const often = chance < 1 ? ` It comes on ${percentWords(chance)} of the days.` : "";
	return `Change ${need.ordinal}${likeliest === "" ? "" : `, likeliest ${likeliest}`}; of the days on which it comes eight in ten lie within this window.${often}`;
}

function grouped<K>(orders: readonly PlannedOrder[], keyOf: (order: PlannedOrder) => K): [K, PlannedOrder[]][] {
	const groups = new Map<K, PlannedOrder[]>();
	for (const order of orders) {
		const key = keyOf(order);
		groups.set(key, [...(groups.get(key) ?? []), order]);
	}
	return [...groups];
}

/** No wall clock is read: the stamp of every entry is the start of the scenario. */
function calendar(scenario: { readonly start: string; readonly seed: string }, entries: readonly Entry[]): string {
	const root = new ICAL.Component("vcalendar");
	root.updatePropertyWithValue("version", "2.0");
	root.updatePropertyWithValue("prodid", "-//slackwater//EN");
	root.updatePropertyWithValue("calscale", "GREGORIAN");
	const stamp = ICAL.Time.fromDateTimeString(`${scenario.start}:00Z`);
	for (const entry of entries) {
		const event = new ICAL.Component("vevent");
		const time = (text: string) =>
			text.length === 10 ? ICAL.Time.fromDateString(text) : ICAL.Time.fromDateTimeString(`${text}:00`);
		const properties = {
			uid: `${entry.uid}-${scenario.start.replaceAll(/\D/g, "")}@slackwater.invalid`,
			dtstamp: stamp,
			dtstart: time(entry.start),
			dtend: time(entry.end),
			summary: entry.summary,
			description: entry.description,
			categories: entry.category,
			...(entry.location === undefined ? {} : { location: entry.location }),
			transp: "TRANSPARENT",
		};
		for (const [name, value] of Object.entries(properties)) event.updatePropertyWithValue(name, value);
		root.addSubcomponent(event);
	}
	return `${folded(root.toString())}\r\n`;
}

const mostOctets = 75;
const utf8 = new TextEncoder();

/**
 * Lines folded after RFC 5545, 3.1: none longer than 75 octets of UTF-8, the space at the head of a folded one counted in,
 * and never inside a sign. (The library folds one octet too late, since it leaves that space out.)
 */
export const folded = (text: string): string => text.replaceAll("\r\n ", "").split("\r\n").map(foldedLine).join("\r\n");

function foldedLine(line: string): string {
	let out = "";
	let octets = 0;
	for (const sign of line) {
		const size = utf8.encode(sign).length;
		if (octets + size > mostOctets) {
			out += "\r\n ";
			octets = 1;
		}
		out += sign;
		octets += size;
	}
	return out;
}
