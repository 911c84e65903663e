import * as z from "zod";
import { byDefault, defaults } from "../meaning/defaults.ts";
import type { Scenario, Solution } from "../meaning/scenario.ts";
import { count, record, text } from "../reading/leaf.ts";
import { duration } from "../reading/quantity.ts";
import { asOf } from "./clock.ts";

const least = "a price, a number of at least 0";

export const price = z
	.number({ error: least })
	.min(0, { error: least })
	.max(1e9, { error: "a price of at most 1000000000" });
export const ofOnePiece = "price of one piece";
const known = price.describe(ofOnePiece).optional();

/** Currency and date of prices, which stand beside the items of a ward's stores. */
const quoted = {
	currency: z
		.string({ error: "a currency such as EUR" })
		.regex(/^[A-Z]{3}$/u, { error: "a currency of three capitals, such as EUR" })
		.describe("currency, three capitals (ISO 4217)"),
	asOf,
};

export const prices = record("prices", {
	...quoted,
	canister: known,
	source: known,
	kit: known,
	line: known,
	port: known,
})
	.optional()
	.describe("prices of one piece each, for the cost of a regimen and of supplies");

export const wardPrices = record("prices", quoted).optional().describe("currency and date of the prices in `stores`");

const pieces = count("pieces in a pack", 1, 10_000, "pieces in a pack").optional();

export const packs = record("packs", { canister: pieces, source: pieces, kit: pieces, line: pieces })
	.prefault({})
	.describe("pieces in a pack, by item");

export const solution = record("a solution", {
	name: byDefault(text("a name", 200, "what is filled in"), "solution.name"),
	hang: duration("how long an opened source may hang", "from 30 min to 28 d", "24 h").optional(),
})
	.prefault({})
	.describe("the solution, for the order list and for how long it may hang");

export const resolveSolution = ({ name }: z.output<typeof solution>): Solution => ({
	name,
	named: name !== defaults["solution.name"].write,
});

/** Without the items that are not given. */
const given = <T extends object>(items: T) =>
	Object.fromEntries(Object.entries(items).filter(([, value]) => value !== undefined));

export function resolvePrices(file: z.output<typeof prices>): Scenario["prices"] {
	if (file === undefined) return null;
	const { currency, asOf, ...items } = file;
	return { currency, asOf, items: given(items) };
}

export const resolvePacks = (file: z.output<typeof packs>): Scenario["packs"] => given(file);
