import { readQuantity } from "../physics/index.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf, read } from "./lenient.ts";
import { received } from "./path.ts";
import { bound } from "./quantity.ts";
import { duration } from "./schema-regimen.ts";
import { causeDetails, causeNames } from "./schema-rehearsal.ts";
import { unknownDressing } from "./unknown-dressing.ts";

const longestShift = "24 h";
const anyTime = duration("", "0 min", "28 d", "1 h");

const samples = {
	at: 'when it comes, such as "70 min"',
	within: 'how much later it may come, such as "40 min"',
	lasts: 'how long it lasts, such as "12 min"',
	size: 'the leak it adds, such as "0.02 L/min/mmHg"',
	share: "the share of the port it closes, such as 0.9",
	holds: 'the content at the start of the shift, such as "850 mL"',
	volume: 'a volume such as "300 mL"',
};
const detailKeys = Object.keys(samples) as (keyof typeof samples)[]; // keys forgets the names it lists

/** A rehearsal is of a dressing that is there, for a shift, and each cause carries the details of its kind, no others. */
export function crossRehearsal(data: unknown): Found[] {
	const root = asMap(data);
	if (root.rehearsal === undefined) return [];
	const plan = asMap(root.rehearsal);
	const dressings = asList(root.dressings).map(asMap);
	const ids = dressings.map((dressing) => idOf(dressing.id));
	const id = idOf(plan.dressing);
	const stranger =
		id !== undefined && !ids.includes(id)
			? [unknownDressing(["rehearsal", "dressing"], id, ids)]
			: [];
	const horizonMin = read(anyTime, root.horizon) ?? bound(longestShift, "min");
	const shift =
		horizonMin > bound(longestShift, "min")
			? [
					found(
						["horizon"],
						`a shift of at most ${longestShift}, since there is a rehearsal`,
						received(root.horizon),
					),
				]
			: [];
	const scripted =
		asList(root.happenings).length > 0
			? [
					found(
						["happenings"],
						"none beside a rehearsal, whose hides: says what goes wrong",
						"some",
					),
				]
			: [];
	const late = (value: unknown, keys: readonly (string | number)[]) => {
		const atMin = read(anyTime, value);
		return atMin !== undefined && atMin >= horizonMin
			? [found(keys, "a time before the shift ends", received(value))]
			: [];
	};
	const unit = asMap((dressings[ids.indexOf(id)] ?? dressings[0])?.unit);
	return [
		...stranger,
		...shift,
		...scripted,
		...late(plan.transfer, ["rehearsal", "transfer"]),
		...asList(plan.told).flatMap((item, i) =>
			late(asMap(item).at, ["rehearsal", "told", i, "at"]),
		),
		...asList(plan.hides).flatMap((item, i) => {
			const keys = ["rehearsal", "hides", i];
			const hidden = asMap(item);
			return [
				...ofCause(hidden, keys, plan),
				...again(asList(plan.hides), i),
				...late(hidden.at, [...keys, "at"]),
				...content(hidden, [...keys, "holds"], unit),
			];
		}),
	];
}

function ofCause(
	hidden: Readonly<Record<string, unknown>>,
	keys: readonly (string | number)[],
	plan: Readonly<Record<string, unknown>>,
): Found[] {
	const cause = causeNames.find((known) => known === hidden.cause);
	if (cause === undefined) return [];
	const needs: readonly string[] = causeDetails[cause].needs;
	const may: readonly string[] = causeDetails[cause].may;
	const wrong = detailKeys.flatMap((key) => {
		const there = hidden[key] !== undefined;
		if (there && !needs.includes(key) && !may.includes(key))
			return [
				found([...keys, key], `no ${key} with ${cause}`, received(hidden[key])),
			];
		return !there && needs.includes(key)
			? [found([...keys, key], samples[key], "nothing")]
			: [];
	});
	const unmoved =
		cause === "dressing-dislodged" && plan.transfer === undefined
			? [
					found(
						["rehearsal", "transfer"],
						"when the patient is moved, since a dressing is dislodged by it",
						"nothing",
					),
				]
			: [];
	return [...wrong, ...unmoved];
}

/** A cause is hidden once: a second one of its kind would not be told from the first. */
function again(hides: readonly unknown[], i: number): Found[] {
	const causes = hides.map((item) => asMap(item).cause);
	return causes[i] !== undefined && causes.indexOf(causes[i]) < i
		? [
				found(
					["rehearsal", "hides", i, "cause"],
					"each cause once",
					`${received(causes[i])} again`,
				),
			]
		: [];
}

/** Share of its size that a canister may hold when the shift begins: above it, it would be noted as nearly full already. */
const mostHeld = 0.9;

function content(
	hidden: Readonly<Record<string, unknown>>,
	keys: readonly (string | number)[],
	unit: Readonly<Record<string, unknown>>,
): Found[] {
	const size = (value: unknown) => {
		const reading = readQuantity(String(value ?? "1000 mL"), "mL");
		return reading.ok ? reading.value : Number.POSITIVE_INFINITY;
	};
	const held = hidden.holds === undefined ? 0 : size(hidden.holds);
	if (held === Number.POSITIVE_INFINITY) return [];
	const full = hidden.cause === "canister-full";
	const most = full ? mostHeld * size(unit.canister) : size(unit.source);
	return held > most
		? [
				found(
					keys,
					full
						? `at most ${mostHeld * 100} % of the canister's size`
						: "at most the size of the source",
					received(hidden.holds),
				),
			]
		: [];
}
