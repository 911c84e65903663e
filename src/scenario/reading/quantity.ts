import { type Range, type Reading, readQuantity, sameDimension, unitsLike } from "../../physics/index.ts";
import { leaf } from "./leaf.ts";
import { nearest } from "./nearest.ts";

/** What a quantity of the file may be. */
export interface QuantityRule {
	/** The engine's unit: the value comes out in it. "" is a bare number. */
	readonly unit: string;
	/** `a duration`, `a volume`. */
	readonly what: string;
	/** Bounds as in a file: they stand so in the sentence of a problem. */
	readonly range: Range;
	readonly example: string;
	/** What it is for. */
	readonly description: string;
}

/** A rule in one line. */
export function rule(unit: string, what: string, range: Range, example: string, description = what): QuantityRule {
	return { unit, what, range, example, description };
}

type Judged =
	| { readonly ok: true; readonly value: number }
	| { readonly ok: false; readonly expected: string; readonly suggestion?: string };

/** Judges one value of a file by a rule; the sentence part is the rule's own. */
export function judge(raw: unknown, rule: QuantityRule, words: readonly string[] = []): Judged {
	const also = words.map((word) => ` or ${word}`).join("");
	const bare = isRatio(rule.unit);
	if (typeof raw !== "string" && !(bare && typeof raw === "number" && Number.isFinite(raw))) {
		const expected = bare
			? `${rule.what}, a number such as ${rule.example}${also}`
			: `${rule.what} with its unit, such as "${rule.example}"${also}, in ${unitList(rule.unit)}`;
		return { ok: false, expected };
	}
	const reading = readQuantity(String(raw), rule.unit);
	if (!reading.ok) return misread(reading, rule, also);
	if (!within(reading.value, rule)) return { ok: false, expected: `${rule.what} ${rule.range}${also}` };
	return { ok: true, value: reading.value };
}

function misread(reading: Extract<Reading, { ok: false }>, rule: QuantityRule, also: string): Judged {
	// What is offered is itself accepted.
	const suggestion = reading.hint !== null && judge(reading.hint, rule).ok ? { suggestion: `"${reading.hint}"` } : {};
	const sample = isRatio(rule.unit) ? `a number such as ${rule.example}` : `such as "${rule.example}"`;
	if (reading.fault === "comma")
		return { ok: false, expected: `${rule.what} ${sample}, with a point and no comma`, ...suggestion };
	const units = isRatio(rule.unit) ? "" : `, in ${unitList(rule.unit)}`;
	// A bare number is not corrected: which unit was meant is not ours to guess.
	const offered = reading.fault === "no unit" ? {} : suggestion;
	return { ok: false, expected: `${rule.what}, ${sample}${also}${units}`, ...offered };
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

function within(value: number, { unit, range }: QuantityRule): boolean {
	const [, lead, low = "", high = ""] = /^(from|above) (.+) to (.+)$/u.exec(range.replace(" and up to ", " to ")) ?? [];
	const least = bound(low, unit);
	return (lead === "above" ? value > least : value >= least) && value <= bound(high, unit);
}

const numberPart = "[+\\u2212-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+\\u2212-]?\\d+)?";

/** JSON Schema of a quantity: its form, not its bounds, which `judge` knows. */
function form(rule: QuantityRule, words: readonly string[]): Record<string, unknown> {
	const pattern = isRatio(rule.unit)
		? `^${numberPart}\\s*(?:[^\\s\\d.,][^,]*)?$`
		: `^\\s*${numberPart}\\s*[^\\s\\d.,][^,]*$`;
	const number = isRatio(rule.unit) ? [{ type: "number" }] : [];
	const units = isRatio(rule.unit) ? "" : `; units: ${unitList(rule.unit)}`;
	const description = `${rule.description} (${rule.range})${units}`;
	const forms = [...(words.length > 0 ? [{ enum: words }] : []), ...number, { type: "string", pattern }];
	const bareExample = Number(rule.example);
	const example = Number.isFinite(bareExample) ? bareExample : rule.example;
	return forms.length === 1
		? { ...forms[0], description, examples: [example] }
		: { anyOf: forms, description, examples: [...words, example] };
}

/** A quantity as text with a unit, read to a number in the engine's unit. */
export const quantity = (rule: QuantityRule) => quantityOr<never>([], rule);

/** A quantity or one of a few words. `otherwise` ends the sentence of a problem where a list may stand there, too. */
export const quantityOr = <W extends string>(
	words: readonly W[],
	rule: QuantityRule,
	{ otherwise = "", as = form(rule, words) } = {},
) =>
	leaf(as, (raw, refuse): number | W => {
		const word = words.find((known) => known === raw);
		if (word !== undefined) return word;
		const judged = judge(raw, rule, words);
		if (judged.ok) return judged.value;
		const near = typeof raw === "string" ? nearest(raw, words) : undefined;
		return refuse(`${judged.expected}${otherwise}`, near ?? judged.suggestion);
	});

/** Makes the leaves of one kind of quantity: each with what it is for, its bounds and an example. */
const kindOf = (unit: string, what: string) => (description: string, range: Range, example: string) =>
	quantity(rule(unit, what, range, example, description));

/** min */
export const duration = kindOf("min", "a duration");
/** mL */
export const volume = kindOf("mL", "a volume");
/** cm² */
export const area = kindOf("cm2", "an area");
export const share = kindOf("", "a share");
/** Lognormal sigma. */
export const sigma = (description: string) => kindOf("", "a spread")(description, "from 0 to 3", "0.6");
