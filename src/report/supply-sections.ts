import type {
	ItemSupply,
	StoreResult,
	SupplyResult,
} from "../analysis/supply-result.ts";
import {
	countBand,
	durationWords,
	fullDate,
	percentWords,
	timeOfDay,
} from "../charts/index.ts";
import { cautionsSection, sourcesSection } from "./common-sections.ts";
import { htmlElement, sentenceNodes } from "./html-element.ts";
import { section } from "./section.ts";
import { dayWordsAt, orderWords, supplyAnswers } from "./supply-answers.ts";
import {
	costSection,
	demandSection,
	kindsSection,
	nursesSection,
	orderSheet,
	policiesSection,
	rulesSection,
	wasteSection,
} from "./supply-tables.ts";

/** How the charts of a ward's report are drawn. */
interface SupplyDrawing {
	/** Width in px of their own grid. */
	readonly widthPx?: number;
	/** Draws one chart more, now or when there is time. */
	readonly later: (draw: () => void) => void;
}

const atOnce: SupplyDrawing = { later: (draw) => draw() };

/** One part of a ward's report; null where there is nothing to say. */
export type SupplySection = (
	result: SupplyResult,
	document: Document,
	drawing?: SupplyDrawing,
) => HTMLElement | null;

/** When, how long and how often: the line under the title. */
export function supplyFacts({ scenario }: SupplyResult): string {
	const warm =
		scenario.warmUpMin === 0
			? ""
			: ` ${durationWords(scenario.warmUpMin)} of warm-up before it are left out.`;
	return `From ${fullDate(0, scenario)} ${timeOfDay(0, scenario)} for ${scenario.days} days.${warm} ${scenario.replications} replications, chance ${scenario.chance}.`;
}

function answersSection(result: SupplyResult, document: Document): HTMLElement {
	const element = htmlElement.bind(null, document);
	const items = supplyAnswers(result).map((sentence) =>
		element("li", {}, ...sentenceNodes(document, sentence)),
	);
	return section(
		document,
		"answers",
		"Answers",
		null,
		element("ul", {}, ...items),
	);
}

const sized = ({ widthPx }: SupplyDrawing) =>
	widthPx === undefined ? {} : { widthPx };

function figure(chart: SVGSVGElement, words: string, document: Document) {
	const element = htmlElement.bind(null, document);
	return element(
		"figure",
		{},
		element(
			"div",
			{
				class: "scroll",
				role: "region",
				tabindex: "0",
				"aria-label": `Chart: ${chart.querySelector("title")?.textContent ?? ""}`,
			},
			chart,
		),
		element("figcaption", {}, words),
	);
}

function stockSection(
	result: SupplyResult,
	document: Document,
	drawing = atOnce,
): HTMLElement {
	const stocked = result.items.filter(({ store }) => store !== null);
	const none = htmlElement(
		document,
		"p",
		{},
		"Every item is of unlimited stock: write pieces instead of unlimited to see what is left.",
	);
	const whole = section(
		document,
		"bands",
		"Stock",
		null,
		stocked.length === 0 ? none : null,
	);
	result.items.forEach((item, i) => {
		const { store } = item;
		if (store === null) return;
		drawing.later(() =>
			whole.append(stockFigure(result, item, store, i, document, drawing)),
		);
	});
	return whole;
}

function stockFigure(
	{ scenario, orders }: SupplyResult,
	{ item }: ItemSupply,
	store: StoreResult,
	place: number,
	document: Document,
	drawing: SupplyDrawing,
): HTMLElement {
	const reading = `Out at least once in ${percentWords(store.stockOut.probability)} of the replications; ${store.fillRate === null ? "nothing was asked for" : `${percentWords(store.fillRate)} of the pieces were there when needed`}.`;
	const chart = countBand(
		{
			title: `Stock: ${item}`,
			clock: scenario,
			unit: "pieces on the shelf",
			firstDay: 0,
			series: store.onHand,
			levels: [{ value: store.rule.reorder, name: "reorder at" }],
			marks: orders
				.filter((order) => order.item === item)
				.filter(({ arrivesMin }) => arrivesMin < scenario.horizonMin)
				.map((order) => ({
					atMin: order.arrivesMin,
					name: `delivery of ${orderWords(order)} on ${dayWordsAt(order.arrivesMin, scenario)}`,
				})),
			marked: "listed deliveries",
			reading,
		},
		document,
		{
			idPrefix: `stock-${place + 1}`,
			styled: place === 0,
			...sized(drawing),
		},
	);
	return figure(
		chart,
		`${reading} Each replication orders by the rules, as its own shelf falls; the order list, whose deliveries the triangles mark, is drawn up once for all of them. So the curve need not rise where a triangle stands.`,
		document,
	);
}

function bedsSection(
	result: SupplyResult,
	document: Document,
	drawing = atOnce,
): HTMLElement {
	const { beds, scenario } = result;
	const warm = beds.firstDay < 0;
	const reading = warm
		? "Left of the line is the warm-up: it is long enough where the band stands still before it."
		: "There is no warm-up: the patients of the first day are those that the scenario lists.";
	const chart = countBand(
		{
			title: "Patients with a therapy unit",
			clock: scenario,
			unit: "patients",
			firstDay: beds.firstDay,
			series: beds.inBed,
			levels:
				scenario.units === null
					? []
					: [{ value: scenario.units, name: "units" }],
			marks: [],
			...(warm ? { divide: { atMin: 0, name: "the count begins" } } : {}),
			reading,
		},
		document,
		{ idPrefix: "beds", styled: false, ...sized(drawing) },
	);
	return section(
		document,
		"beds",
		"Beds, and the warm-up",
		null,
		figure(chart, reading, document),
	);
}

const sources = (result: SupplyResult, document: Document): HTMLElement =>
	sourcesSection(
		[
			["Seed", result.scenario.seed],
			[
				"Replications",
				`${result.scenario.replications}, chance ${result.scenario.chance}`,
			],
			["Version", `slackwater ${result.scenario.version}, ${result.format}`],
			[
				"Trace of the first replication",
				`${result.trace.events} events, ${result.trace.hash}`,
			],
		],
		result.assumptions,
		document,
	);

/** Everything that is said of a ward's weeks, in the order of the report. */
export const supplySections: readonly SupplySection[] = [
	answersSection,
	orderSheet,
	stockSection,
	demandSection,
	rulesSection,
	costSection,
	policiesSection,
	nursesSection,
	wasteSection,
	kindsSection,
	bedsSection,
	cautionsSection,
	sources,
];
