import ICAL from "ical.js";
import type { DayResult } from "../analysis/day-result.ts";
import type { PlannedOrder, SupplyResult } from "../analysis/supply-result.ts";
import { type Clock, percentWords } from "../charts/index.ts";
import { likeliestWords, type Need } from "./change-words.ts";
import { dateAt, dateTimeAt } from "./dates.ts";
import { folded } from "./fold.ts";
import { wardName } from "./ward-name.ts";

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
	const entries = [
		...grouped(result.orders, ({ atMin }) => atMin).map(
			([atMin, orders]): Entry => ({
				uid: `order-${ward}-${Math.round(atMin)}`,
				summary: `Order: ${orders.map(pieceWords).join("; ")}`,
				description: orders
					.map(
						(order) =>
							`${pieceWords(order)} (${order.pieces} pieces), expected on ${dateAt(order.arrivesMin, scenario)}`,
					)
					.join("\n"),
				start: at(atMin),
				end: at(atMin + 30),
				category: "order",
				location,
			}),
		),
		...grouped(result.orders, ({ arrivesMin }) =>
			dateAt(arrivesMin, scenario),
		).map(
			([date, orders]): Entry => ({
				uid: `delivery-${ward}-${date}`,
				summary: `Delivery: ${orders.map(pieceWords).join("; ")}`,
				description: "Look at the dates on the packs; oldest to the front.",
				start: date,
				end: dateAt((orders[0]?.arrivesMin ?? 0) + 1440, scenario),
				category: "delivery",
				location,
			}),
		),
	];
	return calendar(scenario, entries);
}

/** `day.ics` (RFC 5545): windows in which a canister is likely to need changing, and dressing changes. */
export function dayCalendar(result: DayResult): string {
	const { scenario } = result;
	const at = (minutes: number) => dateTimeAt(minutes, scenario);
	const entries = result.projection.dressings.flatMap(
		(dressing, d): Entry[] => [
			...dressing.canisterNeeds
				.filter(
					({ probabilityWithinHorizon }) => probabilityWithinHorizon >= 0.5,
				)
				.map(
					(need): Entry => ({
						uid: `canister-${d + 1}-${need.ordinal}`,
						summary: `${dressing.id}: canister likely to need changing`,
						description: needWords(need, scenario),
						start: at(need.p10Min),
						end: at(Math.max(need.p90Min, need.p10Min + 15)),
						category: "canister",
					}),
				),
			...(result.dressings[d]?.schedule.dressingChanges ?? []).map(
				(change, i): Entry => ({
					uid: `dressing-${d + 1}-${i + 1}`,
					summary: `${dressing.id}: dressing change`,
					description: "Have a kit at hand.",
					start: at(change.startMin),
					end: at(change.endMin),
					category: "dressing change",
				}),
			),
		],
	);
	return calendar(scenario, entries);
}

/** When within its window a canister is likeliest to be wanted, and how sure that is. */
function needWords(need: Need, scenario: Clock): string {
	const likeliest = likeliestWords(need, scenario);
	const often =
		need.probabilityWithinHorizon < 1
			? ` It comes on ${percentWords(need.probabilityWithinHorizon)} of the days.`
			: "";
	return `Change ${need.ordinal}${likeliest === "" ? "" : `, likeliest ${likeliest}`}; of the days on which it comes eight in ten lie within this window.${often}`;
}

const pieceWords = (order: PlannedOrder) =>
	order.packSize === 1
		? `${order.pieces} × ${order.item}`
		: `${order.packs} ${order.packs === 1 ? "pack" : "packs"} of ${order.item}`;

function grouped<K>(
	orders: readonly PlannedOrder[],
	keyOf: (order: PlannedOrder) => K,
): [K, PlannedOrder[]][] {
	const groups = new Map<K, PlannedOrder[]>();
	for (const order of orders) {
		const key = keyOf(order);
		groups.set(key, [...(groups.get(key) ?? []), order]);
	}
	return [...groups];
}

/** No wall clock is read: the stamp of every entry is the start of the scenario. */
function calendar(
	scenario: { readonly start: string; readonly seed: string },
	entries: readonly Entry[],
): string {
	const root = new ICAL.Component("vcalendar");
	root.updatePropertyWithValue("version", "2.0");
	root.updatePropertyWithValue("prodid", "-//slackwater//EN");
	root.updatePropertyWithValue("calscale", "GREGORIAN");
	const stamp = ICAL.Time.fromDateTimeString(`${scenario.start}:00Z`);
	for (const entry of entries) {
		const event = new ICAL.Component("vevent");
		const time = (text: string) =>
			text.length === 10
				? ICAL.Time.fromDateString(text)
				: ICAL.Time.fromDateTimeString(`${text}:00`);
		event.updatePropertyWithValue(
			"uid",
			`${entry.uid}-${scenario.start.replaceAll(/\D/g, "")}@slackwater.invalid`,
		);
		event.updatePropertyWithValue("dtstamp", stamp);
		event.updatePropertyWithValue("dtstart", time(entry.start));
		event.updatePropertyWithValue("dtend", time(entry.end));
		event.updatePropertyWithValue("summary", entry.summary);
		event.updatePropertyWithValue("description", entry.description);
		event.updatePropertyWithValue("categories", entry.category);
		if (entry.location !== undefined)
			event.updatePropertyWithValue("location", entry.location);
		event.updatePropertyWithValue("transp", "TRANSPARENT");
		root.addSubcomponent(event);
	}
	return `${folded(root.toString())}\r\n`;
}
