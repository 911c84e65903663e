import type { Assumption, Caution } from "../analysis/day-result.ts";
import { chapter } from "./chapter.ts";
import { cautionsSection, sourcesSection } from "./common-sections.ts";

/** The last part of a study's report: its cautions, and where its numbers come from. */
export const closingChapter = (
	result: {
		readonly cautions: readonly Caution[];
		readonly assumptions: readonly Assumption[];
	},
	facts: readonly (readonly [string, string])[],
	document: Document,
): HTMLElement =>
	chapter(
		document,
		"all",
		"For all of it",
		cautionsSection(result, document),
		sourcesSection(facts, result.assumptions, document),
	);
