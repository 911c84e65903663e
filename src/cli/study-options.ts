import {
	isMeasureName,
	type MeasureName,
	type MeasureTarget,
	mainMeasures,
	measureNames,
} from "../analysis/index.ts";
import type { Problem } from "../scenario/index.ts";
import { nearest } from "../scenario/nearest.ts";
import { quoted } from "./quoted.ts";

/** A measure by the name that was typed; what is wrong with it is added to `problems`. */
export function readMeasure(
	option: string,
	typed: string,
	problems: Problem[],
): MeasureName | null {
	if (isMeasureName(typed)) return typed;
	const near = nearest(typed, measureNames);
	problems.push({
		path: option,
		expected: `measures, of ${measureNames.join(", ")}`,
		received: quoted(typed),
		...(near === undefined ? {} : { suggestion: near }),
	});
	return null;
}

/** A list of measures; those of every comparison where none was typed. */
export function readMeasures(
	option: string,
	typed: string | undefined,
	problems: Problem[],
): readonly MeasureName[] {
	if (typed === undefined) return mainMeasures;
	const names = typed.split(",").map((name) => name.trim());
	return [...new Set(names)].flatMap((name) => {
		const measure = readMeasure(option, name, problems);
		return measure === null ? [] : [measure];
	});
}

/** `nightCalls=0.05,toCanisterMl=5`: half-widths that the paired differences are to reach. */
export function readTargets(
	typed: string | undefined,
	problems: Problem[],
): readonly MeasureTarget[] {
	if (typed === undefined) return [];
	return typed.split(",").flatMap((part) => {
		const [name = "", width = "", ...rest] = part.trim().split("=");
		const halfWidth = Number(width);
		const sound =
			rest.length === 0 && /^\d*\.?\d+$/.test(width) && halfWidth > 0;
		if (!sound)
			problems.push({
				path: "--precision",
				expected: "half-widths such as nightCalls=0.05,toCanisterMl=5",
				received: quoted(part.trim()),
			});
		const measure = readMeasure("--precision", name, problems);
		return measure === null || !sound ? [] : [{ measure, halfWidth }];
	});
}
