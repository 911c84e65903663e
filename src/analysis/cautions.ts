import {
	type Dressing,
	fewReplications,
	outputCaution,
	type Scenario,
	settingCautions,
} from "../scenario/index.ts";
import type { Caution, DressingDay, DressingProjection } from "./day-result.ts";
import { mostWithin } from "./off-spells.ts";
import type { TracedDay } from "./trace-day.ts";

/** Whole numbers as they are, others to one decimal. */
function figure(value: number): string {
	return String(Math.round(value * 10) / 10);
}

/** What every report says. */
export const generalCautions: readonly Caution[] = [
	{
		code: "planning-only",
		text: "For planning and teaching, not for setting a device or treating a patient. The prescription, the maker's instructions and local policy come first.",
	},
	{
		code: "call-a-clinician",
		text: "Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now.",
	},
	{
		code: "not-validated",
		text: "Nothing here has been validated on patients; numbers marked assumed are placeholders until a site calibrates them.",
	},
];

/** What a reader must be told about a day and its projection, in sentences. */
export function cautionsOf(
	scenario: Scenario,
	traced: TracedDay,
	projections: readonly Pick<DressingProjection, "totals">[],
	offTooLong: (dressing: number) => number,
): Caution[] {
	const cautions: Caution[] = [...generalCautions];
	scenario.dressings.forEach((dressing, index) => {
		const add = (code: string, text: string) =>
			cautions.push({ code, text, dressing: dressing.id });
		cautions.push(...settingCautions(dressing, scenario.constants));
		suction(scenario, traced, index, offTooLong(index), add);
		solution(dressing, traced.dressings[index], projections[index], add);
		if (
			dressing.outflow !== null ||
			traced.dressings[index].alarms.some(
				(alarm) => alarm.condition === "large-output",
			)
		)
			cautions.push(outputCaution(dressing));
	});
	if (scenario.chance) {
		cautions.push({
			code: "clogging-assumed",
			text: "How debris closes a port is assumed from end to end, its direction too: no judgement on clogging may rest on these defaults.",
		});
		cautions.push(...fewReplications(scenario));
	}
	if (
		scenario.dressings.some((dressing) =>
			dressing.regimens.some((regimen) => regimen.fillMl > 0),
		)
	) {
		cautions.push({
			code: "solution-label",
			text: "How long an opened source may hang, and which solution may dwell in a wound, follow the solution's label, the prescription and local policy.",
		});
	}
	return cautions;
}

type Add = (code: string, text: string) => void;

function suction(
	scenario: Scenario,
	traced: TracedDay,
	index: number,
	share: number,
	add: Add,
): void {
	const limit = scenario.constants["off.caution"];
	const most = mostWithin(traced.off[index], 1440);
	const rule = `more than ${figure(limit)} min off suction in 24 h (common practice; local policy comes first)`;
	if (most > limit)
		add(
			"off-suction",
			`The drawn day has ${figure(most)} min off suction within 24 h: ${rule} calls for a look at the dressing.`,
		);
	else if (share >= 0.05)
		add(
			"off-suction",
			`In ${figure(share * 100)} % of the replications there are ${rule}.`,
		);
}

function solution(
	dressing: Dressing,
	day: DressingDay,
	projection: Pick<DressingProjection, "totals">,
	add: Add,
): void {
	const inside =
		dressing.tissue === "open-abdomen" || dressing.tissue === "exposed-organ";
	const most = projection.totals.notReturnedMl.p90;
	if (day.totals.instilledMl === 0) return;
	if (inside) {
		add(
			"not-returned",
			`Up to ${figure(most)} mL of solution (P90) do not come back to the canister: in ${dressing.tissue === "open-abdomen" ? "an open abdomen" : "a wound with exposed organs"} ask where it stays, and count it in the fluid balance.`,
		);
	} else if (most > 0.25 * day.totals.instilledMl) {
		add(
			"not-returned",
			`Up to ${figure(most)} mL of the solution (P90) do not come back to the canister: look for weeping at the edge and pooling.`,
		);
	}
}
