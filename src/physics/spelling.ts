/**
 * How a unit is spelled right that people write otherwise: `ml/cm²/day`, `cc`, `hrs`, `mm Hg`, `mL per cm^2 per 24 h`.
 * Text in, text out: whether the outcome is a unit, and of the kind that is wanted, the reader of units decides. A
 * correction is offered, never taken: `m` may be meant for minutes, and may not.
 */

/** The right spelling of each symbol, and what else is written for it, in small letters and the singular. */
const others: { readonly [right: string]: string } = {
	mL: "ml cc ccm mil millilitre milliliter",
	cL: "cl centilitre centiliter",
	dL: "dl decilitre deciliter",
	L: "l lt ltr litre liter",
	mm: "millimetre millimeter",
	cm: "centimetre centimeter",
	dm: "decimetre decimeter",
	m: "metre meter",
	s: "sec second",
	min: "minute mn",
	h: "hr hour",
	d: "day dy",
	w: "wk week",
	Pa: "pa pascal",
	hPa: "hpa hectopascal",
	kPa: "kpa kilopascal",
	mbar: "millibar",
	mmHg: "mmhg mmofmercury mmmercury mmofhg",
	inHg: "inhg inchhg inchofmercury",
	Torr: "torr",
	cmH2O: "cmh2o cmh₂o cmh20 cmwater cmofwater cmofh2o cmwc",
	"%": "percent pct pc",
	cm2: "sqcm squarecm squarecentimetre squarecentimeter cmsq qcm",
	mm2: "sqmm squaremm squaremillimetre squaremillimeter mmsq",
	m2: "sqm squarem squaremetre squaremeter msq qm",
	cm3: "cubiccm cubiccentimetre cubiccentimeter cucm",
};

const right: ReadonlyMap<string, string> = new Map(
	Object.entries(others).flatMap(([symbol, list]) =>
		[symbol.toLowerCase(), ...list.split(" ")].map((other): [string, string] => [other, symbol]),
	),
);

/** A word as a symbol: as it stands, in the singular, without the dot of an abbreviation. */
function symbolOf(word: string): string | null {
	const lower = word.toLowerCase();
	return right.get(lower) ?? right.get(lower.replace(/s$/u, "")) ?? null;
}

/** Words before a unit that belong to it: `sq cm`, `mm of Hg`, `cm H2O`. */
const joined =
	/\b(sq|square|cubic|cu|mm|cm|in|inch|inches)\.?\s+(?=(?:of\s+)?(?:mm|cm|m|milli|centi|metre|meter|hg|mercury|h2o|h₂o|h20|water|of)[a-z0-9₂]*)/giu;

/** The unit that was meant, in the spelling of a scenario; null where a word of it is not known. */
function rightUnit(written: string): string | null {
	const plain = written
		.trim()
		.replace(/\.$/u, "")
		.replace(/\bof\s+/giu, "of")
		.replace(joined, "$1")
		.replace(/\bper\s*cent\b/giu, "percent")
		.replace(/\b(?:per|pro|each|an?)\b/giu, "/")
		.replace(/\/\s*24\s*h(?:rs?|ours?)?\b/giu, "/d")
		.replace(/\s*(?:\^|\*\*)\s*/gu, "")
		.replace(/²/gu, "2")
		.replace(/³/gu, "3")
		// mL·cm-2·d-1 is a way to write what a scenario writes with strokes.
		.replace(/[·*×.\s]+([a-z]+)[-−⁻]([1¹2])/giu, (_, word, power) => (power === "2" ? `/${word}2` : `/${word}`))
		.replace(/(?:\s*[*×]\s*)/gu, "·");
	const words = plain.match(/[\p{L}%][\p{L}\d₂]*\.?|[/·()]|\S/gu) ?? [];
	const parts = words.map((word) => {
		if (/^[/·()]$/u.test(word)) return word;
		const known = word.replace(/\.$/u, "");
		const [, stem = known, power = ""] = /^(.*?)([23])$/u.exec(known) ?? [];
		const whole = symbolOf(known);
		if (whole !== null) return whole;
		const symbol = symbolOf(stem);
		return symbol === null ? null : `${symbol}${power}`;
	});
	if (parts.length === 0 || parts.includes(null)) return null;
	return parts.join("").replace(/\/+/gu, "/");
}

const amount = /^([+\-−]?)(\d*)([.,]?)(\d*)((?:[eE][+\-−]?\d+)?)\s*(.*)$/u;

/**
 * A number with its unit, both spelled right; null where that cannot be told. 1,500 means a thousand and a half to one
 * reader and one and a half to another: it is not corrected.
 */
export function rightQuantity(written: string): string | null {
	const [, sign = "", whole = "", mark = "", rest = "", power = "", unit = ""] = amount.exec(written.trim()) ?? [];
	if (whole === "" && rest === "") return null;
	if (mark === "," && rest.length === 3 && Number(whole) > 0) return null;
	if (mark !== "" && rest === "") return null;
	const number = `${sign}${whole === "" ? "0" : whole}${mark === "" ? "" : "."}${rest}${power}`;
	if (unit === "") return number;
	const symbol = rightUnit(unit);
	return symbol === null ? null : `${number} ${symbol}`;
}
