import type { Difference } from "../../../src/results/index.ts";
import type { Dressing, Regimen, RegimenPatch } from "../../../src/scenario/index.ts";
import { type Catalogue, type CellSaid, type Entry, entry, fixedWords } from "../check.ts";
import { asWritten, fixed } from "../holes.ts";
import { measureOf, ofMean } from "../measures.ts";
import { listed, type Said } from "../pattern.ts";
import { placed } from "../scope.ts";
import { assumptionsTable, cautionsOfAll, raisedCautions, sourcesWords } from "./common.ts";
import { waterLineLabels, waterLineWords } from "./day-charts.ts";
import {
	asked,
	type CompareScope,
	digits,
	isFound,
	mainOnes,
	ownersOf,
	type Pair,
	pairsOf,
	unit,
} from "./differences.ts";
import {
	bagSaid,
	canisterSaid,
	type Drawdown,
	dressingSaid,
	regimenSaid,
	regimensSaid,
	sharedDrawdownSaid,
} from "./regimen.ts";
import { restsOnLabels, restsOnWords } from "./rests-on.ts";

/** A dressing as one regimen of the comparison treats it: the patch laid over its own, where it means this dressing. */
export function treated(dressing: Dressing, patch: RegimenPatch): Dressing {
	const meant = patch.dressing === null || patch.dressing === dressing.id;
	return {
		...dressing,
		regimens: patch.regimens[dressing.id] ?? dressing.regimens,
		canisterMl: (meant ? patch.canisterMl : null) ?? dressing.canisterMl,
		sourceMl: (meant ? patch.sourceMl : null) ?? dressing.sourceMl,
		canisterHoldsMl: (meant ? patch.canisterHoldsMl : null) ?? dressing.canisterHoldsMl,
		sourceLeftMl: (meant ? patch.sourceLeftMl : null) ?? dressing.sourceLeftMl,
	};
}

/** Each regimen as it treats each dressing. */
export const armsOf = ({ scenario }: CompareScope) =>
	scenario.compare.map((patch) => ({
		name: patch.name,
		dressings: scenario.dressings.map((dressing) => treated(dressing, patch)),
	}));

const several = ({ scenario }: CompareScope): boolean => scenario.dressings.length > 1;

/** Every difference that stands in a table or a chart. */
const allAsked = (scope: CompareScope): Difference[] =>
	pairsOf(scope).flatMap((pair) => ownersOf(scope).flatMap((owner) => asked(scope, pair, owner)));

/** A number of a difference with the digits that its interval supports. */
const of = (one: Difference, value: number) => fixed(value, digits(one));

/** The mean of one regimen with the digits that its own interval supports. */
function meanOf({ result }: CompareScope, one: Difference, side: "a" | "b") {
	const own = result.regimens
		.find(({ name }) => name === one[side])
		?.dressings.findLast(({ id }) => id === one.dressing);
	return fixed(side === "a" ? one.meanA : one.meanB, ofMean(one.measure, own?.measures[one.measure]));
}

/** An end of an interval that leaves nought out: where it would be written as nought, what it is. */
const isNought = (one: Difference, value: number): boolean => value !== 0 && asWritten(value, digits(one)) === 0;

/** What is found of a difference, in words. */
function verdictSaid(scope: CompareScope, one: Difference): Said {
	const { less, more } = measureOf(one.measure);
	const word = one.mean < 0 ? less : more;
	const own = unit(scope, one) || undefined;
	const size = of(one, Math.abs(one.mean));
	switch (one.kind) {
		case "differs":
		case "steady": {
			if (one.low95 === null || one.high95 === null)
				return [
					"{text}: {n}[[ {text}]], the same in {text} replication",
					word,
					size,
					own,
					one.variance.paired === 0 ? "every" : "nearly every",
				];
			const ends = [Math.abs(one.low95), Math.abs(one.high95)].toSorted((a, b) => a - b);
			const near = placed(ends, 0);
			return [
				"{text}: {n}[[ {text}]] ([[{text}]][[{n}]] to {n})",
				word,
				size,
				own,
				isNought(one, near) ? "just over 0" : undefined,
				isNought(one, near) ? undefined : of(one, near),
				of(one, placed(ends, 1)),
			];
		}
		case "none-found":
			return [
				"no difference found at {upto}[[ {text}]]",
				Math.max(Math.abs(one.low95 ?? 0), Math.abs(one.high95 ?? 0)),
				one.unit === "share" ? undefined : one.unit || undefined,
			];
		case "same":
			return ["the same in every replication"];
		case "not-judged":
			return ["not judged: it rests on assumed rates of clogging"];
		case "too-rare":
			return one.verdict.includes("most minutes")
				? [
						"cannot be told from {n} replications: most minutes fall on few of them ({within} replications may tell)",
						one.replications,
						[one.replications, 1000],
					]
				: [
						"cannot be told from {n} replications: {within} of them differ from the rest",
						one.replications,
						[0, one.replications / 2 + 4],
					];
	}
}

const meanSaid = (scope: CompareScope, one: Difference, side: "a" | "b"): Said => [
	"{n}[[ {text}]]",
	meanOf(scope, one, side),
	unit(scope, one) || undefined,
];

/** A row of the table in which the differences of a pair are drawn. */
const drawnRow = (scope: CompareScope, one: Difference): CellSaid[] => [
	measureOf(one.measure).label,
	meanSaid(scope, one, "a"),
	meanSaid(scope, one, "b"),
	"",
	mainVerdict(scope)(one),
];

const drawnColumns = ({ a, b }: Pair): string[] => ["measure", a, b, `more with ${b} more with ${a}`, "verdict"];

/** Whether a difference that was found is lost or turned round at half or twice something merely assumed. */
const isFragile = ({ result }: CompareScope, one: Difference): boolean =>
	isFound(one) &&
	result.restsOn !== null &&
	result.restsOn.a === one.a &&
	result.restsOn.b === one.b &&
	result.restsOn.rows.some(
		({ provenance, effects }) =>
			provenance === "assumed" &&
			effects.some(
				(effect) =>
					(effect.turns || effect.hangs) && effect.dressing === one.dressing && effect.measure === one.measure,
			),
	);

const mainVerdict =
	(scope: CompareScope) =>
	(one: Difference): Said => [
		"{said}[[; {text}]]",
		verdictSaid(scope, one),
		isFragile(scope, one) ? "rests on assumed numbers" : undefined,
	];

/** How the regimens of a dressing draw down, with the seconds of the result. */
const drawdownsOf = ({ result }: CompareScope, arm: number, id: string): readonly Drawdown[] =>
	result.regimens[arm]?.dressings.find((one) => one.id === id)?.regimens ?? [];

const sizesOf = ({ canisterMl, canisterHoldsMl, sourceMl, sourceLeftMl }: Dressing): unknown[] => [
	canisterMl,
	canisterHoldsMl,
	sourceMl,
	sourceLeftMl ?? sourceMl,
];

/** Whether the regimens come with other canisters or bags than each other. */
const isSized = (scope: CompareScope): boolean =>
	new Set(armsOf(scope).map(({ dressings }) => JSON.stringify(dressings.map(sizesOf)))).size > 1;

/** How a regimen is set on each dressing: a line for all where it is the same on all, else one for each. */
function regimenLines(scope: CompareScope): unknown[][] {
	const common = commonDrawdown(scope) !== null;
	return armsOf(scope).flatMap(({ dressings }, arm): unknown[][] => {
		const said = dressings.map(
			(dressing): Said => [
				"{said}[[; {said}, {said}]]",
				regimensSaid(dressing.regimens, common ? null : drawdownsOf(scope, arm, dressing.id)),
				isSized(scope) ? canisterSaid(dressing) : undefined,
				isSized(scope) ? bagSaid(dressing) : undefined,
			],
		);
		// Seconds that are written alike are alike.
		const lines = said.map((one) => [undefined, one]);
		const alike = new Set(said.map((one) => JSON.stringify(one))).size === 1;
		return alike ? lines.slice(0, 1) : dressings.map(({ id }, i) => [id, said[i]]);
	});
}

function commonDrawdown(scope: CompareScope): number | null {
	const all = new Set(
		armsOf(scope).flatMap(({ dressings }) =>
			dressings.flatMap(({ regimens }) => regimens.map(({ drawdown }) => drawdown)),
		),
	);
	return all.size === 1 ? placed([...all], 0) : null;
}

const washSaid = ({ fillMl, dwellMin, suctionMin }: Regimen, first: boolean): Said =>
	fillMl === 0
		? ["suction alone"]
		: first
			? [
					"{text} {duration} dwell every {duration}",
					/^(?:8|11|18)(?:\D|$)/u.test(String(Math.round(dwellMin))) && dwellMin < 60 ? "an" : "a",
					dwellMin,
					suctionMin,
				]
			: ["{duration} every {duration}", dwellMin, suctionMin];

/** How two settings of a dressing are told apart, a phrase for each setting. */
function phrases(x: Dressing, y: Dressing): (readonly [Said, Said])[] {
	const [a, b] = [placed(x.regimens, 0), placed(y.regimens, 0)];
	if ((a.fillMl === 0) !== (b.fillMl === 0)) return [[washSaid(a, true), washSaid(b, true)]];
	const pairs: (readonly [Said, Said])[] = [];
	if (a.dwellMin !== b.dwellMin || a.suctionMin !== b.suctionMin) pairs.push([washSaid(a, true), washSaid(b, false)]);
	if (a.fillMl !== b.fillMl)
		pairs.push([
			["fills of {ml}", a.fillMl],
			["of {ml}", b.fillMl],
		]);
	if (a.depthMmHg !== b.depthMmHg)
		pairs.push([
			["suction at {mmHg}", a.depthMmHg],
			["at {mmHg}", b.depthMmHg],
		]);
	if (a.drawdown !== b.drawdown)
		pairs.push([
			["a drawdown of {share}", a.drawdown],
			["of {share}", b.drawdown],
		]);
	if (x.canisterMl !== y.canisterMl)
		pairs.push([
			["a {ml} canister", x.canisterMl],
			["one of {ml}", y.canisterMl],
		]);
	if (x.sourceMl !== y.sourceMl)
		pairs.push([
			["a {ml} bag", x.sourceMl],
			["one of {ml}", y.sourceMl],
		]);
	return pairs;
}

/** How the first two regimens are told apart, each phrase with the dressings that it is about where it is not about all; null where they are set alike. */
function questionSaid(scope: CompareScope): readonly (readonly Said[])[] | null {
	const [one, two] = armsOf(scope);
	if (one === undefined || two === undefined) return null;
	const apart = scope.scenario.dressings.flatMap(({ id }, i) => {
		const [x, y] = [placed(one.dressings, i), placed(two.dressings, i)];
		const set = ({ regimens, canisterMl, sourceMl }: Dressing) => JSON.stringify([regimens, canisterMl, sourceMl]);
		return set(x) === set(y) ? [] : [{ id, pairs: phrases(x, y) }];
	});
	if (apart.length === 0) return null;
	const keys = apart.map(({ pairs }) => JSON.stringify(pairs));
	const said = apart
		.filter((_, i) => keys.indexOf(placed(keys, i)) === i)
		.flatMap(({ pairs }, _, groups) => {
			const key = JSON.stringify(pairs);
			const ids = apart.filter((_one, i) => keys[i] === key).map(({ id }): Said => ["{text}", id]);
			const where = ids.length === scope.scenario.dressings.length ? undefined : listed(ids, ", ", " and ");
			return groups.length === 0
				? []
				: pairs.map((pair) => pair.map((own): Said => ["{said}[[ ({said})]]", own, where]));
		});
	return said.length > 4 ? [[], []] : [said.map((pair) => placed(pair, 0)), said.map((pair) => placed(pair, 1))];
}

/** 'fills of 50 mL' are many. */
const isOfFills = ([, own]: Said): boolean => Array.isArray(own) && String(own[0]).startsWith("fills");

const wound = (scope: CompareScope): string => (several(scope) ? "For these wounds" : "For this wound");

const headings = [
	"The regimens",
	"What this does not tell",
	"Every measure asked for",
	"What the answer rests on",
	"How precise this is",
	"For all of it",
	"What we decided, and why",
	"Names",
	"Date",
	"To be looked at again on",
	"Scenario",
	"Solution",
	"Whether the wound heals sooner or better: nothing here is about healing, pain or comfort.",
	"Which regimen is the better one: there is no overall score. What a wash is worth against a leak or a call at night is for the clinician to weigh, with the patient and the prescription.",
	"That there is no difference where none was found: one smaller than the bar may be there.",
	"The same day under each",
];

/** Every day that is drawn, under a name of its regimen, with that of its dressing where there are several. */
function drawnDays(scope: CompareScope) {
	const { days } = scope.drawings;
	return armsOf(scope).flatMap(({ name, dressings }, arm) =>
		dressings.map((dressing) => ({
			name: several(scope) ? `${name}, ${dressing.id}` : name,
			arm,
			dressing,
			day: placed(
				(days[arm]?.dressings ?? []).filter(({ id }) => id === dressing.id),
				0,
			),
		})),
	);
}

function firstHours(scope: CompareScope) {
	const first = scope.drawings.firstHours;
	if (first === null) return [];
	return first.regimens.flatMap((arm, place) => {
		const patch = placed(scope.scenario.compare, arm);
		return scope.scenario.dressings.map((dressing) => ({
			name: several(scope) ? `${patch.name}, ${dressing.id}` : patch.name,
			dressing: treated(dressing, patch),
			day: placed(
				(first.days[place]?.dressings ?? []).filter(({ id }) => id === dressing.id),
				0,
			),
		}));
	});
}

const sharedDays = (scope: CompareScope) => [...drawnDays(scope), ...firstHours(scope)];

const firstHoursWords: Entry<CompareScope>[] = [
	fixedWords("The first hours", hasFirst),
	entry("A leak comes before {clock} on {said}.", (scope) => {
		const first = scope.drawings.firstHours;
		return first === null
			? []
			: [
					[
						first.spanMin,
						listed(
							first.regimens.map(
								(arm, place): Said => [
									"{percent} of the days under {text}",
									first.leakShare[place],
									placed(scope.scenario.compare, arm).name,
								],
							),
							", ",
							" and ",
						),
					],
				];
	}),
	entry(
		"Drawn is replication {n}, the first on which the two part in these hours.",
		({ drawings: { firstHours: first } }) => (first === null ? [] : [[first.replication]]),
	),
	fixedWords(
		"Enlarged is the time when suction first returns after a dwell: a seal that a move has loosened shows there.",
		hasFirst,
	),
	entry("First hours of {text}", (scope) => firstHours(scope).map(({ name }) => [name])),
	entry("From {clock} to {clock}.", ({ drawings: { firstHours: first } }) =>
		first === null ? [] : [[0, first.spanMin]],
	),
	entry(
		"{count:fill} in this time.",
		(scope) =>
			firstHours(scope).map(({ day }) => [fixed(day.phases.filter(({ phase }) => phase === "fill").length, 0)]),
		true,
	),
];

function hasFirst({ drawings }: CompareScope): boolean {
	return drawings.firstHours !== null;
}

/** A comparison: `report.html`. */
export const compareCatalogue: Catalogue<CompareScope, never> = {
	whole: [
		...cautionsOfAll<CompareScope>("regimens"),
		...raisedCautions<CompareScope>(),
		...sourcesWords<CompareScope>(),
		...restsOnWords,
		...headings.map((heading) => fixedWords<CompareScope>(heading)),
		fixedWords(
			"Whether either clogs more: nobody has measured those rates, so no verdict on clogging is given.",
			({ result }) => result.differences.some(({ kind }) => kind === "not-judged"),
		),
		entry("What [[{text}]][[{duration} come]] to under each", ({ scenario: { horizonMin } }) => [
			horizonMin === 1440 ? ["a day comes", undefined] : [undefined, horizonMin],
		]),
		entry("{text}: a comparison", ({ scenario }) => [[scenario.title]]),
		entry("{text}", ({ scenario }) => [
			[scenario.title],
			[/[.?!…]$/u.test(scenario.title) ? scenario.title : `${scenario.title}.`],
		]),
		entry("{text}, what {text} {said} buy and cost against {said}?", (scope) => {
			const said = questionSaid(scope);
			const [own = [], other = []] = said ?? [];
			return own.length === 0
				? []
				: [
						[
							wound(scope),
							own.length > 1 || isOfFills(placed(own, 0)) ? "do" : "does",
							listed(own, ", ", " and "),
							listed(other, ", ", " and "),
						],
					];
		}),
		entry("{text}, what does {text} buy and cost against {text}?", (scope) => {
			const said = questionSaid(scope);
			const [a, b] = scope.scenario.compare;
			return said !== null && said[0]?.length === 0 ? [[wound(scope), a?.name, b?.name]] : [];
		}),
		entry("{text}, do {text} and {text}, which are set alike, differ at all?", (scope) => {
			const [a, b] = scope.scenario.compare;
			return questionSaid(scope) === null ? [[wound(scope), a?.name, b?.name]] : [];
		}),
		entry("From {date} {time} for {duration}, until {clock}.", ({ scenario: { horizonMin } }) => [
			[0, 0, horizonMin, horizonMin],
		]),
		entry("{count:replication}, chance {text}, the same patients under each regimen.", ({ scenario }) => [
			[fixed(scenario.replications, 0), scenario.chance ? "on" : "off"],
		]),
		entry("{text}", ({ scenario }) => [...scenario.compare.map(({ name }) => [name]), [scenario.solution.name]]),
		entry("[[{text}: ]]{said}.", regimenLines),
		entry("[[{text}: ]]{said}[[; {said} under every regimen]].", (scope) =>
			scope.scenario.dressings.map((dressing) => [
				several(scope) ? dressing.id : undefined,
				dressingSaid(dressing, scope.scenario.constants["foam.capacity"], !isSized(scope)),
				commonDrawdown(scope) === null
					? undefined
					: sharedDrawdownSaid(scope.scenario.compare.flatMap((_, arm) => drawdownsOf(scope, arm, dressing.id))),
			]),
		),
		entry("{text} against {text}: what differs most", (scope) => {
			const { a, b } = placed(pairsOf(scope), 0);
			return [[a, b]];
		}),
		entry("{text} against {text}", (scope) => pairsOf(scope).map(({ a, b }) => [a, b])),
		fixedWords(
			"All dressings together: counts, times, volumes and cost added up, of shares the mean, of first canisters the soonest.",
			several,
		),
		entry("All dressings together.", (scope) => (several(scope) ? [[]] : []), true),
		entry("Dressing {text}.", (scope) => (several(scope) ? scope.scenario.dressings.map(({ id }) => [id]) : [])),
		fixedWords("The measures that were asked for, in that order.", (scope) => mainOnes(scope).largest === null),
		entry("No difference was found in any of {n} measures; shown are the first that were looked at.", (scope) =>
			mainOnes(scope).largest === 0 ? [[mainOnes(scope).many]] : [],
		),
		entry(
			"Of {n} measures, {word} differ[[s{?}]]; shown [[{text}]][[are the {word}]] that differ[[s{?}]] most in proportion, at most one of each matter (washing, leaks, canisters and so on)[[, then {word} in which none was found]]. The order is not a ranking of worth.",
			(scope) => {
				const { largest, found, rows, many } = mainOnes(scope);
				return largest === null || largest === 0
					? []
					: [
							[
								many,
								found,
								found === 1 ? true : undefined,
								largest === 1 ? "is the one" : undefined,
								largest === 1 ? undefined : largest,
								largest === 1 ? true : undefined,
								rows.length === largest ? undefined : rows.length - largest,
							],
						];
			},
		),
		fixedWords(
			"What rests on assumed numbers is lost or turned round at half or at twice one of them, or without one assumed cause: see What the answer rests on.",
			(scope) => allAsked(scope).some((one) => isFragile(scope, one)),
		),
		entry(
			"Dot: mean difference, {text} less {text}. Bar: its 95 % interval; a bar that leaves out 0 is a difference. Each row has its own scale.[[ {text}]]",
			(scope) =>
				pairsOf(scope).flatMap(({ a, b }) => [
					[a, b, undefined],
					[a, b, "A hollow dot has no interval that would hold."],
				]),
			true,
		),
		entry("{text}", (scope) => scope.result.measures.map((measure) => [measureOf(measure).label]), true),
		entry("{said}", (scope) => allAsked(scope).map((one) => [mainVerdict(scope)(one)]), true),
		entry(
			"Means of {count:replication}, the difference {text} less {text} with its 95 % interval, and the share of replications in which either has more and in which {text} does better (empty where more is neither better nor worse).",
			(scope) => pairsOf(scope).map(({ a, b }) => [fixed(scope.result.replications, 0), a, b, a]),
		),
		entry("The same day under {text}", ({ scenario }) => scenario.compare.slice(2).map(({ name }) => [name])),
		entry(
			"Drawn is replication {n}, of the first {count:replication} the one whose courses of canister content, exudate and alarms, all taken together, lie nearest the median.",
			({ result }) => [[result.trace.replication, fixed(Math.min(400, result.replications), 0)]],
		),
		fixedWords(
			"It is the same patient with the same thresholds, turns and nurses under each regimen, on one time axis.",
		),
		fixedWords("Liquid stands above the line, hatched suction hangs below it."),
		fixedWords("Shaded: night shift."),
		entry("{text}", (scope) => drawnDays(scope).map(({ name }) => [name])),
		entry("Water line of {text}", (scope) => drawnDays(scope).map(({ name }) => [name])),
		entry("Water line: {text}", (scope) => drawnDays(scope).map(({ name }) => [name])),
		...waterLineWords<CompareScope>(
			(scope) => sharedDays(scope).map(({ day }) => day),
			(scope) => drawnDays(scope).map(({ dressing }) => regimenSaid(placed(dressing.regimens, 0))),
			({ scenario }) => scenario.horizonMin,
		).map((one) => ({ ...one, optional: true })),
		...firstHoursWords,
		entry(
			"[[Dressing {text}: m]][[{text}]]eans of {n} replications, and in brackets where 8 in 10 of them lie (P10 to P90), or what all of these come to; a few others can draw the mean beyond it.",
			(scope) =>
				scope.scenario.dressings.map(({ id }) => [
					several(scope) ? id : undefined,
					several(scope) ? undefined : "M",
					scope.result.replications,
				]),
		),
		entry(
			"{count:replication}; in each, every regimen meets the same patient, exudate, thresholds of failure, turns and nurses, so that a difference is the regimen's.",
			({ result }) => [[fixed(result.replications, 0)]],
		),
		entry(
			"An interval of 95 % misses the true difference of the model about once in twenty; among {n} of them, [[about {n}]][[{text}]] may.",
			(scope) => {
				const many = asked(scope, placed(pairsOf(scope), 0), placed(ownersOf(scope), 0)).filter(
					({ low95 }) => low95 !== null,
				).length;
				const missed = Math.round(many / 20);
				return [[many, missed <= 1 ? undefined : missed, missed <= 1 ? "one" : undefined]];
			},
		),
		entry(
			"{text} against {text}[[, {text}]]: how many times smaller the variance of the difference is than it would be had each regimen met other patients.",
			(scope) => {
				const { a, b } = placed(pairsOf(scope), 0);
				return [[a, b, several(scope) ? "all dressings together" : undefined]];
			},
		),
		fixedWords("So many times more replications would be needed without pairing."),
		entry("{n}, chance {text}; intervals stand in the tables above", ({ result, scenario }) => [
			[result.replications, scenario.chance ? "on" : "off"],
		]),
	],
	part: [],
	labels: [
		...restsOnLabels,
		fixedWords("measure"),
		fixedWords("verdict"),
		fixedWords("0"),
		entry("{text}", ({ scenario }) => scenario.compare.map(({ name }) => [name])),
		entry("more with {text}", ({ scenario }) => scenario.compare.map(({ name }) => [name])),
		entry("{text}", (scope) => scope.result.measures.map((measure) => [measureOf(measure).label])),
		entry("{said}", (scope) =>
			allAsked(scope).flatMap((one) => [
				[meanSaid(scope, one, "a")],
				[meanSaid(scope, one, "b")],
				[verdictSaid(scope, one)],
				[mainVerdict(scope)(one)],
			]),
		),
		entry("{text} {said}, {text} {said}", (scope) =>
			allAsked(scope).map((one) => [one.a, meanSaid(scope, one, "a"), one.b, meanSaid(scope, one, "b")]),
		),
		entry("{text}: {said}", (scope) =>
			allAsked(scope).flatMap((one) => [
				[measureOf(one.measure).label, verdictSaid(scope, one)],
				[measureOf(one.measure).label, mainVerdict(scope)(one)],
			]),
		),
		// Ends of a scale: as wide as the interval and the dot ask for, and no wider than five times that.
		entry("{within}[[ {text}]]", (scope) =>
			allAsked(scope).flatMap((one) => {
				const far = Math.max(Math.abs(one.mean), Math.abs(one.low95 ?? 0), Math.abs(one.high95 ?? 0));
				const wide = far === 0 ? [1, 1] : [far * 0.999, far * 5];
				return [
					[wide, unit(scope, one) || undefined],
					[wide, undefined],
					[[-placed(wide, 1), -placed(wide, 0)], undefined],
				];
			}),
		),
		entry(
			"Dot: mean difference, {text} less {text}. Bar: its 95 % interval; a bar that leaves out 0 is a difference. Each row has its own scale.[[ {text}]]",
			(scope) =>
				pairsOf(scope).flatMap(({ a, b }) => [
					[a, b, undefined],
					[a, b, "A hollow dot has no interval that would hold."],
				]),
		),
		...waterLineLabels<CompareScope>(
			(scope) =>
				sharedDays(scope).map(({ day, dressing }) => ({
					day,
					regimens: dressing.regimens,
					canisterMl: dressing.canisterMl,
					sourceMl: dressing.sourceMl,
					roundShare: scope.scenario.constants["round.canisterAbove"],
				})),
			({ scenario }) => scenario,
		),
		entry("{text}, enlarged: {range}", (scope) => {
			const first = scope.drawings.firstHours;
			if (first === null) return [];
			return firstHours(scope).flatMap(({ day }) => {
				const drain = day.phases.find(({ phase }) => phase === "drain");
				return drain === undefined
					? [["The first minutes", [0, Math.min(15, first.spanMin)]]]
					: ["Suction returns after the first dwell", "The same minutes"].map((heading) => [
							heading,
							[Math.max(0, drain.startMin - 8), Math.min(first.spanMin, drain.startMin + 12)],
						]);
			});
		}),
	],
	partLabels: [],
	tables: [
		assumptionsTable<CompareScope>(),
		{
			id: /^pair-\d+-\d+-table$/u,
			columns: (scope) => {
				const { a, b } = placed(pairsOf(scope), 0);
				return differenceColumns(a, b);
			},
			rows: (scope) =>
				pairsOf(scope).flatMap((pair) =>
					ownersOf(scope).flatMap((owner) => asked(scope, pair, owner).map((one) => differenceRow(scope, one))),
				),
			columnsOf: (scope) => pairsOf(scope).flatMap(({ a, b }) => ownersOf(scope).map(() => differenceColumns(a, b))),
		},
		{
			id: /^main-differences-rows$/u,
			columns: (scope) => drawnColumns(placed(pairsOf(scope), 0)),
			rows: (scope) => mainOnes(scope).rows.map((one) => drawnRow(scope, one)),
		},
		{
			id: /^pair-\d+-\d+-rows$/u,
			columns: (scope) => drawnColumns(placed(pairsOf(scope), 0)),
			columnsOf: (scope) => pairsOf(scope).flatMap((pair) => ownersOf(scope).map(() => drawnColumns(pair))),
			rows: (scope) =>
				pairsOf(scope).flatMap((pair) =>
					ownersOf(scope).flatMap((owner) => asked(scope, pair, owner).map((one) => drawnRow(scope, one))),
				),
		},
		{
			id: /^quantities-\d+$/u,
			columns: ({ scenario }) => ["Measure", "Unit", ...scenario.compare.map(({ name }) => name)],
			rows: (scope) =>
				scope.scenario.dressings.flatMap(({ id }) =>
					scope.result.measures.flatMap((measure) => {
						const spreads = scope.result.regimens.map(
							({ dressings }) => dressings.find((one) => one.id === id)?.measures[measure],
						);
						return spreads.every((spread) => spread === undefined)
							? []
							: [
									[
										measureOf(measure).label,
										unit(scope, { measure }),
										...spreads.map((spread): CellSaid => {
											if (spread === undefined) return "";
											const { mean, p10, p90 } = spread;
											const digit = ofMean(measure, spread);
											return ["{said}", spreadSaid(mean, p10, p90, digit)];
										}),
									],
								];
					}),
				),
		},
		{
			id: /^pairing$/u,
			columns: () => ["Measure", "Half-width", "Unit", "Pairing saved"],
			rows: (scope) =>
				asked(scope, placed(pairsOf(scope), 0), placed(ownersOf(scope), 0)).map((one): CellSaid[] => {
					const { low95, high95, variance, measure } = one;
					const half = low95 === null || high95 === null ? null : (high95 - low95) / 2;
					return [
						measureOf(measure).label,
						half === null ? "none given" : ["{n}", fixed(half, twoFigures(half))],
						unit(scope, one),
						variance.independent < 1e-18
							? "nothing varies"
							: variance.paired < 1e-18
								? "all of it"
								: [
										"{n} ×",
										fixed(variance.independent / variance.paired, variance.independent / variance.paired < 10 ? 1 : 0),
									],
					];
				}),
		},
	],
	partTables: [],
};

const twoFigures = (value: number): number =>
	value === 0 ? 0 : Math.min(5, Math.max(0, Math.ceil(Math.log10(10 / value) - 1e-12)));

/** '11.4 (11 to 12)'; one number where all of the middle is written alike. */
function spreadSaid(mean: number, p10: number, p90: number, decimals: number): Said {
	const written = (value: number): number => asWritten(value, decimals);
	const [m, low, high] = [mean, p10, p90].map((value) => fixed(value, decimals));
	if (written(p10) !== written(p90)) return ["{n} ({n} to {n})", m, low, high];
	return written(mean) === written(p10) ? ["{n}", m] : ["{n} (mostly {n})", m, low];
}

const differenceColumns = (a: string, b: string): string[] => [
	"Measure",
	"Unit",
	a,
	b,
	"Difference",
	"95 % from",
	"to",
	`${a} more`,
	`${b} more`,
	`${a} better`,
];

function differenceRow(scope: CompareScope, one: Difference): CellSaid[] {
	const number = (value: number | null): CellSaid => (value === null ? "none given" : ["{n}", of(one, value)]);
	const end = (value: number | null): CellSaid =>
		value !== null && one.kind === "differs" && isNought(one, value)
			? `just ${value > 0 ? "over" : "under"} 0`
			: number(value);
	const share = (value: number | null): CellSaid => (value === null ? "" : ["{percent}", value]);
	return [
		measureOf(one.measure).label,
		unit(scope, one),
		["{n}", meanOf(scope, one, "a")],
		["{n}", meanOf(scope, one, "b")],
		number(one.mean),
		end(one.low95),
		end(one.high95),
		share(one.shareAHigher),
		share(one.shareBHigher),
		share(one.shareABetter),
	];
}
