import * as z from "zod";
import { pieceKinds, weekdays } from "../../../vocabulary/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { StoreItem } from "../../meaning/ward.ts";
import { choice, count, countOrUnlimited, leaf, list, record, text } from "../../reading/leaf.ts";
import { duration, quantity, quantityOr, rule, sigma } from "../../reading/quantity.ts";
import { clock } from "../clock.ts";
import { size } from "../dressing/unit.ts";
import { ofOnePiece, price } from "../supplies.ts";

const pieces = (what: string, from: number) => count(what, from, 1e6, what);

/** `400 g` or `0.4 kg`, in grams. */
const weightG = leaf(
	{
		type: "string",
		pattern: "^\\d+(?:\\.\\d+)?\\s*(?:g|kg)$",
		examples: ["400 g"],
		description: "weight of one piece, empty, for the weight of waste",
	},
	(raw, refuse): number => {
		const [, digits, unit] = typeof raw === "string" ? (/^(\d+(?:\.\d+)?)\s*(g|kg)$/u.exec(raw.trim()) ?? []) : [];
		const grams = Number(digits) * (unit === "kg" ? 1000 : 1);
		if (grams >= 0 && grams <= 1e6) return grams;
		return refuse('a weight with its unit, such as "400 g", in g, kg, up to 1000 kg');
	},
);

const day = choice(weekdays, "a day of the week");

const someDays = "a list of days such as [ mon, thu ]";
const orderDays = z.union(
	[z.literal("any"), list(day, someDays, 7, "days", { least: "one or more days", inWords: "seven" })],
	{ error: `any, or ${someDays}` },
);

const shelf = quantityOr(
	["unlimited"],
	rule("min", "a duration", "from 1 h to 36500 d", "365 d", "how long it keeps from its delivery"),
);

const review = quantityOr(
	["continuous"],
	rule("min", "a duration", "from 1 h to 91 d", "7 d", "every how long the shelf is looked at, or at every use"),
);

const service = quantity(
	rule(
		"",
		"a service level",
		"from 50 % to 99.99 %",
		"99 %",
		"share of the time in which a piece should be on the shelf; the reorder point is found for it where none is given",
	),
);

const lead = duration("time from an order to its delivery, the median", "from 0 h to 364 d", "2 d");

const item = record("an item of the stores", {
	item: choice(pieceKinds, "what it is"),
	size: size("size of a canister, or of a source of solution").optional(),
	solution: text("a name", 200, "which solution it is").optional(),
	stock: countOrUnlimited("pieces", 0, 1e6, "pieces").describe("pieces on the shelf at the start, new"),
	pack: byDefault(pieces("pieces in a pack", 1), "stores[].pack"),
	price: price.optional().describe(ofOnePiece),
	weight: weightG.optional(),
	shelf: byDefault(shelf, "stores[].shelf"),
	lead: byDefault(lead, "stores[].lead"),
	leadSpread: byDefault(sigma("lognormal sigma"), "stores[].leadSpread").describe(
		"lognormal sigma of the lead time; 0: fixed",
	),
	orderDays: byDefault(orderDays, "stores[].orderDays").describe("days on which orders go out; any: at any time"),
	cutOff: byDefault(clock, "stores[].cutOff").describe("when the orders of an order day go out"),
	review: byDefault(review, "stores[].review"),
	reorder: pieces("the level at which an order is due", 0).optional(),
	upTo: pieces("the level that an order brings it to", 1).optional(),
	service: byDefault(service, "stores[].service"),
	substitute: size("size that is used where this one is out").optional(),
}).describe("an item of the stores");

export const stores = list(item, "a list of items", 100, "items").describe("what the stores hold");

const plainNames = { canister: "canister", kit: "dressing kit", port: "suction port", line: "fill line" } as const;

/** `solution` is what an item of solution holds that does not say so. */
export function resolveStores(file: z.output<typeof stores>, solution: string): StoreItem[] {
	const solutionOf = (item: (typeof file)[number]) => (item.item === "solution" ? (item.solution ?? solution) : null);
	return file.map((item) => {
		const sizeMl = item.size ?? null;
		const held = solutionOf(item);
		const plain = item.item === "solution" ? String(held) : plainNames[item.item];
		const other = file.findIndex(
			(one) => one.item === item.item && solutionOf(one) === held && one.size === item.substitute,
		);
		return {
			name: sizeMl === null ? plain : `${plain} ${sizeMl} mL`,
			kind: item.item,
			sizeMl,
			solution: held,
			stock: item.stock === "unlimited" ? null : item.stock,
			pack: item.pack,
			price: item.price ?? null,
			weightG: item.weight ?? null,
			shelfMin: item.shelf === "unlimited" ? null : item.shelf,
			lead: { medianMin: item.lead, spread: item.leadSpread },
			orderDays:
				item.orderDays === "any"
					? null
					: [...new Set(item.orderDays.map((day) => weekdays.indexOf(day)))].sort((a, b) => a - b),
			cutOffClockMin: item.cutOff,
			reviewMin: item.review === "continuous" ? null : item.review,
			reorder: item.reorder ?? null,
			upTo: item.reorder === undefined ? null : (item.upTo ?? item.reorder + item.pack),
			service: item.service,
			substitute: item.substitute === undefined ? null : other,
		};
	});
}
