import type { Assumption, Caution, CompareResult, DayResult, SweepResult } from "../../results/index.ts";
import { cautionSentences } from "../../vocabulary/index.ts";
import { chapter, type HtmlMaker, plainList, section } from "./html-element.ts";
import { type Column, htmlTable } from "./table.ts";

/** What stands under the title of every report that may be read at a bedside. */
export const bedsideCautions: readonly string[] = cautionSentences.slice(0, 2);

/** A caution, with whose it is where it is one dressing's. */
const cautionWords = ({ dressing, text }: Caution): string =>
	dressing === undefined ? text : `Dressing ${dressing}: ${text}`;

/** What must be known of single dressings, with whose it is. */
export const ofDressings = ({ cautions }: { readonly cautions: readonly Caution[] }): string[] =>
	cautions.filter(({ dressing }) => dressing !== undefined).map(cautionWords);

/** Cautions, to stand beside the regimen that they are of. */
export const cautionLines = (html: HtmlMaker, texts: readonly string[]): HTMLElement[] =>
	texts.map((text) => html("p", { class: "caution" }, text));

/** What a result was made with: terms and what is said of each. */
export type Facts = readonly (readonly [term: string, words: string])[];

/** Seed, version, trace and replications of a day. */
export const dayFacts = ({ scenario, trace, projection, format }: DayResult): Facts => [
	["Seed", scenario.seed],
	["Replications", `${projection.replications}, chance ${scenario.chance}; half-widths stand in the tables above`],
	["Version", `slackwater ${scenario.version}, ${format}`],
	["Trace of the drawn day", `replication ${trace.replication}, ${trace.events} events, ${trace.hash}`],
	["Solution", scenario.solution],
];

/** The same of a comparison or a grid. */
export const studyFacts = ({ scenario, format }: CompareResult | SweepResult, replications: string): Facts => [
	["Scenario", scenario.title],
	["Seed", scenario.seed],
	["Replications", replications],
	["Version", `slackwater ${scenario.version}, ${format}`],
	["Solution", scenario.solution],
];

type Closing = Pick<DayResult, "cautions" | "assumptions">;

/** The last part of a study's report: its cautions, and where its numbers come from. */
export const closingChapter = (html: HtmlMaker, result: Closing, facts: Facts): HTMLElement =>
	chapter(html, "all", "For all of it", cautionsSection(html, result), sourcesSection(html, facts, result.assumptions));

/** Codes of the cautions that `cautionSentences` says already. */
const standing = new Set(["planning-only", "call-a-clinician", "not-validated"]);

/** Cautions: those that every report carries, then those that this scenario raised. */
export function cautionsSection(html: HtmlMaker, result: Pick<Closing, "cautions">): HTMLElement {
	const raised = result.cautions.filter((caution) => !standing.has(caution.code)).map(cautionWords);
	return section(html, "cautions", "Cautions", null, plainList(html, [...cautionSentences, ...raised]));
}

/** What a result was made with, and every number that was taken for granted with its provenance. */
export function sourcesSection(html: HtmlMaker, facts: Facts, assumptions: readonly Assumption[]): HTMLElement {
	const list = facts.flatMap(([term, words]) => [html("dt", {}, term), html("dd", {}, words)]);
	const given = assumptions.filter((assumption) => !assumption.defaulted).length;
	const assumed = assumptions.filter((assumption) => assumption.provenance === "assumed").length;
	const words = `${assumptions.length} numbers were taken for granted: ${given} given by the scenario, ${assumptions.length - given} by default. ${assumed} are assumed: placeholders until a site calibrates them.`;
	const caption = "Assumptions and defaults; those that the scenario gave come first.";
	const rows = assumptions.toSorted((a, b) => Number(a.defaulted) - Number(b.defaulted));
	const table = htmlTable(html, { id: "assumptions", caption }, assumptionColumns, rows);
	return section(html, "sources", "Where the numbers come from", null, html("dl", {}, ...list), words, table);
}

/** A dotted name that may break after a dot. */
const breakable = (html: HtmlMaker, name: string): (Node | string)[] =>
	name.split(/(?<=\.)/).flatMap((part, index) => (index === 0 ? [part] : [html("wbr"), part]));

/** Every number that was taken for granted. */
export const assumptionColumns: readonly Column<Assumption>[] = [
	{
		head: "Name",
		key: "name",
		value: ({ name }) => name,
		written: ({ name }, html) => html("code", {}, ...breakable(html, name)),
	},
	{ head: "Meaning", written: ({ meaning }) => meaning },
	{ head: "Value", numeric: true, key: "value", value: ({ value }) => value },
	{ head: "Unit", key: "unit", value: ({ unit }) => unit },
	{ head: "Provenance", key: "provenance", value: ({ provenance }) => provenance },
	{
		head: "Given by",
		key: "defaulted",
		value: ({ defaulted }) => defaulted,
		written: ({ defaulted }) => (defaulted ? "default" : "scenario"),
	},
	{ key: "meaning", value: ({ meaning }) => meaning },
	{ head: "Source", key: "source", value: ({ source }) => source },
];
