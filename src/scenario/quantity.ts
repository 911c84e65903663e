import * as z from "zod";
import {
	type Reading,
	readQuantity,
	sameDimension,
	unitsLike,
} from "../physics/index.ts";
import { nearest } from "./nearest.ts";
import { received } from "./path.ts";

/** What a quantity of the file may be. Bounds are written as in a file and appear in the sentence of a problem. */
export interface QuantityRule {
	/** The engine's unit: the value comes out in it. "" is a bare number. */
	readonly unit: string;
	/** `a duration`, `a volume`. */
	readonly what: string;
	readonly example: string;
	/** Least value allowed. */
	readonly from?: string;
	/** Greatest value allowed. */
	readonly to?: string;
	/** Value that is already too little. */
	readonly above?: string;
	readonly description?: string;
}

type Judged =
	| { readonly ok: true; readonly value: number }
	| {
			readonly ok: false;
			readonly expected: string;
			readonly suggestion?: string;
	  };

/** Judges one value of a file by a rule; the sentence part is the rule's own. */
export function judge(
	raw: unknown,
	rule: QuantityRule,
	words: readonly string[] = [],
): Judged {
	const also = words.map((word) => ` or ${word}`).join("");
	const bare = isRatio(rule.unit);
	if (
		typeof raw !== "string" &&
		!(bare && typeof raw === "number" && Number.isFinite(raw))
	) {
		const expected = bare
			? `${rule.what}, a number such as ${rule.example}${also}`
			: `${rule.what} with its unit, such as "${rule.example}"${also}, in ${unitList(rule.unit)}`;
		return { ok: false, expected };
	}
	const reading = readQuantity(String(raw), rule.unit);
	if (!reading.ok) return misread(reading, rule, also);
	if (!within(reading.value, rule))
		return { ok: false, expected: `${rule.what}${range(rule)}${also}` };
	return { ok: true, value: reading.value };
}

function misread(
	reading: Extract<Reading, { ok: false }>,
	rule: QuantityRule,
	also: string,
): Judged {
	// What is offered is itself accepted.
	const suggestion =
		reading.hint !== null && judge(reading.hint, rule).ok
			? { suggestion: `"${reading.hint}"` }
			: {};
	const sample = isRatio(rule.unit)
		? `a number such as ${rule.example}`
		: `such as "${rule.example}"`;
	if (reading.fault === "comma")
		return {
			ok: false,
			expected: `${rule.what} ${sample}, with a point and no comma`,
			...suggestion,
		};
	const units = isRatio(rule.unit) ? "" : `, in ${unitList(rule.unit)}`;
	// A bare number is not corrected: which unit was meant is not ours to guess.
	return {
		ok: false,
		expected: `${rule.what}, ${sample}${also}${units}`,
		...(reading.fault === "no unit" ? {} : suggestion),
	};
}

/** A bare number will do. */
const isRatio = (unit: string) => sameDimension(unit, "");

const unitList = (unit: string) =>
	unitsLike(unit)
		.filter((name) => name !== "")
		.join(", ");

/** A bound as a number in the rule's unit. */
export function bound(text: string, unit: string): number {
	const reading = readQuantity(text, unit);
	if (!reading.ok) throw new RangeError(`"${text}" is no bound in ${unit}`);
	return reading.value;
}

function within(
	value: number,
	{ unit, from, to, above }: QuantityRule,
): boolean {
	return (
		(from === undefined || value >= bound(from, unit)) &&
		(to === undefined || value <= bound(to, unit)) &&
		(above === undefined || value > bound(above, unit))
	);
}

function range({ from, to, above }: QuantityRule): string {
	const low =
		from !== undefined
			? ` from ${from}`
			: above !== undefined
				? ` above ${above}`
				: "";
	if (to === undefined)
		return from === undefined ? low : ` of at least ${from}`;
	return above !== undefined ? `${low} and up to ${to}` : `${low} to ${to}`;
}

const numberPart =
	"[+\\u2212-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+\\u2212-]?\\d+)?";

/** JSON Schema of a quantity: its form, not its bounds, which `judge` knows. */
function form(
	rule: QuantityRule,
	words: readonly string[],
): Record<string, unknown> {
	const pattern = isRatio(rule.unit)
		? `^${numberPart}\\s*(?:[^\\s\\d.,][^,]*)?$`
		: `^\\s*${numberPart}\\s*[^\\s\\d.,][^,]*$`;
	const number = isRatio(rule.unit) ? [{ type: "number" }] : [];
	const bounds = range(rule) === "" ? "" : ` (${range(rule).trim()})`;
	const units = isRatio(rule.unit) ? "" : `; units: ${unitList(rule.unit)}`;
	const description = `${rule.description ?? rule.what}${bounds}${units}`;
	const forms = [
		...(words.length > 0 ? [{ enum: words }] : []),
		...number,
		{ type: "string", pattern },
	];
	const bareExample = Number(rule.example);
	const example = Number.isFinite(bareExample) ? bareExample : rule.example;
	return forms.length === 1
		? { ...forms[0], description, examples: [example] }
		: { anyOf: forms, description, examples: [...words, example] };
}

/** A quantity as text with a unit, read to a number in the engine's unit. */
export function quantity(rule: QuantityRule) {
	return z
		.unknown()
		.transform((raw, context): number => {
			const judged = judge(raw, rule);
			if (judged.ok) return judged.value;
			return refuse(context, raw, judged.expected, judged.suggestion);
		})
		.meta(form(rule, []));
}

/** A quantity or one of a few words. */
export function quantityOr<W extends string>(
	words: readonly W[],
	rule: QuantityRule,
) {
	return z
		.unknown()
		.transform((raw, context): number | W => {
			const word = words.find((known) => known === raw);
			if (word !== undefined) return word;
			const judged = judge(raw, rule, words);
			if (judged.ok) return judged.value;
			const near = typeof raw === "string" ? nearest(raw, words) : undefined;
			return refuse(context, raw, judged.expected, near ?? judged.suggestion);
		})
		.meta(form(rule, words));
}

/** Files a problem in zod's list; `params.suggestion` is read by `issues.ts`. */
export function refuse(
	context: z.core.$RefinementCtx,
	input: unknown,
	expected: string,
	suggestion?: string,
	inWords?: string,
): never {
	context.issues.push({
		code: "custom",
		input,
		message: expected,
		params: { suggestion, received: inWords ?? received(input) },
	});
	return z.NEVER;
}
