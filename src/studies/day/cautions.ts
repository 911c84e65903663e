import type { Caution, DressingDay, DressingProjection } from "../../results/index.ts";
import { type Dressing, fewReplications, outputCaution, type Scenario, settingCautions } from "../../scenario/index.ts";
import { cloggingAssumed, generalCautions, solutionLabel } from "../kit/cautions.ts";
import { mostWithin } from "../trace/off-spells.ts";
import type { TracedDay } from "../trace/trace-day.ts";

/** Whole numbers as they are, others to one decimal. */
function figure(value: number): string {
	return String(Math.round(value * 10) / 10);
}

/** What a reader must be told about a day and its projection, in sentences. */
export function cautionsOf(
	scenario: Scenario,
	traced: TracedDay,
	projections: readonly Pick<DressingProjection, "totals">[],
	offTooLong: (dressing: number) => number,
): Caution[] {
	const cautions: Caution[] = [...generalCautions];
	scenario.dressings.forEach((dressing, index) => {
		const add = (code: string, text: string) => cautions.push({ code, text, dressing: dressing.id });
		cautions.push(...settingCautions(dressing, scenario.constants));
		suction(scenario, traced, index, offTooLong(index), add);
		solution(dressing, traced.dressings[index], projections[index], add);
		if (dressing.outflow !== null || traced.dressings[index].alarms.some((alarm) => alarm.condition === "large-output"))
			cautions.push(outputCaution(dressing));
	});
	if (scenario.chance) {
		cautions.push(cloggingAssumed, ...fewReplications(scenario));
	}
	return [...cautions, ...solutionLabel(scenario.dressings)];
}

type Add = (code: string, text: string) => void;

function suction(scenario: Scenario, traced: TracedDay, index: number, share: number, add: Add): void {
	const limit = scenario.constants["off.caution"];
	const most = mostWithin(traced.off[index], 1440);
	const rule = `more than ${figure(limit)} min off suction in 24 h (common practice; local policy comes first)`;
	if (most > limit)
		add(
			"off-suction",
			`The drawn day has ${figure(most)} min off suction within 24 h: ${rule} calls for a look at the dressing.`,
		);
	else if (share >= 0.05) add("off-suction", `In ${figure(share * 100)} % of the replications there are ${rule}.`);
}

function solution(
	dressing: Dressing,
	day: DressingDay,
	projection: Pick<DressingProjection, "totals">,
	add: Add,
): void {
	const inside = dressing.tissue === "open-abdomen" || dressing.tissue === "exposed-organ";
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
