import type * as z from "zod";
import { type ConstantName, type Constants, constantFacts, constantNames, constantsWith } from "../../physics/index.ts";
import { record } from "../reading/leaf.ts";
import { type Found, found, received } from "../reading/problem.ts";
import { judge, type QuantityRule, quantity, rule } from "../reading/quantity.ts";
import { asMap, type Fields } from "../reading/raw.ts";

/** How a constant is written and what it may be. */
export function assumptionRule(name: ConstantName): QuantityRule {
	const { unit, meaning, value, range } = constantFacts[name];
	const example = written(value, unit);
	return rule(unit, meaning, range, example, `${meaning}; ${example} unless given`);
}

/** A value with its unit as it stands in a file. */
export const written = (value: number, unit: string) => (unit === "" ? String(value) : `${value} ${unit}`);

const shape = Object.fromEntries(constantNames.map((name) => [name, quantity(assumptionRule(name)).optional()]));

/** Overrides of constants by name, in the unit of the constant or one of its kind. */
export const assumptions = record(
	"assumptions",
	shape as { [N in ConstantName]: z.ZodOptional<ReturnType<typeof quantity>> },
) // fromEntries forgets the names
	.prefault({})
	.describe("constants of the model, by name");

/** The constants with those overrides that can be read. */
export function readableConstants(assumptions: unknown): Constants {
	const given = asMap(assumptions);
	const readable = constantNames.flatMap((name) => {
		const judged = given[name] === undefined ? null : judge(given[name], assumptionRule(name));
		return judged?.ok === true ? [[name, judged.value] as const] : [];
	});
	return constantsWith(Object.fromEntries(readable));
}

const atMost = [
	["pump.maxDepth", "air.ambient"],
	["port.pumpOff", "hands.port"],
] as const;

/** Whether constants that bound one another go together. */
export const goTogether = (constants: Constants) => atMost.every(([low, high]) => constants[low] <= constants[high]);

/** Constants that bound one another. */
export function crossAssumptions(assumptions: unknown): Found[] {
	const given = asMap(assumptions);
	const constants = readableConstants(given);
	return atMost.flatMap(([low, high]) => {
		if (constants[low] <= constants[high]) return [];
		const name = given[low] === undefined ? high : low;
		return [found(["assumptions", name], `${low} of at most ${high}`, received(given[name]))];
	});
}

/** `solution.hang` and `assumptions.source.hang` are one number. */
export function crossHang(root: Fields): Found[] {
	const { hang } = asMap(root.solution);
	const rule = assumptionRule("source.hang");
	const [short, long] = [hang, asMap(root.assumptions)["source.hang"]].map((time) =>
		time === undefined ? null : judge(time, rule),
	);
	if (!short?.ok || !long?.ok || Math.abs(short.value - long.value) < 1e-9) return [];
	return [found(["solution", "hang"], "the same time as assumptions.source.hang, or only one of them", received(hang))];
}

/** The constants with a file's overrides; `hangMin` of the solution is another way to write `source.hang`, which is in hours. */
export function resolveConstants(file: z.output<typeof assumptions>, hangMin: number | undefined): Constants {
	const given = Object.entries(file).filter(([, value]) => value !== undefined);
	const hang = hangMin === undefined ? {} : { "source.hang": hangMin / 60 };
	return constantsWith({ ...Object.fromEntries(given), ...hang });
}
