import { scenarioCautions } from "./meaning/cautions.ts";
import { expectedEvents } from "./meaning/events.ts";
import { type Scenario, settingsText } from "./meaning/scenario.ts";
import type { WardScenario } from "./meaning/ward.ts";
import { valueAt } from "./reading/problem.ts";
import { asList, asMap } from "./reading/raw.ts";

/** Events of all replications that take many minutes. */
const longRun = 1e9;

/** What a scenario may say but its author probably did not mean, one sentence each. */
export function notesOf(scenario: Scenario): string[] {
	const { horizonMin, happenings, dressings, care } = scenario;
	const never = `not before the end at ${hours(horizonMin)}, and so never.`;
	const late = happenings.flatMap(({ atMin, what, dressing }, i) =>
		atMin < horizonMin ? [] : [`happenings[${i}]: ${what} of ${dressing} comes at ${hours(atMin)}, ${never}`],
	);
	const idle = dressings.flatMap(({ id, regimens }) =>
		regimens.flatMap(({ fromMin }, i) =>
			fromMin < horizonMin ? [] : [`${id}: regimen ${i + 1} takes over at ${hours(fromMin)}, ${never}`],
		),
	);
	const change = care.dressingChange;
	const unchanged =
		change !== null && "atMin" in change && change.atMin.some((at) => at >= horizonMin)
			? ["care.dressingChange: a change at or after the end never comes."]
			: [];
	const events = expectedEvents(scenario) * scenario.replications;
	const long =
		events > longRun
			? [`The run is long: about ${events.toPrecision(2)} events in all; fewer replications or several workers help.`]
			: [];
	return [
		...late,
		...equal(scenario),
		...idle,
		...unchanged,
		...scenarioCautions(scenario).map(({ dressing, text }) => (dressing === undefined ? text : `${dressing}: ${text}`)),
		...long,
	];
}

/** Regimens of `compare:` that say the same as another. */
function equal({ compare }: Scenario): string[] {
	const said = compare.map(({ name: _, dressing: __, ...settings }) => settingsText(settings));
	return compare.flatMap(({ name }, i) => {
		const first = compare[said.indexOf(said[i])].name;
		if (first === name) return [];
		return [`compare.${name}: the same settings as compare.${first}, so that they will not differ in anything.`];
	});
}

const hours = (minutes: number) => `${Number((minutes / 60).toFixed(2))} h`;

/** The same of a ward; `data` is its file with every dressing written out. */
export function wardNotes({ beds, horizonMin }: WardScenario, data: unknown): string[] {
	const never = beds
		.filter(({ startMin }) => startMin >= horizonMin)
		.map(({ id }) => `ward.beds: the therapy of ${id} begins at or after the end, and so never.`);
	// What a day says of the content at its start holds for that day alone.
	const unused = asList(valueAt(data, ["ward", "kinds"])).flatMap((raw, i) => {
		const { id, unit } = asMap(raw);
		const { holds, left } = asMap(unit);
		if (holds === undefined && left === undefined) return [];
		const why = `what ${String(id)} holds or has left at the start of its day is not used`;
		return [`ward.kinds[${i}]: every therapy of the ward begins with a new canister and a new source; ${why}.`];
	});
	return [...never, ...unused];
}
