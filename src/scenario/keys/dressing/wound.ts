import * as z from "zod";
import { readQuantity } from "../../../physics/index.ts";
import { difficulties, sloughs, tissues } from "../../../vocabulary/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { Dressing } from "../../meaning/scenario.ts";
import { choice, leaf, record } from "../../reading/leaf.ts";
import { type Found, found, type Keys } from "../../reading/problem.ts";
import { area, judge, type QuantityRule, quantity, rule } from "../../reading/quantity.ts";
import type { Fields } from "../../reading/raw.ts";

const perDay = rule("mL/d", "wound output", "from 0 mL/d to 20000 mL/d", "160 mL/d");
const perArea = rule("mL/cm2/d", "wound output per area", "from 0 mL/cm2/d to 100 mL/cm2/d", "0.9 mL/cm2/d");

type Exudate = { readonly mlPerDay: number } | { readonly mlPerCm2PerDay: number };

/** Exudate as mL per day outright, or per area of the wound. */
const exudate = leaf(
	{
		type: "string",
		pattern: "^\\s*(?:\\d+(?:\\.\\d+)?|\\.\\d+)\\s*[^\\s\\d.,][^,]*$",
		examples: [perArea.example, perDay.example],
		description: "exudate of the wound: per area (mL/cm2/d, then `area` is needed) or outright (mL/d)",
	},
	(raw, refuse): Exudate => {
		const readsAs = ({ unit }: QuantityRule) => typeof raw === "string" && readQuantity(raw, unit).ok;
		const outright = typeof raw !== "string" || readsAs(perDay);
		const judged = judge(raw, outright ? perDay : perArea);
		if (judged.ok) return outright ? { mlPerDay: judged.value } : { mlPerCm2PerDay: judged.value };
		const other = outright ? judged : judge(raw, perDay);
		const spelled = judged.suggestion ?? (other.ok ? undefined : other.suggestion);
		const either = `wound output with its unit, such as "${perArea.example}" or "${perDay.example}"`;
		return refuse(readsAs(perDay) || readsAs(perArea) ? judged.expected : either, spelled);
	},
);

/** A fistula in the wound. */
const outflow = z
	.union(
		[
			z.literal("none"),
			record("outflow", {
				total: quantity(
					rule("mL/d", "output per day", "above 0 mL/d and up to 20000 mL/d", "400 mL/d", "mean total per day"),
				),
				bursts: quantity(rule("/d", "bursts per day", "from 0.1 /d to 1440 /d", "12 /d", "mean number per day")),
			}),
		],
		{ error: "none, or a map with the keys total, bursts" },
	)
	.describe("output of a fistula in the wound, in bursts");

export const areaOf = (what: string) => area(`area of the ${what}`, "above 0 cm2 and up to 20000 cm2", "180 cm2");

export const wound = record("a wound", {
	tissue: choice(tissues, "what lies in the wound; decides which depths carry a caution"),
	area: areaOf("wound bed").optional(),
	exudate,
	slough: byDefault(choice(sloughs, "how much debris the wound sheds"), "dressings[].wound.slough"),
	difficulty: byDefault(choice(difficulties, "how hard the drape is to seal"), "dressings[].wound.difficulty"),
	outflow: byDefault(outflow, "dressings[].wound.outflow"),
}).describe("the wound under the dressing");

/** Exudate per area needs the area. */
export function crossWound(wound: Fields, at: Keys): Found[] {
	const perArea = typeof wound.exudate === "string" && /\/\s*[cmd]*m[2²]/u.test(wound.exudate);
	return perArea && wound.area === undefined
		? [found([...at, "area"], "the area of the wound, since exudate is given per area", "nothing")]
		: [];
}

type Wound = Pick<Dressing, "tissue" | "areaCm2" | "exudateMlPerDay" | "slough" | "difficulty" | "outflow">;

export function resolveWound(file: z.output<typeof wound>): Wound {
	const { tissue, area, exudate, slough, difficulty, outflow } = file;
	return {
		tissue,
		areaCm2: area ?? null,
		exudateMlPerDay: "mlPerDay" in exudate ? exudate.mlPerDay : exudate.mlPerCm2PerDay * (area ?? 0),
		slough,
		difficulty,
		outflow: outflow === "none" ? null : { totalMlPerDay: outflow.total, burstsPerDay: outflow.bursts },
	};
}
