import { constantFacts } from "../../../physics/index.ts";
import { leaf } from "../../reading/leaf.ts";
import { namedDrawdowns } from "../../reading/older-files.ts";
import { judge, rule } from "../../reading/quantity.ts";

/** Less than a thousandth of the pump's flow is no setting. */
const share = rule(
	"",
	"the share of the pump's flow that is let work while suction is drawn down",
	constantFacts["pump.drawdown"].range,
	"15 %",
);

/** A share as it is written in a file: `15 %`. */
export const percent = (value: number): string => `${Number((value * 100).toPrecision(12))} %`;

const form = {
	anyOf: [
		{ type: "number", exclusiveMinimum: 0, maximum: 1 },
		{ type: "string", pattern: "^\\s*\\+?(?:\\d+(?:\\.\\d+)?|\\.\\d+)" },
	],
	examples: ["5 %", "15 %", "50 %"],
	default: percent(constantFacts["pump.drawdown"].value),
	description:
		"share of the pump's flow that is let work until the set depth is reached, for 3 min at most; the less, the gentler (0.1 % to 100 %); where it is left out, the constant pump.drawdown",
};

/** The share of the pump's flow in a drawdown, 0…1; written as a percentage or as a bare share. */
export const drawdown = leaf(form, (raw, refuse): number => {
	const step = typeof raw === "string" ? raw.trim().toLowerCase() : "";
	const written = Object.hasOwn(namedDrawdowns, step) ? namedDrawdowns[step] : undefined;
	if (written !== undefined) return refuse(`a share of the pump's flow instead of a name: write ${written}`, written);
	const judged = judge(raw, share);
	if (judged.ok) return judged.value;
	const bare = typeof raw === "number" ? String(raw) : step;
	// 15 alone was meant as a percentage.
	const meant = /^[\d.]+$/u.test(bare) && judge(`${bare} %`, share).ok ? `${bare} %` : judged.suggestion;
	return refuse(judged.expected, meant);
});
