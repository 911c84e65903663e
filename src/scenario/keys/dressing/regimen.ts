import * as z from "zod";
import { type Constants, deepestHeld, readQuantity } from "../../../physics/index.ts";
import { beginnings } from "../../../vocabulary/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { Regimen } from "../../meaning/scenario.ts";
import { choice, leaf, list, record } from "../../reading/leaf.ts";
import { type Found, found, type Keys, received } from "../../reading/problem.ts";
import { duration, judge, quantityOr, rule } from "../../reading/quantity.ts";
import { asMap, type Fields, read } from "../../reading/raw.ts";
import { drawdown } from "./drawdown.ts";

const depthRule = rule("mmHg", "a depth below the pressure of the room", "from -700 mmHg to -5 mmHg", "-125 mmHg");

/** The set depth, signed in the file; comes out positive, mmHg below ambient. */
const depth = leaf(
	{
		type: "string",
		pattern: "^\\s*[\\u2212-].*[^\\d\\s]$",
		examples: ["-125 mmHg", "-75 mmHg"],
		description:
			"set depth of suction, below the pressure of the room and so with a minus; units: mmHg, kPa, cmH2O, mbar, hPa, Pa, inHg, Torr",
	},
	(raw, refuse): number => {
		const unsigned = (text: string) => text.trim().replace(/^\+/u, "");
		const reading = typeof raw === "string" ? readQuantity(raw, depthRule.unit) : null;
		if (typeof raw === "string" && reading?.ok === true && reading.value > 0)
			return refuse(`${depthRule.what}, with a minus: write -${unsigned(raw)}`);
		const judged = judge(raw, depthRule);
		if (judged.ok) return -judged.value;
		const deeper = reading?.ok === false && reading.hint !== null ? `-${unsigned(reading.hint)}` : "";
		return refuse(judged.expected, judged.suggestion ?? (judge(deeper, depthRule).ok ? `"${deeper}"` : undefined));
	},
);

/** The settings of a regimen, one by one. */
export const settings = {
	begin: choice(beginnings, "what the day begins with; suction proves the seal before liquid is in the dressing"),
	depth,
	fill: quantityOr(
		["suggested", "none"],
		rule(
			"mL",
			"a volume",
			"from 0.1 mL to 2000 mL",
			"50 mL",
			"solution of one fill; suggested: by the foam's volume; none: suction alone",
		),
	),
	dwell: duration("how long the solution stays", "from 0.1 min to 24 h", "5 min"),
	suction: duration("suction period, from pump start to the next fill", "from 1 min to 7 d", "2 h"),
	drawdown,
};

/** The same, each of which may be left out: what is laid over another regimen. */
export const someSettings = z.strictObject(settings).partial().shape;

const shape = {
	...someSettings,
	begin: byDefault(settings.begin, "dressings[].regimen.begin"),
	depth: settings.depth,
	fill: settings.fill,
};

/** When an item of a list of regimens takes over; counts from the start. */
const from = duration("when it takes over, from the start of the scenario", "from 0 h to 28 d", "24 h");
const item = record("a regimen", { from: from.optional(), ...shape });

export const regimen = z
	.union(
		[record("a regimen", shape), list(item, "a list of regimens", 50, "regimens", { least: "one or more regimens" })],
		{ error: `a regimen, a map with the keys ${Object.keys(shape).join(", ")}, or a list of such maps with from:` },
	)
	.describe("the regimen, or a list of regimens that take over at stated times");

/** The regimens of a list, or the one that stands alone. */
export function itemsOf<T>(written: T | readonly T[]): readonly T[] {
	return Array.isArray(written) ? written : [written as T]; // no list
}

/** What joins the settings of a regimen, or of each in a list; `constants` say what the pump holds. */
export function crossRegimens(written: unknown, at: Keys, constants: Constants): Found[] {
	if (!Array.isArray(written)) return crossRegimen(asMap(written), at, constants);
	return [...takingOver(written, at), ...written.flatMap((one, i) => crossRegimen(asMap(one), [...at, i], constants))];
}

/** The first from the start, each later than the one before. */
function takingOver(regimens: readonly unknown[], at: Keys): Found[] {
	let latest = 0;
	return regimens.flatMap((regimen, i) => {
		const written = asMap(regimen).from;
		const keys = [...at, i, "from"];
		if (written === undefined) return i === 0 ? [] : [found(keys, 'when it takes over, such as "24 h"', "nothing")];
		const fromMin = read(from, written);
		if (fromMin === undefined) return [];
		if (i === 0) return fromMin === 0 ? [] : [found(keys, "0 h for the first regimen", received(written))];
		const late = fromMin > latest;
		latest = Math.max(latest, fromMin);
		return late ? [] : [found(keys, "a later time than that of the regimen before", received(written))];
	});
}

/** A fill has a dwell and a suction period; the depth is one that the pump holds. */
export function crossRegimen(regimen: Fields, at: Keys, constants: Constants): Found[] {
	const { fill } = regimen;
	const fills = fill !== undefined && fill !== null && fill !== "none";
	const missing = (key: string, what: string) =>
		fills && regimen[key] === undefined ? [found([...at, key], `${what}, since there is a fill`, "nothing")] : [];
	return [
		...missing("dwell", 'a dwell such as "5 min"'),
		...missing("suction", 'a suction period such as "2 h"'),
		...reachable(regimen.depth, [...at, "depth"], constants),
	];
}

/** A sound seal must let the pump hold the set depth. */
export function reachable(written: unknown, keys: Keys, constants: Constants): Found[] {
	const depthMmHg = read(depth, written);
	if (depthMmHg === undefined || depthMmHg < deepestHeld(constants)) return [];
	const expected = `a depth that the pump holds with a sound seal (it reaches -${constants["pump.maxDepth"]} mmHg with no flow at all)`;
	return [found(keys, expected, received(written))];
}

type Settings = Partial<z.output<z.ZodObject<typeof settings>>>;
type RegimenFile = z.output<typeof item>;

/** The regimens of a dressing, with `over` laid over the first; the suggested fill and the drawdown are worked out. */
export function resolveRegimens(
	written: z.output<typeof regimen>,
	over: Settings,
	foamVolumeMl: number,
	constants: Constants,
): Regimen[] {
	const given = Object.fromEntries(Object.entries(over).filter(([, value]) => value !== undefined));
	return itemsOf<RegimenFile>(written).map((one, i) =>
		resolveRegimen(i === 0 ? { ...one, ...given } : one, foamVolumeMl, constants),
	);
}

function resolveRegimen(file: RegimenFile, foamVolumeMl: number, constants: Constants): Regimen {
	const fillMl =
		file.fill === "none" ? 0 : file.fill === "suggested" ? constants["foam.suggested"] * foamVolumeMl : file.fill;
	const fills = fillMl > 0;
	return {
		fromMin: file.from ?? 0,
		begin: fills ? file.begin : "suction",
		depthMmHg: file.depth,
		fillMl,
		fillSuggested: file.fill === "suggested",
		dwellMin: fills ? (file.dwell ?? 0) : 0,
		suctionMin: fills ? (file.suction ?? Number.POSITIVE_INFINITY) : Number.POSITIVE_INFINITY,
		drawdown: file.drawdown ?? constants["pump.drawdown"],
		drawdownGiven: file.drawdown !== undefined,
	};
}
