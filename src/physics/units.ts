/**
 * Quantities with units: read, converted, listed.
 *
 * A unit is a product of the symbols below with `/`, `·`, parentheses and the exponents 2 and 3 (also ² ³), so that
 * `mL/cm2/d` and `mL/min/(L/min/mmHg)` need no entry of their own. A factor is kept as a fraction of whole numbers:
 * between units that stand in a whole ratio (h and min, L and mL) a value is multiplied or divided once, and within
 * one unit it is not touched at all.
 *
 * Factors: s, min, h, d, L, cm, bar as in the SI brochure (9th ed., tables 5 to 8, from memory); a conventional
 * millimetre of mercury is 13595.1 kg/m³ × 9.80665 m/s² × 1 mm = 133.322387415 Pa, an inch of it 25.4 times that, a
 * conventional centimetre of water 1000 kg/m³ × 9.80665 m/s² × 1 cm = 98.0665 Pa, a torr 101325/760 Pa.
 */

import { rightQuantity } from "./spelling.ts";

/** Exponents of length, time and pressure. */
type Dims = readonly [length: number, time: number, pressure: number];

interface Unit {
	/** Times cm, s, Pa to the exponents of `dims`: `num / den`. */
	readonly num: number;
	readonly den: number;
	readonly dims: Dims;
}

const unit = (dims: Dims, num: number, den = 1): Unit => ({ num, den, dims });
const volume = (num: number, den = 1): Unit => unit([3, 0, 0], num, den);
const length = (num: number, den = 1): Unit => unit([1, 0, 0], num, den);
const time = (num: number): Unit => unit([0, 1, 0], num);
const pressure = (num: number, den = 1): Unit => unit([0, 0, 1], num, den);

const symbols: ReadonlyMap<string, Unit> = new Map([
	["mL", volume(1)],
	["ml", volume(1)],
	["cL", volume(10)],
	["dL", volume(100)],
	["L", volume(1000)],
	["l", volume(1000)],
	["mm", length(1, 10)],
	["cm", length(1)],
	["dm", length(10)],
	["m", length(100)],
	["s", time(1)],
	["min", time(60)],
	["h", time(3600)],
	["d", time(86_400)],
	["w", time(604_800)],
	["Pa", pressure(1)],
	["hPa", pressure(100)],
	["kPa", pressure(1000)],
	["mbar", pressure(100)],
	["mmHg", pressure(133_322_387_415, 1e9)],
	["inHg", pressure(25.4 * 133_322_387_415, 1e9)],
	["Torr", pressure(101_325, 760)],
	["cmH2O", pressure(980_665, 1e4)],
	["cmH₂O", pressure(980_665, 1e4)],
	["%", unit([0, 0, 0], 1, 100)],
]);

/** Dimensions that have a name, with the units worth offering, the engine's own first. */
const dimensions = {
	pressure: ["mmHg", "kPa", "cmH2O", "mbar", "hPa", "Pa", "inHg", "Torr"],
	volume: ["mL", "L", "cL", "dL", "cm3"],
	length: ["cm", "mm", "dm", "m"],
	area: ["cm2", "mm2", "dm2", "m2"],
	time: ["min", "s", "h", "d", "w"],
	flow: ["mL/d", "mL/h", "mL/min", "L/d", "L/h", "L/min"],
	"flow per area": ["mL/cm2/d", "mL/cm2/h", "mL/cm2/min"],
	leak: ["L/min/mmHg", "mL/min/mmHg", "L/min/kPa", "mL/min/kPa"],
	frequency: ["/d", "/h", "/min", "/w"],
	ratio: ["", "%"],
} as const satisfies Record<string, readonly string[]>;
export type Dimension = keyof typeof dimensions;

export const dimensionNames = Object.keys(dimensions) as readonly Dimension[]; // keys forgets the names it lists

/** The units that a dimension takes, the engine's own first. "" is a bare number. */
export function unitsOf(dimension: Dimension): readonly string[] {
	return dimensions[dimension];
}

/** The units to offer where `like` is expected: those of its dimension, `like` first; only `like` where the dimension has no name. */
export function unitsLike(like: string): readonly string[] {
	const offered = dimensionNames.map(unitsOf).find((units) => units.includes(like)) ?? [];
	return [like, ...offered.filter((other) => other !== like)];
}

/** True if both are units and of one dimension. */
export function sameDimension(a: string, b: string): boolean {
	const [first, second] = [parseUnit(a), parseUnit(b)];
	return first !== null && second !== null && agree(first, second);
}

/** `value` of unit `from`, in unit `to`. Throws a RangeError where one is no unit or they differ in dimension. */
export function convert(value: number, from: string, to: string): number {
	const [source, target] = [parseUnit(from), parseUnit(to)];
	if (source === null || target === null || !agree(source, target))
		throw new RangeError(`no conversion from "${from}" to "${to}"`);
	return scaled(value, source, target);
}

export type Reading =
	| { readonly ok: true; readonly value: number; readonly unit: string }
	| {
			readonly ok: false;
			readonly fault: "no number" | "comma" | "no unit" | "unknown unit" | "other dimension";
			/** The same quantity as it should be written, where that can be guessed. */
			readonly hint: string | null;
	  };

const written = /^([+\-−]?)(\d+(?:\.\d+)?|\.\d+)(?:[eE]([+\-−]?\d{1,4}))?(?!\d)\s*([^\s\d.,][^,]*)?$/u;
const withComma = /^[+\-−]?(?:\d+(?:[.,]\d+)*)?,\d+(?:\.\d+)?\s*[^,]*$/u;
const longest = 64;

/**
 * Reads `1.2 mL/cm2/d` and gives the value in unit `to`. A true minus sign (−) is a minus; a comma is refused, since
 * it means a point to one reader and thousands to another; a bare number is refused unless `to` is a bare number.
 * Pure; throws a RangeError only where `to` itself is no unit.
 */
export function readQuantity(text: string, to: string): Reading {
	const target = parseUnit(to);
	if (target === null) throw new RangeError(`"${to}" is no unit`);
	const trimmed = text.trim();
	if (trimmed.length > longest) return { ok: false, fault: "no number", hint: null };
	if (withComma.test(trimmed)) return { ok: false, fault: "comma", hint: hintOf(trimmed, target) };
	const [, sign, digits, exponent, symbol = ""] = written.exec(trimmed) ?? [];
	const number = Number(`${plain(sign)}${digits}${exponent === undefined ? "" : `e${plain(exponent)}`}`);
	if (digits === undefined || !Number.isFinite(number)) return { ok: false, fault: "no number", hint: null };
	const given = parseUnit(symbol);
	if (symbol === "" && !agree(unit([0, 0, 0], 1), target))
		return { ok: false, fault: "no unit", hint: `${trimmed} ${to}` };
	if (given === null) return { ok: false, fault: "unknown unit", hint: hintOf(trimmed, target) };
	if (!agree(given, target)) return { ok: false, fault: "other dimension", hint: hintOf(trimmed, target) };
	const value = scaled(number, given, target);
	return Number.isFinite(value) ? { ok: true, value, unit: symbol } : { ok: false, fault: "no number", hint: null };
}

const plain = (sign = "") => sign.replace("−", "-");
const agree = (a: Unit, b: Unit) => a.dims.every((exponent, i) => exponent === b.dims[i]);

function scaled(value: number, from: Unit, to: Unit): number {
	const up = from.num * to.den;
	const down = from.den * to.num;
	if (up % down === 0) return value * (up / down);
	if (down % up === 0) return value / (down / up);
	return (value * up) / down;
}

/** The quantity as it should be written, if that is then one of the dimension that is wanted. Minutes are often written as metres. */
function hintOf(text: string, target: Unit): string | null {
	for (const meant of [text, text.replace(/(?<=[\d\s])m$/u, "min")]) {
		const hint = rightQuantity(meant);
		const [, , , , symbol = ""] = written.exec(hint ?? "") ?? [];
		const given = hint === null ? null : parseUnit(symbol);
		if (given !== null && agree(given, target)) return hint;
	}
	return null;
}

/** A unit expression as factor and exponents; null where it is none. "" is a bare number. */
function parseUnit(text: string): Unit | null {
	const tokens = text.replace(/\s/gu, "").match(/[a-zA-Z%₂]+(?:2O)?|[23²³1]|[/·()]/gu) ?? [];
	if (tokens.join("") !== text.replace(/\s/gu, "")) return null;
	let at = 0;
	const product = (closing: boolean): Unit | null => {
		let result = unit([0, 0, 0], 1);
		let direction = 1;
		if (tokens[at] === "/" || tokens[at] === "1") {
			if (tokens[at] === "1") at++;
			if (tokens[at] !== "/") return null;
			direction = -1;
			at++;
		}
		for (;;) {
			const next = factor();
			if (next === null) return null;
			result = times(result, next, direction);
			const sign = tokens[at];
			if (sign === undefined) return closing ? null : result;
			at++;
			if (sign === ")") return closing ? result : null;
			if (sign !== "/" && sign !== "·") return null;
			direction = sign === "/" ? -1 : 1;
		}
	};
	const factor = (): Unit | null => {
		const token = tokens[at++] ?? "";
		if (token === "(") return product(true);
		const base = symbols.get(token);
		if (base === undefined) return null;
		const power = { "2": 2, "²": 2, "3": 3, "³": 3 }[tokens[at] ?? ""];
		if (power === undefined) return base;
		at++;
		return power === 2 ? times(base, base, 1) : times(times(base, base, 1), base, 1);
	};
	return tokens.length === 0 ? unit([0, 0, 0], 1) : product(false);
}

function times(a: Unit, b: Unit, direction: number): Unit {
	const dims: Dims = [
		a.dims[0] + direction * b.dims[0],
		a.dims[1] + direction * b.dims[1],
		a.dims[2] + direction * b.dims[2],
	];
	return direction === 1 ? unit(dims, a.num * b.num, a.den * b.den) : unit(dims, a.num * b.den, a.den * b.num);
}
