import type { SweepMark, SweepPoint, SweepResult, SweepValue, SweepValues } from "../../../src/results/index.ts";
import type { Scenario } from "../../../src/scenario/index.ts";
import type { AxisName } from "../../../src/vocabulary/index.ts";
import { type Catalogue, type CellSaid, type Entry, entry, fixedWords } from "../check.ts";
import type { CsvSaid } from "../check-files.ts";
import { asWritten, fixed } from "../holes.ts";
import { deserved, measureOf, unitOf } from "../measures.ts";
import { listed, type Said } from "../pattern.ts";
import { placed } from "../scope.ts";
import { assumptionsTable, cautionsOfAll, raisedCautions, sourcesWords } from "./common.ts";
import { assumptionsCsv } from "./day-files.ts";
import { dressingSaid } from "./regimen.ts";

export interface SweepScope {
	readonly scenario: Scenario;
	readonly result: SweepResult;
}

type Name = SweepResult["measures"][number];

const labels: { readonly [N in AxisName]: string } = {
	dwell: "Dwell",
	suction: "Suction period",
	fill: "Fill",
	depth: "Depth",
	start: "First phase at",
	apart: "Dressings",
};
const plurals: { readonly [N in AxisName]: string } = {
	dwell: "dwells",
	suction: "suction periods",
	fill: "fills",
	depth: "depths",
	start: "times of the first phase",
	apart: "steps between the dressings",
};

/** A setting as it is spoken of. */
function settingSaid(name: AxisName, value: number): Said {
	switch (name) {
		case "dwell":
		case "suction":
			return ["{duration}", value];
		case "fill":
			return value === 0 ? ["no fill"] : ["{ml}", value];
		case "depth":
			return ["{mmHg}", value];
		case "start":
			return ["{time}", value];
		case "apart":
			return value === 0 ? ["in step"] : ["{duration} apart", value];
	}
}

const pointSaid = ({ result }: SweepScope, { at }: Pick<SweepPoint, "at">) =>
	listed(
		result.axes.map(({ name }, i) => settingSaid(name, placed(at, i))),
		", ",
	);

const markSaid = ({ regimen }: SweepMark): Said =>
	regimen.fillMl === 0 || regimen.dwellMin === null || regimen.suctionMin === null
		? ["suction alone at {mmHg}", regimen.depthMmHg]
		: [
				"{ml} for {duration} every {duration}, suction at {mmHg}",
				regimen.fillMl,
				regimen.dwellMin,
				regimen.suctionMin,
				regimen.depthMmHg,
			];

const unit = ({ scenario, result }: SweepScope, measure: Name): string =>
	unitOf(measure, scenario.horizonMin, result.currency);

const value = (scope: SweepScope, measure: Name, one: SweepValue): Said => [
	"{n}[[ {text}]]",
	fixed(one.mean, deserved(measure, one.halfWidth95)),
	unit(scope, measure) || undefined,
];

const written = (number: number, decimals: number): string => String(asWritten(number, decimals));

/** Measures of the points, those that are written alike everywhere apart. */
function shown({ result }: SweepScope): { readonly varying: readonly Name[]; readonly alike: readonly Name[] } {
	const carried = result.measures.filter((measure) =>
		[...result.points, ...result.marks].some(({ measures }) => measures[measure] !== undefined),
	);
	const isAlike = (measure: Name): boolean =>
		new Set(
			result.points.flatMap(({ measures }) => {
				const one = measures[measure];
				return one === undefined ? [] : [written(one.mean, deserved(measure, one.halfWidth95))];
			}),
		).size < 2;
	return { varying: carried.filter((measure) => !isAlike(measure)), alike: carried.filter(isAlike) };
}

function best({ result }: SweepScope, measure: Name, way: "lower" | "higher") {
	const all = result.points.flatMap((point) => {
		const one = point.measures[measure];
		return one === undefined ? [] : [{ point, one }];
	});
	const means = all.map(({ one }) => one.mean);
	const most = way === "higher" ? Math.max(...means) : Math.min(...means);
	const those = all.filter(({ one }) => one.mean === most);
	return { ...placed(those, 0), alike: those.length - 1 };
}

/** How the best of a measure stands to what is done now. */
function againstNow(scope: SweepScope, measure: Name, point: SweepPoint, one: SweepValue): Said {
	const { difference, differenceHalfWidth95: half } = one;
	if (point.current) return ["that is what is done now"];
	if (difference === 0) return ["the same as now"];
	const size = Math.abs(difference);
	if (half !== null && size <= half) return ["no difference from now was found"];
	const { less, more } = measureOf(measure);
	const digits = deserved(measure, half);
	const ranged = half !== null && half > 0;
	return [
		"{text} than now by {n}[[ {text}]][[ ({n} to {n})]]",
		difference > 0 ? more : less,
		fixed(size, digits),
		unit(scope, measure) || undefined,
		ranged ? fixed(size - half, digits) : undefined,
		ranged ? fixed(size + half, digits) : undefined,
	];
}

const answers: Entry<SweepScope>[] = [
	entry("{count:regimen} on the grid; no limit was set that any would break.", ({ result }) => [
		[fixed(result.points.length, 0)],
	]),
	entry("{text}: from {said} ({said}) to {said} ({said}).", (scope) =>
		asked(scope)
			.filter((measure) => measureOf(measure).better === null)
			.map((measure) => {
				const [low, high] = [best(scope, measure, "lower"), best(scope, measure, "higher")];
				return [
					measureOf(measure).label,
					value(scope, measure, low.one),
					pointSaid(scope, low.point),
					value(scope, measure, high.one),
					pointSaid(scope, high.point),
				];
			}),
	),
	entry("{text}, {text} is better: {said} at {said}[[ and {count:other} alike]][[, {text}]]; {said}.", (scope) =>
		asked(scope).flatMap((measure) => {
			const { better, less, more, label } = measureOf(measure);
			if (better === null) return [];
			const { point, one, alike } = best(scope, measure, better);
			return [
				[
					label,
					better === "higher" ? more : less,
					value(scope, measure, one),
					pointSaid(scope, point),
					alike === 0 ? undefined : fixed(alike, 0),
					point.outside.length > 0 ? "outside common practice" : undefined,
					againstNow(scope, measure, point, one),
				],
			];
		}),
	),
	entry("The same everywhere: {said}.", (scope) => {
		const { alike } = shown(scope);
		const [first] = scope.result.points;
		return alike.length === 0 || first === undefined
			? []
			: [
					[
						listed(
							alike.map((measure): Said => {
								const one = first.measures[measure];
								const { inside } = measureOf(measure);
								return one === undefined ? ["{text}", inside] : ["{text} {said}", inside, value(scope, measure, one)];
							}),
							", ",
							" and ",
						),
					],
				];
	}),
	entry(
		"{n} of {n} {text} outside common practice for this wound, or ask more of the foam than it takes; they are drawn hatched, and the reasons stand below.",
		({ result }) => {
			const many = result.points.filter(({ outside }) => outside.length > 0).length;
			return many === 0 ? [] : [[many, result.points.length, many === 1 ? "lies" : "lie"]];
		},
	),
	fixedWords(
		"None of them is the best of all: what is gained in one measure is paid in another, and nothing here is about healing.",
	),
	fixedWords("The choice stays with the clinician."),
];

const asked = (scope: SweepScope): readonly Name[] => shown(scope).varying.slice(0, 6);

const isMapped = ({ result }: SweepScope): boolean => result.axes.length >= 2;

/** Reasons for points outside common practice, each with the points that it concerns. */
function reasons({ result }: SweepScope) {
	const all = [...new Set(result.points.flatMap(({ outside }) => outside))];
	return all.map((reason) => ({ reason, points: result.points.filter(({ outside }) => outside.includes(reason)) }));
}

/** What a setting is called at the axis of a map or a curve. */
const singular = (name: AxisName): string =>
	({
		dwell: "dwell",
		suction: "suction period",
		fill: "fill",
		depth: "depth",
		start: "time of the first phase",
		apart: "step between the dressings",
	})[name];

/** The two axes of a map: those with most values, in their order; the others are told over its panels. */
function mapAxes({ result }: SweepScope) {
	const two = result.axes.toSorted((a, b) => b.values.length - a.values.length).slice(0, 2);
	return {
		main: result.axes.filter((axis) => two.includes(axis)),
		others: result.axes.filter((axis) => !two.includes(axis)),
	};
}

const ofAxis = ({ result }: SweepScope, name: string, { at }: SweepPoint) =>
	placed(
		at,
		result.axes.findIndex((axis) => axis.name === name),
	);

/** Digits that tell the cells of a map apart: three figures of the largest, no more than the measure's own. */
function mapDigits({ result }: SweepScope, measure: Name): number {
	const largest = Math.max(0, ...result.points.map(({ measures }) => Math.abs(measures[measure]?.mean ?? 0)));
	const { decimals } = measureOf(measure);
	return largest >= 100 ? 0 : Math.min(decimals, largest >= 10 ? 1 : decimals);
}

const facetSaid = (scope: SweepScope, point: SweepPoint) =>
	listed(
		mapAxes(scope).others.map(
			({ name }): Said => ["{text} {said}", labels[name].toLowerCase(), settingSaid(name, ofAxis(scope, name, point))],
		),
	);

/** One sentence a map: its least and its greatest number, and those that are marked. */
function mapsSaid(scope: SweepScope) {
	const { result } = scope;
	const { main, others } = mapAxes(scope);
	const [x, y] = main;
	if (x === undefined || y === undefined) return [];
	const groups = [
		...new Set(result.points.map((point) => JSON.stringify(others.map(({ name }) => ofAxis(scope, name, point))))),
	].map((key) =>
		result.points.filter((point) => JSON.stringify(others.map(({ name }) => ofAxis(scope, name, point))) === key),
	);
	const maps = shown(scope).varying.flatMap((measure) =>
		groups.map((points): Said => {
			const all = points.flatMap((point) => {
				const mean = point.measures[measure]?.mean;
				return mean === undefined ? [] : [{ point, mean }];
			});
			const means = all.map(({ mean }) => mean);
			const [low, high] = [Math.min(...means), Math.max(...means)];
			const of = (number: number) => fixed(number, mapDigits(scope, measure));
			const at = (mean: number): Said => {
				const { point } = placed(
					all.filter((one) => one.mean === mean),
					0,
				);
				return [
					"{said} and {said}",
					settingSaid(x.name, ofAxis(scope, x.name, point)),
					settingSaid(y.name, ofAxis(scope, y.name, point)),
				];
			};
			const marked = (["current", "usual"] as const).flatMap((mark): Said[] => {
				const one = all.find(({ point }) => point[mark]);
				return one === undefined
					? []
					: [[mark === "current" ? "the current regimen {n}" : "the site's usual regimen {n}", of(one.mean)]];
			});
			const heading = unit(scope, measure);
			return [
				"{text}[[, {text}]][[ ({said})]]: {said}.",
				measureOf(measure).label,
				heading || undefined,
				others.length === 0 ? undefined : facetSaid(scope, placed(points, 0)),
				listed(
					[
						low === high
							? ["{n} everywhere", of(low)]
							: ["from {n} at {said} to {n} at {said}", of(low), at(low), of(high), at(high)],
						...marked,
					],
					"; ",
				),
			];
		}),
	);
	return [
		[
			singular(x.name),
			singular(y.name),
			maps.length === 0 ? undefined : listed(maps.slice(0, 8), " "),
			maps.length > 8 ? maps.length - 8 : undefined,
		],
	];
}

const curvePoints = ({ result }: SweepScope): readonly SweepPoint[] =>
	(result.curve?.points ?? []).map((at) => placed(result.points, at));

function curveAxis({ result }: SweepScope) {
	return result.axes.find(({ name }) => name === result.curve?.axis);
}

/** Three figures of the largest. */
const figures = (numbers: readonly number[]): number => {
	const most = Math.max(0, ...numbers.map(Math.abs));
	return most === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(most))));
};

/** One sentence a curve: its number at both ends, and at the current setting. */
const curveWords = entry<SweepScope>(
	"{text} by {text}: {said} at {said}[[, {said} at {said}]][[; {said} at the current one]].",
	(scope) => {
		const axis = curveAxis(scope);
		if (axis === undefined) return [];
		const points = curvePoints(scope).toSorted((a, b) => ofAxis(scope, axis.name, a) - ofAxis(scope, axis.name, b));
		return shown(scope).varying.map((measure) => {
			const all = points.flatMap((point) => {
				const one = point.measures[measure];
				return one === undefined ? [] : [{ at: ofAxis(scope, axis.name, point), mean: one.mean }];
			});
			const digits = figures(all.map(({ mean }) => mean));
			const number = (mean: number): Said => ["{n}[[ {text}]]", fixed(mean, digits), unit(scope, measure) || undefined];
			const [first, last] = [placed(all, 0), placed(all, all.length - 1)];
			const now = all.find(({ at }) => at === axis.current);
			return [
				measureOf(measure).label,
				labels[axis.name],
				number(first.mean),
				settingSaid(axis.name, first.at),
				all.length === 1 ? undefined : number(last.mean),
				all.length === 1 ? undefined : settingSaid(axis.name, last.at),
				now === undefined ? undefined : number(now.mean),
			];
		});
	},
);

/** A grid of regimens: `report.html`. */
export const sweepCatalogue: Catalogue<SweepScope, never> = {
	whole: [
		...cautionsOfAll<SweepScope>("answers"),
		...raisedCautions<SweepScope>(),
		...sourcesWords<SweepScope>(),
		...answers,
		...["What is varied", "Answers", "Every point of the grid", "For all of it", "Scenario", "Solution"].map(
			(heading) => fixedWords<SweepScope>(heading),
		),
		entry("{text}: a map of regimens", ({ scenario }) => [[scenario.title]]),
		entry("{text}", ({ scenario }) => [
			[scenario.title],
			[/[.?!…]$/u.test(scenario.title) ? scenario.title : `${scenario.title}.`],
			[scenario.solution.name],
		]),
		entry("For this wound, what do other {said} buy and cost against {said}?", ({ result }) => {
			const current = result.marks.find(({ mark }) => mark === "current");
			return [
				[
					listed(
						result.axes.map(({ name }): Said => ["{text}", plurals[name]]),
						", ",
						" and ",
					),
					current === undefined ? ["nothing"] : markSaid(current),
				],
			];
		}),
		entry("From {date} {time} for {duration}, until {clock}.", ({ scenario: { horizonMin } }) => [
			[0, 0, horizonMin, horizonMin],
		]),
		entry(
			"{count:regimen} of {count:replication} each, chance {text}, the same patients under each.",
			({ scenario, result }) => [
				[fixed(result.points.length, 0), fixed(scenario.replications, 0), scenario.chance ? "on" : "off"],
			],
		),
		entry("{text}", ({ result }) => result.axes.map(({ name }) => [labels[name]])),
		entry("{said}", ({ result }) =>
			result.axes.map(({ name, values }) => [
				listed(
					values.map((one) => settingSaid(name, one)),
					", ",
					" and ",
				),
			]),
		),
		entry("{said}.", ({ scenario }) =>
			scenario.dressings.map((dressing) => [dressingSaid(dressing, scenario.constants["foam.capacity"])]),
		),
		fixedWords("The map", isMapped),
		entry("Not drawn, for it is the same everywhere: {said}.", (scope) => {
			const { alike } = shown(scope);
			return !isMapped(scope) || alike.length === 0
				? []
				: [
						[
							listed(
								alike.map((measure): Said => ["{text}", measureOf(measure).inside]),
								", ",
								" and ",
							),
						],
					];
		}),
		entry("{text} across, {text} upwards.[[ {said}]][[ And {word} more maps.]]", (scope) =>
			shown(scope).varying.length === 0 ? [] : mapsSaid(scope),
		),
		fixedWords(
			"No measure differs between the regimens that were run.",
			(scope) => shown(scope).varying.length === 0 && (isMapped(scope) || curveAxis(scope) !== undefined),
		),
		entry("{text} alone", (scope) => {
			const axis = curveAxis(scope);
			return axis === undefined ? [] : [[sentence(singular(axis.name))]];
		}),
		entry("The {text} varied[[, with {said}]]: means, and the band of their 95 % intervals.", (scope) => {
			const axis = curveAxis(scope);
			if (axis === undefined) return [];
			const first = placed(curvePoints(scope), 0);
			const held = scope.result.axes.filter((one) => one !== axis);
			return [
				[
					singular(axis.name),
					held.length === 0
						? undefined
						: listed(
								held.map(
									({ name }): Said => [
										"{text} {said}",
										labels[name].toLowerCase(),
										settingSaid(name, ofAxis(scope, name, first)),
									],
								),
								", ",
								" and ",
							),
				],
			];
		}),
		entry("What the {text} changes", (scope) => {
			const axis = curveAxis(scope);
			return axis === undefined ? [] : [[singular(axis.name)]];
		}),
		curveWords,
		fixedWords("Outside common practice", (scope) => reasons(scope).length > 0),
		fixedWords(
			"These were run all the same, so that the map has no holes. That they are drawn is no advice to use them: check the prescription, the maker's instructions and local policy.",
			(scope) => reasons(scope).length > 0,
		),
		entry("{text} ({count:regimen}: {said}[[; and {word} more]])", (scope) =>
			reasons(scope).map(({ reason, points }) => [
				reason,
				fixed(points.length, 0),
				listed(
					points.slice(0, 6).map((point): Said => ["{said}", pointSaid(scope, point)]),
					"; ",
				),
				points.length > 6 ? points.length - 6 : undefined,
			]),
		),
		entry("{count:regimen} in {count:measure}", ({ result }) => [
			[fixed(result.points.length, 0), fixed(result.measures.length, 0)],
		]),
		fixedWords(
			"Means with their 95 % half-width (±), and the difference from the current regimen with its 95 % interval.",
		),
		entry("{n} at every point, the same random numbers at each; chance {text}", ({ result, scenario }) => [
			[result.replications, scenario.chance ? "on" : "off"],
		]),
	],
	part: [],
	labels: [
		...[
			"no measure differs between the regimens that were run",
			"the current regimen",
			"the site's usual regimen",
			"outside the usual range of the tissue",
			"Each cell is a regimen. The stronger its shade, the larger the number; each measure has its own scale.",
			"Dots: means, with bars and a band of 95 %. Everything else stays as it is.",
			"A hollow dot has no interval that would hold.",
		].map((words) => fixedWords<SweepScope>(words)),
		entry("{text}", ({ result }) => result.axes.flatMap(({ name }) => [[singular(name)], [labels[name]]])),
		entry("{said}", ({ result }) =>
			result.axes.flatMap(({ name, values, current }) => [
				...values.map((one) => [settingSaid(name, one)]),
				[settingSaid(name, current)],
			]),
		),
		entry("{text}[[, {text}]][[ ({said})]]", (scope) =>
			shown(scope).varying.flatMap((measure) =>
				[undefined, ...scope.result.points].map((point) => [
					measureOf(measure).label,
					unit(scope, measure) || undefined,
					point === undefined || mapAxes(scope).others.length === 0 ? undefined : facetSaid(scope, point),
				]),
			),
		),
		entry("{said}", (scope) =>
			mapAxes(scope).others.length === 0 ? [] : scope.result.points.map((point) => [facetSaid(scope, point)]),
		),
		entry("{n}", (scope) =>
			shown(scope).varying.flatMap((measure) =>
				scope.result.points.flatMap(({ measures }) => {
					const one = measures[measure];
					return one === undefined ? [] : [[fixed(one.mean, mapDigits(scope, measure))]];
				}),
			),
		),
		entry("{text} {said}, {text} {said}: {n}[[ {text}]]", (scope) => {
			const [x, y] = mapAxes(scope).main;
			if (x === undefined || y === undefined) return [];
			return shown(scope).varying.flatMap((measure) =>
				scope.result.points.flatMap((point) => {
					const one = point.measures[measure];
					return one === undefined
						? []
						: [
								[
									singular(x.name),
									settingSaid(x.name, ofAxis(scope, x.name, point)),
									singular(y.name),
									settingSaid(y.name, ofAxis(scope, y.name, point)),
									fixed(one.mean, mapDigits(scope, measure)),
									unit(scope, measure) || undefined,
								],
							];
				}),
			);
		}),
		entry("from {n} to {n}", (scope) =>
			shown(scope).varying.map((measure) => {
				const means = scope.result.points.flatMap(({ measures }) => measures[measure]?.mean ?? []);
				const digits = mapDigits(scope, measure);
				return [fixed(Math.min(...means), digits), fixed(Math.max(...means), digits)];
			}),
		),
		entry("current: {said}", (scope) => {
			const axis = curveAxis(scope);
			return axis === undefined ? [] : [[settingSaid(axis.name, axis.current)]];
		}),
		entry("the site's usual regimen: {said}", (scope) => {
			const axis = curveAxis(scope);
			const usual = scope.result.marks.find(({ mark }) => mark === "usual");
			const at =
				axis === undefined || usual === undefined
					? null
					: {
							dwell: usual.regimen.dwellMin,
							suction: usual.regimen.suctionMin,
							fill: usual.regimen.fillMl,
							depth: usual.regimen.depthMmHg,
							start: null,
							apart: null,
						}[axis.name];
			return axis === undefined || at === null ? [] : [[settingSaid(axis.name, at)]];
		}),
		// Ticks of a scale of settings: round values, whose places are looked at apart.
		entry("{duration}", () =>
			Array.from({ length: 49 }, (_, i) => [i * 5]).concat(
				Array.from({ length: 41 }, (_, i) => [i * 6]),
				Array.from({ length: 20 }, (_, i) => [i]),
			),
		),
		entry("{ml}", () => Array.from({ length: 41 }, (_, i) => [i * 5])),
		entry("{mmHg}", () => Array.from({ length: 41 }, (_, i) => [i * 5])),
		fixedWords("no fill"),
	],
	partLabels: [],
	tables: [
		assumptionsTable<SweepScope>(),
		{
			id: /^all-points$/u,
			columns: (scope) => [
				...scope.result.axes.map(({ name }) => labels[name]),
				"Remarks",
				...scope.result.measures.flatMap((measure) => {
					const own = unit(scope, measure);
					return [`${measureOf(measure).label}${own === "" ? "" : `, ${own}`}`, "against now"];
				}),
			],
			rows: (scope) => {
				const { points, marks, axes } = scope.result;
				const remark = (point: SweepPoint): string =>
					[
						point.current ? "the current regimen" : "",
						point.usual ? "the site's usual regimen" : "",
						point.outside.length > 0 ? "outside common practice" : "",
					]
						.filter((words) => words !== "")
						.join("; ");
				return [
					...points.map((point): CellSaid[] => [
						...axes.map(({ name }, i): CellSaid => ["{said}", settingSaid(name, placed(point.at, i))]),
						remark(point),
						...valueCells(scope, point),
					]),
					...marks
						.filter(({ point }) => point === null)
						.map((mark): CellSaid[] => [
							...axes.map(
								({ name, current }): CellSaid => ["{said}", settingSaid(name, markAt(mark, name) ?? current)],
							),
							[
								mark.mark === "current" ? "the current regimen: {said}" : "the site's usual regimen: {said}",
								markSaid(mark),
							],
							...valueCells(scope, mark),
						]),
				];
			},
		},
	],
	partTables: [],
};

const sentence = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function markAt({ regimen }: SweepMark, name: AxisName): number | null {
	switch (name) {
		case "dwell":
			return regimen.dwellMin;
		case "suction":
			return regimen.suctionMin;
		case "fill":
			return regimen.fillMl;
		case "depth":
			return regimen.depthMmHg;
		default:
			return null;
	}
}

function valueCells(scope: SweepScope, of: SweepValues): CellSaid[] {
	return scope.result.measures.flatMap((measure): CellSaid[] => {
		const one = of.measures[measure];
		if (one === undefined) return ["", ""];
		const own = deserved(measure, one.halfWidth95);
		const { difference, differenceHalfWidth95: half } = one;
		const digits = deserved(measure, half);
		const ranged = half !== null && half !== 0;
		return [
			[
				"{n}[[ ± {n}]]",
				fixed(one.mean, own),
				one.halfWidth95 === null || one.halfWidth95 === 0 ? undefined : fixed(one.halfWidth95, own),
			],
			[
				"[[{text}]]{n}[[ ({n} to {n})]]",
				difference > 0 && written(difference, digits) !== "0" ? "+" : undefined,
				fixed(difference, digits),
				ranged ? fixed(difference - half, digits) : undefined,
				ranged ? fixed(difference + half, digits) : undefined,
			],
		];
	});
}

/** The CSV files of a grid. */
export function sweepFiles({ result }: SweepScope): { readonly [file: string]: CsvSaid } {
	const column: { readonly [name: string]: string } = {
		dwell: "dwellMin",
		suction: "suctionMin",
		fill: "fillMl",
		depth: "depthMmHg",
		start: "startClockMin",
		apart: "apartMin",
	};
	const names = [
		...new Set([...result.points, ...result.marks].flatMap(({ measures }) => Object.keys(measures) as Name[])),
	]; // the keys of measures are their names
	const rows = (name: string | number, { measures }: SweepValues) =>
		names.flatMap((measure) => {
			const one = measures[measure];
			return one === undefined
				? []
				: [[name, measure, one.mean, one.halfWidth95, one.difference, one.differenceHalfWidth95]];
		});
	return {
		"points.csv": {
			head: [
				"point",
				...result.axes.map(({ name }) => column[name] ?? ""),
				"current",
				"usual",
				"kept",
				"efficient",
				"outside",
			],
			rows: result.points.map((point, at) => [
				at,
				...point.at,
				point.current,
				point.usual,
				point.kept,
				result.efficient?.points.includes(at) ?? false,
				point.outside.join(" "),
			]),
		},
		"values.csv": {
			head: ["point", "measure", "mean", "halfWidth95", "difference", "differenceHalfWidth95"],
			rows: [
				...result.points.flatMap((point, at) => rows(at, point)),
				...result.marks.flatMap((mark) => rows(mark.mark, mark)),
			],
		},
		"assumptions.csv": assumptionsCsv(result.assumptions),
	};
}
