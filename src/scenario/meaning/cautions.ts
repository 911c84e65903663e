import type { Constants } from "../../physics/index.ts";
import { mostDwellPerSuction, mostExudate, usualDepth, usualDwellMin, usualSuctionMin } from "./practice.ts";
import type { Dressing, Regimen, Scenario } from "./scenario.ts";

/** What a reader must be told, with a short code; of one dressing where it names one. */
export interface ScenarioCaution {
	readonly code: string;
	readonly text: string;
	readonly dressing?: string;
}

/**
 * Every caution that follows from what a scenario says, before anything is simulated: notes of `check`, and cautions of
 * every report, in the same words.
 */
export function scenarioCautions(scenario: Scenario): ScenarioCaution[] {
	return [
		...scenario.dressings.flatMap((dressing) => [
			...settingCautions(dressing, scenario.constants),
			...(dressing.outflow === null ? [] : [outputCaution(dressing)]),
		]),
		...fewReplications(scenario),
	];
}

/** Whole numbers as they are, others to one decimal. */
const figure = (value: number): string => String(Math.round(value * 10) / 10);

/** Of a large output, which only a scenario's fistula or a simulated day brings. */
export const outputCaution = ({ id }: Dressing): ScenarioCaution => ({
	code: "large-output",
	text: "A large or sudden output is not treated in the model: what a clinician does about it is not simulated. Look at what comes, and call.",
	dressing: id,
});

export function fewReplications({ chance, replications }: Scenario): ScenarioCaution[] {
	const text = `Only ${replications} replications were run: probabilities and ranges are coarse.`;
	return chance && replications < 100 ? [{ code: "few-replications", text }] : [];
}

/** Of wound and regimens of one dressing. */
export function settingCautions(dressing: Dressing, constants: Constants): ScenarioCaution[] {
	const said = [
		...dressing.regimens.flatMap((regimen) => ofRegimen(dressing, regimen, constants)),
		...ofExudate(dressing),
	].map(([code, text]) => ({ code, text, dressing: dressing.id }));
	// Regimens one after the other often share a setting.
	return said.filter(({ text }, i) => said.findIndex((other) => other.text === text) === i);
}

type Words = readonly [code: string, text: string];

function ofRegimen(dressing: Dressing, regimen: Regimen, constants: Constants): Words[] {
	const { depthMmHg, fillMl, dwellMin, suctionMin } = regimen;
	const usual = usualDepth[dressing.tissue];
	const tissue = dressing.tissue.replaceAll("-", " ");
	const capacity = constants["foam.capacity"] * dressing.foamVolumeMl;
	const fills = fillMl > 0;
	const rules: readonly (readonly [boolean, string, string])[] = [
		[
			depthMmHg > usual.most || depthMmHg < usual.least,
			"depth-outside-range",
			`A depth of −${figure(depthMmHg)} mmHg is outside the −${usual.least} to −${usual.most} mmHg that are common practice for ${tissue} (no source; local practice varies). Check the prescription.`,
		],
		[
			fills && fillMl > capacity,
			"fill-above-capacity",
			`A fill of ${figure(fillMl)} mL is above the ${figure(capacity)} mL that this foam takes without pooling under the drape.`,
		],
		[
			fills && (dwellMin < usualDwellMin.least || dwellMin > usualDwellMin.most),
			"dwell-outside-range",
			`A dwell of ${figure(dwellMin)} min is outside the ${usualDwellMin.least} to ${usualDwellMin.most} min that the defaults were set for.`,
		],
		[
			fills && (suctionMin < usualSuctionMin.least || suctionMin > usualSuctionMin.most),
			"suction-outside-range",
			`A suction period of ${figure(suctionMin)} min is outside the ${usualSuctionMin.least} to ${usualSuctionMin.most} min that the defaults were set for.`,
		],
		[
			fills && dwellMin > mostDwellPerSuction * suctionMin,
			"dwell-against-suction",
			`A dwell of ${figure(dwellMin)} min stands against ${figure(suctionMin)} min of suction: the wound would lie wet and without suction for ${figure((100 * dwellMin) / (dwellMin + suctionMin))} % of the time or more. Suction for most of a cycle is common practice (no source). Check the prescription.`,
		],
	];
	return rules.filter(([is]) => is).map(([, code, text]) => [code, text]);
}

function ofExudate({ exudateMlPerDay, areaCm2 }: Dressing): Words[] {
	const perArea = areaCm2 === null ? 0 : exudateMlPerDay / areaCm2;
	const { mlPerCm2PerDay, mlPerDay } = mostExudate;
	const beyond =
		perArea > mlPerCm2PerDay
			? `${figure(perArea)} mL/cm² a day is beyond the ${mlPerCm2PerDay} mL/cm² a day`
			: exudateMlPerDay > mlPerDay
				? `${figure(exudateMlPerDay)} mL a day is beyond the ${mlPerDay} mL a day`
				: null;
	if (beyond === null) return [];
	const text = `An exudate of ${beyond} that are assumed as the most a wound gives (no source): check its unit; what a fistula gives is written as outflow.`;
	return [["exudate-outside-range", text]];
}
