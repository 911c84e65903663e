import { type Entry, entry, fixedWords, type TableEntry } from "../check.ts";
import type { Whole } from "../scope.ts";

const standing = ["planning-only", "call-a-clinician", "not-validated"];

/** What every paper says of itself. */
export const cautionsOfAll = <S extends Whole>(first: string): Entry<S>[] => [
	fixedWords(
		"For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's instructions and local policy come first.",
	),
	fixedWords("Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now."),
	fixedWords(
		"Nothing here has been validated on patients, and numbers marked assumed are placeholders until a site calibrates them.",
	),
	fixedWords(`Skip to the ${first}`),
];

/** Cautions that a result raised, each of which its paper must hold: their own numbers are derived in `cautionNumbers`. */
export const raisedCautions = <S extends Whole>(): Entry<S>[] => [
	entry("{text}", ({ result }) =>
		result.cautions
			.filter(({ code, dressing }) => !standing.includes(code) && dressing === undefined)
			.map(({ text }) => [text]),
	),
	entry("Dressing {text}: {text}", ({ result }) =>
		result.cautions
			.filter(({ code, dressing }) => !standing.includes(code) && dressing !== undefined)
			.map(({ text, dressing }) => [dressing, text]),
	),
];

/** Seed, version and the count of what was taken for granted. */
export const sourcesWords = <S extends Whole>(): Entry<S>[] => [
	fixedWords("Cautions"),
	fixedWords("Where the numbers come from"),
	fixedWords("Seed"),
	fixedWords("Replications"),
	fixedWords("Version"),
	entry("{text}", ({ scenario }) => [[scenario.seed]]),
	entry("slackwater {text}, {text}", ({ result }) => [["1.2.3", result.format]]),
	entry(
		"{n} numbers were taken for granted: {n} given by the scenario, {n} by default.",
		({ result: { assumptions } }) => [
			[
				assumptions.length,
				assumptions.filter(({ defaulted }) => !defaulted).length,
				assumptions.filter(({ defaulted }) => defaulted).length,
			],
		],
	),
	entry("{n} are assumed: placeholders until a site calibrates them.", ({ result: { assumptions } }) => [
		[assumptions.filter(({ provenance }) => provenance === "assumed").length],
	]),
	fixedWords("Assumptions and defaults; those that the scenario gave come first."),
];

export const assumptionsTable = <S extends Whole>(): TableEntry<S> => ({
	id: /^assumptions$/u,
	columns: () => ["Name", "Meaning", "Value", "Unit", "Provenance", "Given by", "Source"],
	rows: ({ result: { assumptions } }) =>
		[...assumptions.filter(({ defaulted }) => !defaulted), ...assumptions.filter(({ defaulted }) => defaulted)].map(
			({ name, meaning, value, unit, provenance, defaulted, source }) => [
				name,
				meaning,
				String(value),
				unit,
				provenance,
				defaulted ? "default" : "scenario",
				source,
			],
		),
});
