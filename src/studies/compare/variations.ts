import { type ConstantName, constantFacts, constantNames, type Provenance } from "../../physics/index.ts";
import { type Scenario, withConstant } from "../../scenario/index.ts";
import { assumptionsOf } from "../kit/assumptions.ts";

/** A number that a comparison rests on, and how the scenario looks with another value of it. */
export interface Variation {
	readonly name: string;
	readonly meaning: string;
	readonly value: number;
	readonly unit: string;
	readonly provenance: Provenance | "scenario";
	/** True for a cause that nobody has measured and that would not be there at a value of 0. */
	readonly isAssumedCause: boolean;
	/** null where the scenario cannot run on that value. */
	readonly with: (scenario: Scenario, value: number) => Scenario | null;
}

/** Everything assumed that the scenarios make use of: constants that no source gives, how fast nurses come, how often the patient is turned, how much the wound gives. */
export function variationsOf(scenarios: readonly Scenario[]): Variation[] {
	const used = new Set(scenarios.flatMap((scenario) => assumptionsOf(scenario).map((assumption) => assumption.name)));
	const [scenario] = scenarios;
	return [
		...ofScenario(scenario),
		...constantNames
			.filter((name) => used.has(name) && constantFacts[name].provenance !== "published")
			.map((name) => ofConstant(name, scenario)),
	];
}

/** What goes wrong by chance: at a rate or chance of 0 it never does, and nothing else is changed by that. */
const causes =
	/^(breach\.dry|difficulty\..*|turn\.(held|wet|between)|transfer\..*|debris\.per.*|clump\.chance|kink\.rate)$/;

function ofConstant(name: ConstantName, scenario: Scenario): Variation {
	const fact = constantFacts[name];
	const provenance = scenario.overridden.includes(name) ? "scenario" : fact.provenance;
	return {
		name,
		meaning: fact.meaning,
		value: scenario.constants[name],
		unit: fact.unit,
		provenance,
		isAssumedCause: provenance === "assumed" && causes.test(name),
		with: (one, value) => withConstant(one, name, value),
	};
}

function ofScenario(scenario: Scenario): Variation[] {
	const { care, dressings, chance } = scenario;
	const defaulted = (path: string): Variation["provenance"] =>
		scenario.defaulted.find((entry) => entry.path === path)?.provenance ?? "scenario";
	const response = (key: "dayMin" | "nightMin" | "spread", path: string, meaning: string, unit: string): Variation => ({
		name: path,
		meaning,
		value: care.response[key],
		unit,
		provenance: defaulted(path),
		isAssumedCause: false,
		with: (one, value) => ({ ...one, care: { ...one.care, response: { ...one.care.response, [key]: value } } }),
	});
	const turning = care.turningMin;
	return [
		{
			name: "exudate",
			meaning: "exudate of every wound",
			value: dressings.reduce((sum, one) => sum + one.exudateMlPerDay, 0),
			unit: "mL/d",
			provenance: "scenario",
			isAssumedCause: false,
			with: (one, value) => {
				const before = one.dressings.reduce((sum, dressing) => sum + dressing.exudateMlPerDay, 0);
				return before === 0
					? null
					: {
							...one,
							dressings: one.dressings.map((dressing) => ({
								...dressing,
								exudateMlPerDay: (dressing.exudateMlPerDay * value) / before,
							})),
						};
			},
		},
		response("dayMin", "care.response.day", "delay until a nurse comes, by day", "min"),
		response("nightMin", "care.response.night", "delay until a nurse comes, by night", "min"),
		...(chance ? [response("spread", "care.response.spread", "spread of that delay, lognormal sigma", "")] : []),
		...(turning === null || !chance
			? []
			: [
					{
						name: "care.turning",
						meaning: "interval of turning in bed",
						value: turning,
						unit: "min",
						provenance: defaulted("care.turning"),
						isAssumedCause: false,
						with: (one: Scenario, value: number) =>
							value < 30 ? null : { ...one, care: { ...one.care, turningMin: value } },
					},
				]),
	];
}
