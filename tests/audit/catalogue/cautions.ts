import type { Caution, DressingDay } from "../../../src/results/index.ts";
import type { Dressing, Scenario } from "../../../src/scenario/index.ts";
import type { Tissue } from "../../../src/vocabulary/index.ts";
import type { Fault } from "../check.ts";
import type { Clock } from "../clock.ts";
import { asWritten, fixed, isFixed } from "../holes.ts";
import { isSaidBy, type Said, shown } from "../pattern.ts";
import { type DayScope, placed } from "../scope.ts";
import { tissueName } from "../vocabulary.ts";
import type { CompareScope } from "./differences.ts";

/** A caution as it was derived; of one dressing where it names one. */
interface Warned {
	readonly said: Said;
	readonly dressing?: string;
}

/** One dressing of one regimen, as it was run. */
interface Run {
	readonly scenario: Scenario;
	readonly dressing: Dressing;
	readonly day: DressingDay;
	/** P90 of the solution that does not come back, mL. */
	readonly notReturnedMl: number;
	/** Whether the share of replications with too long a time off suction was looked at. */
	readonly sharesKnown: boolean;
}

const tenth = (value: number) => fixed(value, 1);

/** Depths by tissue, mmHg below ambient, that the trade uses. */
const depths: { readonly [T in Tissue]: readonly [number, number] } = {
	"soft-tissue": [75, 150],
	"necrotic-soft-tissue": [100, 175],
	"open-abdomen": [50, 75],
	"exposed-organ": [50, 75],
};

/** Of the settings of one dressing, each said once. */
function ofSettings({ scenario, dressing }: Run): Said[] {
	const foamMl = dressing.foam.reduce((sum, { areaCm2, thicknessCm }) => sum + areaCm2 * thicknessCm, 0);
	const takesMl = scenario.constants["foam.capacity"] * foamMl;
	const [least, most] = depths[dressing.tissue];
	const all = dressing.regimens.flatMap(({ depthMmHg, fillMl, dwellMin, suctionMin }): Said[] => [
		...(depthMmHg < least || depthMmHg > most
			? [
					[
						"A depth of {mmHg} is outside the −{n} to {mmHg} that are common practice for {text} (no source; local practice varies). Check the prescription.",
						depthMmHg,
						least,
						most,
						tissueName(dressing.tissue),
					] as const,
				]
			: []),
		...(fillMl > takesMl
			? [
					[
						"A fill of {n} mL is above the {n} mL that this foam takes without pooling under the drape.",
						tenth(fillMl),
						tenth(takesMl),
					] as const,
				]
			: []),
		...(fillMl > 0 && (dwellMin < 1 || dwellMin > 30)
			? [["A dwell of {n} min is outside the 1 to 30 min that the defaults were set for.", tenth(dwellMin)] as const]
			: []),
		...(fillMl > 0 && (suctionMin < 60 || suctionMin > 480)
			? [
					[
						"A suction period of {n} min is outside the 60 to 480 min that the defaults were set for.",
						tenth(suctionMin),
					] as const,
				]
			: []),
		...(fillMl > 0 && dwellMin > suctionMin / 2
			? [
					[
						"A dwell of {n} min stands against {n} min of suction: the wound would lie wet and without suction for {n} % of the time or more. Suction for most of a cycle is common practice (no source). Check the prescription.",
						tenth(dwellMin),
						tenth(suctionMin),
						tenth((100 * dwellMin) / (dwellMin + suctionMin)),
					] as const,
				]
			: []),
	]);
	const perArea = dressing.areaCm2 === null ? 0 : dressing.exudateMlPerDay / dressing.areaCm2;
	const wet: Said[] =
		perArea > 5
			? [
					[
						"An exudate of {n} mL/cm² a day is beyond the 5 mL/cm² a day that are assumed as the most a wound gives (no source): check its unit; what a fistula gives is written as outflow.",
						tenth(perArea),
					],
				]
			: dressing.exudateMlPerDay > 3000
				? [
						[
							"An exudate of {n} mL a day is beyond the 3000 mL a day that are assumed as the most a wound gives (no source): check its unit; what a fistula gives is written as outflow.",
							tenth(dressing.exudateMlPerDay),
						],
					]
				: [];
	return [...new Map([...all, ...wet].map((one) => [JSON.stringify(one), one])).values()];
}

/** The most minutes off suction in 24 h that the day may have had: all of them, or an even part. */
function offSuction({ day, scenario }: Run): readonly [number, number] {
	const all = day.totals.offSuctionMin;
	return [all / Math.ceil(scenario.horizonMin / 1440) - 0.05, all + 0.05];
}

function ofRun(run: Run): readonly (readonly [said: Said, sure: boolean])[] {
	const { scenario, dressing, day, notReturnedMl } = run;
	const limit = scenario.constants["off.caution"];
	const [least, most] = offSuction(run);
	const inside = dressing.tissue === "open-abdomen" || dressing.tissue === "exposed-organ";
	const goesIn = day.totals.instilledMl > 0;
	const large = dressing.outflow !== null || day.alarms.some(({ condition }) => condition === "large-output");
	return [
		...ofSettings(run).map((said) => [said, true] as const),
		...(most > limit
			? [
					[
						[
							"The drawn day has {within} min off suction within 24 h: more than {n} min off suction in 24 h (common practice; local policy comes first) calls for a look at the dressing.",
							[Math.max(least, limit), most],
							tenth(limit),
						],
						least > limit,
					] as const,
				]
			: []),
		...(run.sharesKnown && least <= limit
			? [
					[
						[
							"In {within} % of the replications there are more than {n} min off suction in 24 h (common practice; local policy comes first).",
							[5, 100],
							tenth(limit),
						],
						false,
					] as const,
				]
			: []),
		...(goesIn && inside
			? [
					[
						[
							"Up to {n} mL of solution (P90) do not come back to the canister: in {text} ask where it stays, and count it in the fluid balance.",
							tenth(notReturnedMl),
							dressing.tissue === "open-abdomen" ? "an open abdomen" : "a wound with exposed organs",
						],
						true,
					] as const,
				]
			: []),
		...(goesIn && !inside && notReturnedMl > day.totals.instilledMl / 4
			? [
					[
						[
							"Up to {n} mL of the solution (P90) do not come back to the canister: look for weeping at the edge and pooling.",
							tenth(notReturnedMl),
						],
						true,
					] as const,
				]
			: []),
		...(large
			? [
					[
						[
							"A large or sudden output is not treated in the model: what a clinician does about it is not simulated. Look at what comes, and call.",
						],
						true,
					] as const,
				]
			: []),
	];
}

const ofAll = (scenario: Scenario, dressings: readonly Dressing[]): Said[] => [
	[
		"For planning and teaching, not for setting a device or treating a patient. The prescription, the maker's instructions and local policy come first.",
	],
	["Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now."],
	[
		"Nothing here has been validated on patients; numbers marked assumed are placeholders until a site calibrates them.",
	],
	...(scenario.chance
		? [
				[
					"How debris closes a port is assumed from end to end, its direction too: no judgement on clogging may rest on these defaults.",
				] as const,
			]
		: []),
	...(scenario.chance && scenario.replications < 100
		? [["Only {n} replications were run: probabilities and ranges are coarse.", scenario.replications] as const]
		: []),
	...(dressings.some(({ regimens }) => regimens.some(({ fillMl }) => fillMl > 0))
		? [
				[
					"How long an opened source may hang, and which solution may dwell in a wound, follow the solution's label, the prescription and local policy.",
				] as const,
			]
		: []),
];

interface Held extends Warned {
	readonly sure: boolean;
}

function hold(cautions: readonly Caution[], derived: readonly Held[], clock: Clock): Fault[] {
	const document = "cautions";
	const left = [...derived];
	const faults: Fault[] = [];
	for (const { text, dressing = "" } of cautions) {
		const at = left.findIndex((one) => (one.dressing ?? "") === dressing && isSaidBy(text, one.said, clock));
		if (at === -1)
			faults.push({
				document,
				where: dressing,
				said: text,
				derived:
					left.filter(({ said }) => said[0].slice(0, 12) === text.slice(0, 12)).map(({ said }) => shown([said]))[0] ??
					"no caution of the catalogue",
			});
		else left.splice(at, 1);
	}
	for (const { said, dressing = "", sure } of left)
		if (sure) faults.push({ document, where: dressing, said: "nothing", derived: shown([said]) });
	return faults;
}

/** Every caution of a day against what follows from its scenario and its result. */
export const checkDayCautions = (scope: DayScope): Fault[] => {
	const { scenario, result } = scope;
	return hold(
		result.cautions,
		[
			...ofAll(scenario, scenario.dressings).map((said) => ({ said, sure: true })),
			...scenario.dressings.flatMap((dressing, i) =>
				ofRun({
					scenario,
					dressing,
					day: placed(result.dressings, i),
					notReturnedMl: placed(result.projection.dressings, i).totals.notReturnedMl.p90,
					sharesKnown: true,
				}).map(([said, sure]) => ({ said, sure, dressing: dressing.id })),
			),
		],
		scenario,
	);
};

/** Every caution of a comparison: those of every regimen once, those of some with the names of these. */
export function checkCompareCautions(
	scope: CompareScope,
	arms: readonly { readonly name: string; readonly dressings: readonly Dressing[] }[],
): Fault[] {
	const { scenario, result, drawings } = scope;
	const ofArm = arms.map(({ name, dressings }, arm): Held[] => [
		...ofAll(scenario, dressings).map((said) => ({ said, sure: true })),
		...dressings.flatMap((dressing, i) => {
			const own = placed(
				(result.regimens[arm]?.dressings ?? []).filter(({ id }) => id === dressing.id),
				0,
			);
			return ofRun({
				scenario,
				dressing,
				day: placed(drawings.days[arm]?.dressings ?? [], i),
				notReturnedMl: own.totals.notReturnedMl.p90,
				sharesKnown: false,
			}).map(([said, sure]) => ({ said, sure, dressing: dressing.id, name }));
		}),
	]);
	// Two that are written alike are one.
	const key = ({ said, dressing }: Held): string =>
		JSON.stringify([said, dressing], (_, value: unknown) => {
			if (isFixed(value)) return asWritten(value.value, value.decimals);
			// A number between bounds: to the tenth that these leave.
			const [least, most] = Array.isArray(value) ? value : [];
			return typeof least === "number" && typeof most === "number" ? asWritten((least + most) / 2, 1) : value;
		});
	const everywhere = (one: Held): boolean => ofArm.every((some) => some.some((other) => key(other) === key(one)));
	const rare = result.differences.filter(({ kind }) => kind === "too-rare");
	return hold(
		result.cautions,
		[
			...placed(ofArm, 0).filter(everywhere),
			...ofArm.flatMap((some, arm) =>
				some
					.filter((one) => !everywhere(one))
					.map((one) => ({ ...one, said: ["Regimen {text}: {said}", placed(arms, arm).name, one.said] as const })),
			),
			{
				said: [
					"Nothing here says which regimen is better for the wound: washing, fluid, leaks and calls are set side by side, healing is not modelled, and the choice stays with the clinician.",
				],
				sure: true,
			},
			...arms.flatMap(({ name, dressings }, arm): Held[] => {
				const set = JSON.stringify(dressings);
				const before = arms.findIndex((one) => JSON.stringify(one.dressings) === set);
				return before === arm
					? []
					: [
							{
								said: [
									"Regimen {text} has the settings of {text}: they do not differ in anything.",
									name,
									placed(arms, before).name,
								],
								sure: true,
							},
						];
			}),
			...(rare.length === 0
				? []
				: [
						{
							said: [
								"Of {n} differences nothing can be said from {n} replications: what they count is too rare. More replications may tell.",
								rare.length,
								result.replications,
							] as const,
							sure: true,
						},
					]),
		],
		scenario,
	);
}
