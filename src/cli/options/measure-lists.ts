import { nearest } from "../../scenario/reading/nearest.ts";
import type { Constraint, MeasureTarget, PrecisionTarget, SweepAsked } from "../../studies/index.ts";
import type { MeasureName } from "../../vocabulary/index.ts";
import { isMeasureName, isTotalName, measureFact, measureNames, totalNames } from "../../vocabulary/index.ts";
import { quoted } from "../terminal/quoted.ts";
import type { Read, Refuse } from "./values.ts";

/** A measure by the name that was typed, in a list of none or one. */
function measure(typed: string, refuse: Refuse): MeasureName[] {
	if (isMeasureName(typed)) return [typed];
	refuse(`measures, of ${measureNames.join(", ")}`, quoted(typed), nearest(typed, measureNames));
	return [];
}

/** What a list names, each once. */
export const measures: Read<readonly MeasureName[]> = (typed, refuse) =>
	[...new Set(typed.split(",").map((name) => name.trim()))].flatMap((name) => measure(name, refuse));

/** `toCanisterMl=5`: a name and a half-width to reach; null where it is none. */
function halfWidthIn(part: string): { readonly name: string; readonly halfWidth: number | null } {
	const [name = "", width = "", ...rest] = part.split("=");
	const sound = rest.length === 0 && /^\d*\.?\d+$/.test(width) && Number(width) > 0;
	return { name, halfWidth: sound ? Number(width) : null };
}

export const halfWidthsOfTotals: Read<readonly PrecisionTarget[]> = (typed, refuse) =>
	typed.split(",").flatMap((part) => {
		const { name, halfWidth } = halfWidthIn(part);
		if (isTotalName(name) && halfWidth !== null) return [{ total: name, halfWidth }];
		refuse(
			`half-widths such as toCanisterMl=5,meanExudateShare=0.002, of ${totalNames.join(", ")}`,
			JSON.stringify(part.slice(0, 60)),
		);
		return [];
	});

/** Half-widths that the paired differences are to reach. */
export const halfWidthsOfMeasures: Read<readonly MeasureTarget[]> = (typed, refuse) =>
	typed.split(",").flatMap((typedPart) => {
		const part = typedPart.trim();
		const { name, halfWidth } = halfWidthIn(part);
		if (halfWidth === null) refuse("half-widths such as nightCalls=0.05,toCanisterMl=5", quoted(part));
		return measure(name, refuse).flatMap((found) => (halfWidth === null ? [] : [{ measure: found, halfWidth }]));
	});

const isTest = (text: string | undefined): text is Constraint["test"] =>
	["<", "<=", ">", ">="].some((test) => test === text);

/** `nightCalls<0.5, canisterLastsShift>=0.9` */
export const constraints: Read<readonly Constraint[]> = (typed, refuse) =>
	typed.split(",").flatMap((part) => {
		const [, name = "", test, limit = ""] =
			/^\s*([^<>=\s]+)\s*(<=|>=|<|>)\s*(\d+(?:\.\d+)?|\.\d+)\s*$/u.exec(part) ?? [];
		if (isTest(test)) return measure(name, refuse).map((found) => ({ measure: found, test, limit: Number(limit) }));
		refuse("conditions such as nightCalls<0.5, canisterLastsShift>=0.9", quoted(part.trim()));
		return [];
	});

/** `cost,nurseMin` or, where it is not plain which way is better, `meanExudateShare:lower`. */
export const goals: Read<SweepAsked["efficient"]> = (typed, refuse) => {
	const parts = typed.split(",").map((part) => part.trim());
	if (parts.length < 2 || parts.length > 3) refuse("two or three measures");
	return parts.flatMap((part) => {
		const [name = "", way] = part.split(":");
		return measure(name, refuse).flatMap((found) => {
			const better = way ?? measureFact(found).better;
			if (better === "lower" || better === "higher") return [{ measure: found, better }];
			refuse(`which way is better, as ${found}:lower or ${found}:higher`, quoted(part));
			return [];
		});
	});
};
