import type {
	Assumption,
	Caution,
	DayResult,
	Supply,
} from "../analysis/day-result.ts";
import { plainNumber } from "../charts/index.ts";
import { cautionSentences, cautionWords } from "./caution.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import { section } from "./section.ts";

/** What the dressings need together, in pieces. */
export function suppliesSection(
	result: DayResult,
	document: Document,
): HTMLElement {
	const { supplies } = result.scenario;
	const body =
		supplies.length === 0
			? htmlElement(document, "p", {}, "Nothing is used up in the time shown.")
			: suppliesTable(
					"supplies",
					"Pieces for the time shown: half of the days need no more than the first number, nine in ten no more than the second.",
					supplies,
					document,
				);
	return section(document, "supplies", "Supplies", null, body);
}

export const suppliesTable = (
	id: string,
	caption: string,
	supplies: readonly Supply[],
	document: Document,
): HTMLElement =>
	htmlTable(document, {
		id,
		caption,
		columns: [
			{ heading: "Item" },
			{ heading: "Half (P50)", numeric: true },
			{ heading: "Nine in ten (P90)", numeric: true },
			{ heading: "Packs that cover P90", numeric: true },
		],
		rows: supplies.map((supply) => [
			supply.item,
			plainNumber(supply.p50, 1),
			plainNumber(supply.p90, 1),
			supply.packs === null
				? ""
				: `${supply.packs} of ${supply.packSize ?? "?"}`,
		]),
	});

/** Codes of the cautions that `cautionSentences` says already. */
const standing = new Set([
	"planning-only",
	"call-a-clinician",
	"not-validated",
]);

/** Cautions: those that every report carries, then those that this scenario raised. */
export function cautionsSection(
	result: { readonly cautions: readonly Caution[] },
	document: Document,
): HTMLElement {
	const raised = result.cautions
		.filter((caution) => !standing.has(caution.code))
		.map(cautionWords);
	const items = [...cautionSentences, ...raised].map((text) =>
		htmlElement(document, "li", {}, text),
	);
	return section(
		document,
		"cautions",
		"Cautions",
		null,
		htmlElement(document, "ul", { class: "plain" }, ...items),
	);
}

/** Seed, version, trace and replications of a day. */
export const dayFacts = ({
	scenario,
	trace,
	projection,
	format,
}: DayResult): readonly (readonly [string, string])[] => [
	["Seed", scenario.seed],
	[
		"Replications",
		`${projection.replications}, chance ${scenario.chance}; half-widths stand in the tables above`,
	],
	["Version", `slackwater ${scenario.version}, ${format}`],
	[
		"Trace of the drawn day",
		`replication ${trace.replication}, ${trace.events} events, ${trace.hash}`,
	],
	["Solution", scenario.solution],
];

/** What a result was made with, and every number that was taken for granted with its provenance. */
export function sourcesSection(
	facts: readonly (readonly [string, string])[],
	assumptions: readonly Assumption[],
	document: Document,
): HTMLElement {
	const list = facts.flatMap(([term, words]) => [
		htmlElement(document, "dt", {}, term),
		htmlElement(document, "dd", {}, words),
	]);
	const given = assumptions.filter(
		(assumption) => !assumption.defaulted,
	).length;
	const assumed = assumptions.filter(
		(assumption) => assumption.provenance === "assumed",
	).length;
	const words = `${assumptions.length} numbers were taken for granted: ${given} given by the scenario, ${assumptions.length - given} by default. ${assumed} are assumed: placeholders until a site calibrates them.`;
	const table = htmlTable(document, {
		id: "assumptions",
		caption:
			"Assumptions and defaults; those that the scenario gave come first.",
		columns: [
			{ heading: "Name" },
			{ heading: "Meaning" },
			{ heading: "Value", numeric: true },
			{ heading: "Unit" },
			{ heading: "Provenance" },
			{ heading: "Given by" },
			{ heading: "Source" },
		],
		rows: [...assumptions]
			.sort((a, b) => Number(a.defaulted) - Number(b.defaulted))
			.map((row) => assumptionRow(row, document)),
	});
	return section(
		document,
		"sources",
		"Where the numbers come from",
		null,
		htmlElement(document, "dl", {}, ...list),
		htmlElement(document, "p", {}, words),
		table,
	);
}

/** A dotted name that may break after a dot. */
const breakable = (name: string, document: Document): (Node | string)[] =>
	name
		.split(/(?<=\.)/)
		.flatMap((part, index) =>
			index === 0 ? [part] : [htmlElement(document, "wbr"), part],
		);

const assumptionRow = (
	assumption: Assumption,
	document: Document,
): (Node | string)[] => [
	htmlElement(document, "code", {}, ...breakable(assumption.name, document)),
	assumption.meaning,
	typeof assumption.value === "number"
		? String(assumption.value)
		: assumption.value,
	assumption.unit,
	assumption.provenance,
	assumption.defaulted ? "default" : "scenario",
	assumption.source,
];
