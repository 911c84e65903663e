import type { Dressing, Regimen, Scenario } from "../scenario/index.ts";
import type { Caution, DressingDay, DressingProjection } from "./day-result.ts";
import { mostWithin } from "./off-spells.ts";
import { usualDepth, usualDwellMin, usualSuctionMin } from "./practice.ts";
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
		for (const regimen of dressing.regimens)
			settings(dressing, regimen, scenario, add);
		suction(scenario, traced, index, offTooLong(index), add);
		solution(dressing, traced.dressings[index], projections[index], add);
		if (
			dressing.outflow !== null ||
			traced.dressings[index].alarms.some(
				(alarm) => alarm.condition === "large-output",
			)
		) {
			add(
				"large-output",
				"A large or sudden output is not treated in the model: what a clinician does about it is not simulated. Look at what comes, and call.",
			);
		}
	});
	if (scenario.chance) {
		cautions.push({
			code: "clogging-assumed",
			text: "How debris closes a port is assumed from end to end, its direction too: no judgement on clogging may rest on these defaults.",
		});
		if (scenario.replications < 100) {
			cautions.push({
				code: "few-replications",
				text: `Only ${scenario.replications} replications were run: probabilities and ranges are coarse.`,
			});
		}
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

function settings(
	dressing: Dressing,
	regimen: Regimen,
	scenario: Scenario,
	add: Add,
): void {
	const usual = usualDepth[dressing.tissue];
	const tissue = dressing.tissue.replace("-", " ");
	if (regimen.depthMmHg > usual.most || regimen.depthMmHg < usual.least) {
		add(
			"depth-outside-range",
			`A depth of −${figure(regimen.depthMmHg)} mmHg is outside the −${usual.least} to −${usual.most} mmHg that are common practice for ${tissue} (no source; local practice varies). Check the prescription.`,
		);
	}
	if (regimen.fillMl === 0) return;
	const capacity = scenario.constants["foam.capacity"] * dressing.foamVolumeMl;
	if (regimen.fillMl > capacity) {
		add(
			"fill-above-capacity",
			`A fill of ${figure(regimen.fillMl)} mL is above the ${figure(capacity)} mL that this foam takes without pooling under the drape.`,
		);
	}
	if (
		regimen.dwellMin < usualDwellMin.least ||
		regimen.dwellMin > usualDwellMin.most
	) {
		add(
			"dwell-outside-range",
			`A dwell of ${figure(regimen.dwellMin)} min is outside the ${usualDwellMin.least} to ${usualDwellMin.most} min that the defaults were set for.`,
		);
	}
	if (
		regimen.suctionMin < usualSuctionMin.least ||
		regimen.suctionMin > usualSuctionMin.most
	) {
		add(
			"suction-outside-range",
			`A suction period of ${figure(regimen.suctionMin)} min is outside the ${usualSuctionMin.least} to ${usualSuctionMin.most} min that the defaults were set for.`,
		);
	}
}

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
			`The traced day has ${figure(most)} min off suction within 24 h: ${rule} calls for a look at the dressing.`,
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
