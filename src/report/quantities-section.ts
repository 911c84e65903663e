import type { CompareResult } from "../analysis/compare-result.ts";
import type { Spread } from "../analysis/day-result.ts";
import { durationWords, plainNumber } from "../charts/index.ts";
import { chapter } from "./chapter.ts";
import { compareScale } from "./compare-parts.ts";
import { htmlTable } from "./html-element.ts";
import { meanDecimals, unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";

/** What a day comes to under each regimen: mean, and where 8 days in 10 lie. */
export function quantitiesSection(
	result: CompareResult,
	document: Document,
): HTMLElement {
	const { regimens, scenario } = result;
	const scale = compareScale(result);
	const ids = scenario.dressings.map(({ id }) => id);
	const tables = ids.map((id, index) => {
		const ofRegimen = regimens.map(
			(regimen) =>
				regimen.dressings.find((dressing) => dressing.id === id)?.measures,
		);
		const rows = result.measures
			.filter((measure) =>
				ofRegimen.some((measures) => measures?.[measure] !== undefined),
			)
			.map((measure) => [
				measureWords[measure].label,
				unitWords(measure, scale),
				...ofRegimen.map((measures) => {
					const spread = measures?.[measure];
					return spread === undefined
						? ""
						: spreadWords(spread, meanDecimals(measure, spread));
				}),
			]);
		return htmlTable(document, {
			id: `quantities-${index + 1}`,
			caption: `${ids.length > 1 ? `Dressing ${id}: m` : "M"}eans of ${result.replications} replications, and in brackets where 8 in 10 of them lie (P10 to P90), or what all of these come to; a few others can draw the mean beyond it.`,
			columns: [
				{ heading: "Measure" },
				{ heading: "Unit" },
				...regimens.map(({ name }) => ({ heading: name, numeric: true })),
			],
			rows,
		});
	});
	return chapter(
		document,
		"quantities",
		`What ${scenario.horizonMin === 1440 ? "a day comes" : `${durationWords(scenario.horizonMin)} come`} to under each`,
		...tables,
	);
}

/** '11.4 (11 to 12)'; '64.5 (mostly 64.2)' where all of the middle is one value; '12' where nothing varies. */
function spreadWords(spread: Spread, decimals: number): string {
	const number = (value: number): string => plainNumber(value, decimals);
	const [mean, low, high] = [spread.mean, spread.p10, spread.p90].map(number);
	if (low !== high) return `${mean} (${low} to ${high})`;
	return mean === low ? `${mean}` : `${mean} (mostly ${low})`;
}
