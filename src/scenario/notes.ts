import { scenarioCautions } from "./cautions.ts";
import { expectedEvents } from "./events.ts";
import { settingsText } from "./merge.ts";
import type { Scenario } from "./scenario.ts";

/** Events of all replications that take many minutes. */
const longRun = 1e9;

/** What a scenario may say but its author probably did not mean, one sentence each. */
export function notesOf(scenario: Scenario): string[] {
	const { horizonMin, happenings, dressings, care } = scenario;
	const late = happenings.flatMap(({ atMin, what, dressing }, i) =>
		atMin >= horizonMin
			? [
					`happenings[${i}]: ${what} of ${dressing} comes at ${minutes(atMin)}, not before the end at ${minutes(horizonMin)}, and so never.`,
				]
			: [],
	);
	const idle = dressings.flatMap(({ id, regimens }) =>
		regimens.flatMap(({ fromMin }, i) =>
			fromMin >= horizonMin
				? [
						`${id}: regimen ${i + 1} takes over at ${minutes(fromMin)}, not before the end at ${minutes(horizonMin)}, and so never.`,
					]
				: [],
		),
	);
	const change = care.dressingChange;
	const unchanged =
		change !== null &&
		"atMin" in change &&
		change.atMin.some((at) => at >= horizonMin)
			? ["care.dressingChange: a change at or after the end never comes."]
			: [];
	const events = expectedEvents(scenario) * scenario.replications;
	const long =
		events > longRun
			? [
					`The run is long: about ${events.toPrecision(2)} events in all; fewer replications or several workers help.`,
				]
			: [];
	return [
		...late,
		...equal(scenario),
		...idle,
		...unchanged,
		...scenarioCautions(scenario).map(({ dressing, text }) =>
			dressing === undefined ? text : `${dressing}: ${text}`,
		),
		...long,
	];
}

/** Regimens of `compare:` that say the same as another. */
function equal({ compare }: Scenario): string[] {
	const said = compare.map(({ name: _, dressing: __, ...settings }) =>
		settingsText(settings),
	);
	return compare.flatMap(({ name }, i) => {
		const first = said.indexOf(said[i]);
		return first === i
			? []
			: [
					`compare.${name}: the same settings as compare.${compare[first]?.name}, so that they will not differ in anything.`,
				];
	});
}

const minutes = (value: number) => `${Number((value / 60).toFixed(2))} h`;
