import type { DayResult, Schedule } from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	counted,
	durationWords,
	regimenWords,
} from "../charts/index.ts";
import { suppliesTable } from "./common-sections.ts";
import { waits } from "./dressing-words.ts";
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
	const schedules = result.dressings.map(({ schedule }) => schedule);
	const steps = scenario.dressings.flatMap((dressing, place) => [
		...dressing.regimens
			.filter(({ fromMin }) => fromMin < scenario.horizonMin)
			.flatMap((regimen, i) => {
				if (i === 0)
					return [
						{
							atMin: regimen.fromMin,
							dressing: dressing.id,
							what: regimenWords(regimen),
						},
					];
				const takeover = schedules[place]?.takeovers.find(
					(one) => one.regimen === i,
				);
				return [
					{
						atMin: takeover?.atMin ?? regimen.fromMin,
						dressing: dressing.id,
						what: `${regimenWords(regimen)}${takeoverWords(takeover, scenario)}`,
					},
				];
			}),
		...(schedules[place]?.dressingChanges ?? []).map((change) => ({
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
		caption:
			"What holds from when, and when dressings are changed, where nothing comes between.",
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

/** Where a regimen does not take over at its own time. */
function takeoverWords(
	takeover: Schedule["takeovers"][number] | undefined,
	clock: Clock,
): string {
	if (takeover === undefined) return " (not before the end of the time shown)";
	return waits(takeover)
		? ` (set for ${clockTime(takeover.fromMin, clock)}; the cycle that ran then was finished first)`
		: "";
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
