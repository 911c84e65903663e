import * as z from "zod";
import { judge, type QuantityRule, refuse } from "./quantity.ts";

/** What a drawdown may be, wherever one is written. Less than a thousandth of the pump's flow is no setting. */
export const drawdownBounds = { from: "0.1 %", to: "100 %" };

const rule: QuantityRule = {
	unit: "",
	what: "the share of the pump's flow that is let work while suction is drawn down",
	example: "15 %",
	...drawdownBounds,
};

/** What three named steps of older files stood for. */
const named: { readonly [step: string]: string } = {
	gentle: "5 %",
	standard: "15 %",
	brisk: "50 %",
};

/** Constants of older files, each with what to write instead. */
export const goneConstants: { readonly [name: string]: string } =
	Object.fromEntries(
		Object.entries(named).map(([step, written]) => [
			`pump.${step}`,
			`drawdown: ${written} in the regimen, or pump.drawdown for those that give none`,
		]),
	);

/** A share as it is written in a file: `15 %`. */
export const percent = (share: number): string =>
	`${Number((share * 100).toPrecision(12))} %`;

/** The share of the pump's flow in a drawdown, 0…1; written as a percentage or as a bare share. */
export const drawdown = z
	.unknown()
	.transform((raw, context): number => {
		const step = typeof raw === "string" ? raw.trim().toLowerCase() : "";
		if (Object.hasOwn(named, step))
			return refuse(
				context,
				raw,
				`a share of the pump's flow instead of a name: write ${named[step]}`,
				named[step],
			);
		const judged = judge(raw, rule);
		if (judged.ok) return judged.value;
		const bare = typeof raw === "number" ? String(raw) : step;
		const meant = `${bare} %`;
		// 15 alone was meant as a percentage.
		return /^[\d.]+$/u.test(bare) && judge(meant, rule).ok
			? refuse(context, raw, judged.expected, meant)
			: refuse(context, raw, judged.expected, judged.suggestion);
	})
	.meta({
		anyOf: [
			{ type: "number", exclusiveMinimum: 0, maximum: 1 },
			{ type: "string", pattern: "^\\s*\\+?(?:\\d+(?:\\.\\d+)?|\\.\\d+)" },
		],
		examples: ["5 %", "15 %", "50 %"],
		default: "15 %",
		description:
			"share of the pump's flow that is let work until the set depth is reached, for 3 min at most; the less, the gentler (0.1 % to 100 %); where it is left out, the constant pump.drawdown",
	});
