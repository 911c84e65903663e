import type { DayResult } from "../analysis/day-result.ts";
import {
	clockTime,
	counted,
	durationWords,
	regimenWords,
} from "../charts/index.ts";
import { suppliesTable } from "./common-sections.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import { section } from "./section.ts";

/** The days of a plan: which regimen holds when, when dressings are changed, and what to send home. null where there is one regimen and nobody goes home. */
export function planSection(
	result: DayResult,
	document: Document,
): HTMLElement | null {
	const { scenario, home } = result;
	const follows = scenario.dressings.some(
		({ regimens }) => regimens.length > 1,
	);
	if (!follows && home === null) return null;
	const steps = scenario.dressings.flatMap((dressing, place) => [
		...dressing.regimens
			.filter(({ fromMin }) => fromMin < scenario.horizonMin)
			.map((regimen) => ({
				atMin: regimen.fromMin,
				dressing: dressing.id,
				what: regimenWords(regimen),
			})),
		...(result.dressings[place]?.dressingChanges ?? []).map((change) => ({
			atMin: change.startMin,
			dressing: dressing.id,
			what: `dressing changed, ${durationWords(change.endMin - change.startMin)} off suction`,
		})),
	]);
	if (home !== null)
		steps.push({
			atMin: home.fromMin,
			dressing: "",
			what: "goes home",
		});
	const table = htmlTable(document, {
		id: "plan",
		caption: "What holds from when, and when dressings are changed.",
		columns: [
			{ heading: "From" },
			{ heading: "Dressing" },
			{ heading: "What" },
		],
		rows: steps
			.sort((a, b) => a.atMin - b.atMin)
			.map(({ atMin, dressing, what }) => [
				clockTime(atMin, scenario),
				dressing,
				what,
			]),
	});
	return section(
		document,
		"plan-of-days",
		"The plan",
		null,
		table,
		...(home === null ? [] : sendHome(home, result, document)),
	);
}

function sendHome(
	home: NonNullable<DayResult["home"]>,
	result: DayResult,
	document: Document,
): HTMLElement[] {
	const sent = home.supplies
		.filter(({ p90 }) => p90 > 0)
		.map(({ item, p90 }) => `${p90} × ${item}`);
	const words = `To send home for ${durationWords(home.forMin)} from ${clockTime(home.fromMin, result.scenario)}: ${sent.length === 0 ? "nothing" : sent.join(", ")}. Nine in ten of ${counted(result.projection.replications, "replication")} need no more. Whoever receives the patient decides what they hold already.`;
	return [
		htmlElement(document, "p", {}, words),
		suppliesTable(
			"home",
			"Pieces for the first days at home, a canister to begin with included; the dressing that is worn goes along.",
			home.supplies,
			document,
		),
	];
}
