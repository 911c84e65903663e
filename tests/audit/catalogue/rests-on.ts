import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import type { Difference, RestsOn, RestsOnRow } from "../../../src/results/index.ts";
import type { MeasureName } from "../../../src/vocabulary/index.ts";
import { type Entry, entry, fixedWords } from "../check.ts";
import { fixed } from "../holes.ts";
import { deserved, measureOf } from "../measures.ts";
import { listed, type Said } from "../pattern.ts";
import { placed } from "../scope.ts";
import { asked, type CompareScope, digits, isFound, mainOnes, ownersOf, pairsOf, unit } from "./differences.ts";

type Effect = RestsOnRow["effects"][number];

interface Turn {
	readonly row: RestsOnRow;
	readonly effect: Effect;
}

/** What was looked into, of the first pair. */
const lookedInto = ({ result }: CompareScope): readonly RestsOn[] => (result.restsOn === null ? [] : [result.restsOn]);

const isLookedInto = (scope: CompareScope): boolean => scope.result.restsOn !== null;

/** Works something out of a scope once. */
function once<T>(of: (scope: CompareScope) => T): (scope: CompareScope) => T {
	const known = new WeakMap<CompareScope, T>();
	return (scope) => {
		const before = known.get(scope);
		if (before !== undefined) return before;
		const made = of(scope);
		known.set(scope, made);
		return made;
	};
}

const differencesOf = once(
	(scope) =>
		new Map(
			ownersOf(scope).flatMap((owner) =>
				asked(scope, placed(pairsOf(scope), 0), owner).map((one) => [`${owner} ${one.measure}`, one] as const),
			),
		),
);

/** The difference that an effect is one of. */
const differenceOf = (scope: CompareScope, effect: Effect) =>
	differencesOf(scope).get(`${effect.dressing} ${effect.measure}`);

/** Whether the interval of the mean leaves nought out, whatever is said of it. */
function leavesNoughtOut(one: Difference): boolean {
	const t = studentQuantile(0.975, one.replications - 1);
	return Math.abs(one.mean) > t * Math.sqrt(one.variance.paired / one.replications) * (1 + 1e-9);
}

const turnsOf = (scope: CompareScope, holds: (effect: Effect, one: Difference) => boolean): readonly Turn[] =>
	lookedInto(scope).flatMap(({ rows }) =>
		rows.flatMap((row) =>
			row.effects.flatMap((effect) => {
				const one = differenceOf(scope, effect);
				return one !== undefined && holds(effect, one) ? [{ row, effect }] : [];
			}),
		),
	);

/** A difference that was found is lost or turned round. */
const lostOnes = once((scope) => turnsOf(scope, ({ turns }, one) => turns && isFound(one)));
/** One that stands at half and at twice is not found without a cause. */
const hungOnes = once((scope) => turnsOf(scope, ({ turns, hangs }, one) => hangs && !turns && isFound(one)));
/** One that was not found shows. */
const shownOnes = once((scope) =>
	turnsOf(scope, ({ appears }, one) => appears && !isFound(one) && !leavesNoughtOut(one)),
);

const rowsOf = (turns: readonly Turn[]): readonly RestsOnRow[] => [...new Set(turns.map(({ row }) => row))];

const digitsOf = (scope: CompareScope, effect: Effect): number => {
	const one = differenceOf(scope, effect);
	return one === undefined ? deserved(effect.measure, null) : digits(one);
};

const valueSaid = ({ value, unit: own }: RestsOnRow): string => (own === "" ? `${value}` : `${value} ${own}`);

const ends = ["half", "twice"] as const;

/** What becomes of a difference that was found: on the other side of nought, or no longer found, as far as the result tells where. */
function becomes(effect: Effect): string {
	const turned = ends.filter((end) => {
		const at = effect[end];
		return at !== null && at !== 0 && at > 0 !== effect.base > 0;
	});
	if (turned.length > 0) return `changes sign at ${turned.join(" and at ")}`;
	const moved = ends.filter((end) => effect[end] !== null && effect[end] !== effect.base);
	if (moved.length < 2) return `no longer found at ${moved.join()}`;
	const [half, twice] = [Math.abs(effect.half ?? 0), Math.abs(effect.twice ?? 0)];
	return `no longer found, nearest to nought at ${half <= twice ? "half" : "twice"}`;
}

const whose = (scope: CompareScope, { dressing }: Effect) =>
	scope.scenario.dressings.length === 1 ? undefined : dressing === "all" ? "all dressings" : dressing;

const at = (value: number | null, decimals: number): Said =>
	value === null ? ["cannot be run"] : ["{n}", fixed(value, decimals)];

/** How much an assumption moves a difference, at the most. */
const reach = ({ base, half, twice }: Effect): number =>
	Number(Math.max(...[half, twice].map((one) => (one === null ? 0 : Math.abs(one - base)))).toPrecision(9));

/** The picture of a measure: every assumption that moves it, the twelve that are drawn, and what is said of the others. */
interface Picture {
	readonly measure: MeasureName;
	readonly all: readonly Turn[];
	readonly drawn: readonly Turn[];
	readonly left: readonly Turn[];
	readonly decimals: number;
	readonly unit: string;
}

const picturesOf = once((scope): readonly Picture[] => {
	const owner = placed(ownersOf(scope), 0);
	return lookedInto(scope).flatMap(({ rows }) =>
		scope.result.measures.flatMap((measure): Picture[] => {
			const all = rows.flatMap((row) =>
				row.effects
					.filter(
						(effect) =>
							effect.dressing === owner &&
							effect.measure === measure &&
							[effect.half, effect.twice].some((one) => one !== null && one !== effect.base),
					)
					.map((effect) => ({ row, effect })),
			);
			const [first] = all;
			if (first === undefined) return [];
			const widest = all.toSorted((x, y) => reach(y.effect) - reach(x.effect));
			const chosen = [...widest.filter(({ effect }) => effect.turns), ...widest.filter(({ effect }) => !effect.turns)];
			const drawn = chosen.slice(0, 12);
			return [
				{
					measure,
					all,
					// Of equals those that turn the verdict stand first.
					drawn: drawn.toSorted((x, y) => reach(y.effect) - reach(x.effect)),
					left: chosen.slice(12),
					decimals: digitsOf(scope, first.effect),
					unit: unit(scope, { measure }),
				},
			];
		}),
	);
});

const threeFigures = (value: number): number =>
	value === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(value) + 1e-12)));

function leftSaid({ left, unit: own }: Picture): Said | undefined {
	if (left.length === 0) return undefined;
	const most = Math.max(...left.map(({ effect }) => reach(effect)));
	const turning = left.filter(({ effect }) => effect.turns).length;
	return [
		"{count:assumption} more {text} not drawn: none of them moves [[{text}]][[it by more than {n}]][[ {text}]][[, but {word} of them would turn the verdict]].",
		fixed(left.length, 0),
		left.length === 1 ? "is" : "are",
		most === 0 ? "the difference" : undefined,
		most === 0 ? undefined : fixed(most, threeFigures(most)),
		most === 0 || own === "" ? undefined : own,
		turning === 0 ? undefined : turning,
	];
}

const isOpen = (scope: CompareScope, { measure }: Picture): boolean =>
	mainOnes(scope).rows.some((one) => one.measure === measure);

/** What the verdicts of the first pair rest on, of a comparison in which that was looked into. */
export const restsOnWords: readonly Entry<CompareScope>[] = [
	fixedWords(
		"Not looked into in this run. The assumptions at the end of this report decide how large a difference comes out; calibrate them before a decision rests on it.",
		(scope) => !isLookedInto(scope),
	),
	entry(
		"Each of {n} assumptions in turn at half and at twice its value, everything else as it was[[; {text}]]; over {count:replication} with the same random numbers.",
		(scope) =>
			lookedInto(scope).map(({ rows }) => [
				rows.length,
				rows.some(({ effects }) => effects.some(({ without }) => without !== null))
					? "what goes wrong by an assumed chance was also left out, one cause at a time"
					: undefined,
				fixed(Math.min(400, scope.scenario.replications), 0),
			]),
	),
	fixedWords("What would turn a verdict", isLookedInto),
	fixedWords(
		"No difference that was found is lost or turned round at half or at twice any of these values.",
		(scope) => isLookedInto(scope) && lostOnes(scope).length === 0,
	),
	entry(
		"With {text} at half or at twice its value, a difference between {text} and {text} that was found is lost or turned round.",
		(scope) => {
			const many = rowsOf(lostOnes(scope)).length;
			const { a, b } = placed(pairsOf(scope), 0);
			return many === 0 ? [] : [[many === 1 ? "this assumption" : `each of these ${many} assumptions`, a, b]];
		},
	),
	fixedWords(
		"It is worth knowing the value on your own ward before a decision rests on that measure.",
		(scope) => lostOnes(scope).length > 0,
	),
	entry(
		"{word} assumed {text} a difference that stands at half and at twice its value: without that cause it is not found, or turned round.",
		(scope) => {
			const many = rowsOf(hungOnes(scope)).length;
			return many === 0 ? [] : [[many, many === 1 ? "cause carries" : "causes carry"]];
		},
	),
	fixedWords("Nobody has measured how often it comes.", (scope) => hungOnes(scope).length > 0),
	entry("{n} under which a difference shows that was not found", (scope) => {
		const many = rowsOf(shownOnes(scope)).length;
		return many === 0 ? [] : [[many]];
	}),
	entry("{text} ({text}, {text}, {text})", (scope) =>
		[lostOnes, hungOnes, shownOnes].flatMap((ones) =>
			rowsOf(ones(scope)).map((row) => [row.meaning, row.name, valueSaid(row), row.provenance]),
		),
	),
	entry("{text}[[, {text}]]: {n}[[ {text}]] as it stands, {said} at half, {said} at twice[[: {text}]]", (scope) => [
		...lostOnes(scope).map(({ effect }) => effectSaid(scope, effect, true)),
		...shownOnes(scope).map(({ effect }) => effectSaid(scope, effect, false)),
	]),
	entry("{text}[[, {text}]]: {n}[[ {text}]] as it stands, {n} without it", (scope) =>
		hungOnes(scope).map(({ effect }) => {
			const decimals = digitsOf(scope, effect);
			return [
				measureOf(effect.measure).inside,
				whose(scope, effect),
				fixed(effect.base, decimals),
				unit(scope, effect) || undefined,
				fixed(effect.without ?? Number.NaN, decimals),
			];
		}),
	),
	entry("{text}", (scope) => picturesOf(scope).map(({ measure }) => [measureOf(measure).label])),
	entry("The other {n} measures that an assumption moves", (scope) => {
		const many = picturesOf(scope).filter((one) => !isOpen(scope, one)).length;
		return many < 2 ? [] : [[many]];
	}),
	fixedWords(
		"The other measure that an assumption moves",
		(scope) => picturesOf(scope).filter((one) => !isOpen(scope, one)).length === 1,
	),
	entry("{text} asked for: no assumption moves the difference.", (scope) => {
		const still = scope.result.measures.length - picturesOf(scope).length;
		return !isLookedInto(scope) || still === 0 ? [] : [[still === 1 ? "One measure" : `${still} measures`]];
	}),
	entry("Left out: {count:assumption}", (scope) =>
		lookedInto(scope)
			.filter(({ leftOut }) => leftOut.length > 0)
			.map(({ leftOut }) => [fixed(leftOut.length, 0)]),
	),
	entry("{text}: {text}", (scope) =>
		lookedInto(scope).flatMap(({ leftOut }) => leftOut.map(({ name, why }) => [name, why])),
	),
	entry("{text}: what the difference rests on", (scope) =>
		picturesOf(scope).map(({ measure }) => [measureOf(measure).label]),
	),
	entry("The difference, {text} less {text}, is {n}[[ {text}]] as assumed. {said} {said}[[ {said}]]", (scope) =>
		picturesOf(scope).map((picture) => {
			const { a, b } = placed(pairsOf(scope), 0);
			const { all, drawn, decimals } = picture;
			const own = picture.unit || undefined;
			const turning = all.filter(({ effect }) => effect.turns).length;
			const number = (value: number | null): Said =>
				value === null ? ["cannot be run"] : ["{n}[[ {text}]]", fixed(value, decimals), own];
			return [
				a,
				b,
				fixed(placed(all, 0).effect.base, decimals),
				own,
				turning === 0
					? ["No assumption at half or twice its value would turn the verdict."]
					: ["{count:assumption} would turn the verdict.", fixed(turning, 0)],
				listed(
					drawn.map(
						({ row, effect }): Said => [
							"{text} ({text}): {said} at half, {said} at twice[[; {text}]].",
							row.meaning,
							valueSaid(row),
							number(effect.half),
							number(effect.twice),
							effect.turns ? "the verdict turns" : undefined,
						],
					),
					" ",
				),
				leftSaid(picture),
			];
		}),
	),
];

function effectSaid(scope: CompareScope, effect: Effect, found: boolean): readonly unknown[] {
	const decimals = digitsOf(scope, effect);
	return [
		measureOf(effect.measure).inside,
		whose(scope, effect),
		fixed(effect.base, decimals),
		unit(scope, effect) || undefined,
		at(effect.half, decimals),
		at(effect.twice, decimals),
		found ? becomes(effect) : undefined,
	];
}

/** Labels of its pictures. */
export const restsOnLabels: readonly Entry<CompareScope>[] = [
	entry(
		"Mean difference, {text} less {text}, with one assumption at a time at half and at twice its value. Dashed: no difference.[[ {text}]]",
		(scope) =>
			picturesOf(scope).map(({ all }) => {
				const { a, b } = placed(pairsOf(scope), 0);
				return [
					a,
					b,
					all.some(({ effect }) => effect.turns) ? "'turns': the verdict would be another one." : undefined,
				];
			}),
	),
	fixedWords("½: at half the value"),
	fixedWords("2×: at twice the value"),
	fixedWords("turns"),
	fixedWords("more with the first"),
	fixedWords("more with the second"),
	entry("as assumed: {n}[[ {text}]]", (scope) =>
		picturesOf(scope).map(({ all, decimals, unit: own }) => [
			fixed(placed(all, 0).effect.base, decimals),
			own || undefined,
		]),
	),
	entry("{text} {text}[[; {text}]]", (scope) =>
		picturesOf(scope).flatMap(({ drawn }) =>
			drawn.flatMap(({ row, effect }) => [
				[row.meaning, valueSaid(row), undefined],
				...(effect.turns ? [[row.meaning, valueSaid(row), "the verdict turns"]] : []),
			]),
		),
	),
	entry("½ {said} 2× {said}", (scope) =>
		picturesOf(scope).flatMap(({ drawn, decimals }) =>
			drawn.map(({ effect }) => [at(effect.half, decimals), at(effect.twice, decimals)]),
		),
	),
	entry("½ {said}", (scope) =>
		picturesOf(scope).flatMap(({ drawn, decimals }) => drawn.map(({ effect }) => [at(effect.half, decimals)])),
	),
	entry("2× {said}", (scope) =>
		picturesOf(scope).flatMap(({ drawn, decimals }) => drawn.map(({ effect }) => [at(effect.twice, decimals)])),
	),
	entry("{text}", (scope) =>
		picturesOf(scope)
			.filter(({ unit: own }) => own !== "")
			.map(({ unit: own }) => [own]),
	),
	entry("{said}", (scope) =>
		picturesOf(scope).flatMap((picture) => {
			const said = leftSaid(picture);
			return said === undefined ? [] : [[said]];
		}),
	),
];
