import { type Act, type Place, places } from "../../vocabulary/index.ts";
import type { Told } from "../causes/cause.ts";
import { causes } from "../causes/causes.ts";
import type { Bed } from "../places/bed.ts";
import { placeFacts } from "../places/places.ts";

/** The sights of each place, and the bit at which its code begins in a number that holds the codes of all places. */
let bits = 0;
const layout = places.map((place) => {
	const sights = [...new Set(causes.flatMap((cause) => cause.sights))].filter((sight) => sight.place === place);
	const begins = bits;
	bits += sights.length + 1;
	return { place, sights, begins };
});
if (bits > 31) throw new RangeError(`${bits} bits of findings: more than a whole number holds`);

const partOf = (place: Place) => layout[places.indexOf(place)];

function codeAt({ place, sights }: (typeof layout)[number], bed: Bed): number {
	let code = 0;
	for (let i = 0; i < sights.length; i++) if (sights[i].seen(bed)) code |= 1 << i;
	return code === 0 && placeFacts[place].inconclusive?.when(bed) === true ? 1 << sights.length : code;
}

/** What a look at every place would find, in one number of at most 31 bits: what `codeIn` takes apart. */
export function codesOf(bed: Bed): number {
	let codes = 0;
	for (const part of layout) codes |= codeAt(part, bed) << part.begins;
	return codes;
}

/** The code of a place among those of all. */
export function codeIn(codes: number, place: Place): number {
	const { begins, sights } = partOf(place);
	return (codes >> begins) & ((2 << sights.length) - 1);
}

/** Whether a finding of this code shows a cause. */
export const showsCause = (place: Place, code: number): boolean =>
	(code & ((1 << partOf(place).sights.length) - 1)) > 0;

export type Finding = Readonly<ReturnType<typeof findingAt>>;

/** What a look at a place finds. */
export function findingAt(place: Place, bed: Bed) {
	const { sights } = partOf(place);
	const code = codeAt(partOf(place), bed);
	const seen = sights.filter((_, i) => (code & (1 << i)) > 0);
	return {
		place,
		/** Kinds of cause that it may come from. */
		shows: causes.filter((cause) => seen.some((sight) => cause.sights.includes(sight))).map(({ name }) => name),
		/** Nothing was found, and that tells nothing either. */
		inconclusive: code === 1 << sights.length,
		/** The same as a number: a bit for each sight of the place, in the order of causes, and one for an inconclusive look. */
		code,
	};
}

/** What a look found, in sentences, with what can be read there. */
export function findingWords({ place, code, inconclusive }: Finding, bed: Bed): string {
	const fact = placeFacts[place];
	if (fact.bare !== undefined && bed.process.phase === "change") return fact.bare;
	if (fact.inconclusive !== undefined && inconclusive) return fact.inconclusive.words;
	const say = (told: Told = "") => (typeof told === "string" ? told : told(bed));
	const sentences = partOf(place).sights.map((sight, i) => say((code & (1 << i)) > 0 ? sight.words : sight.absent));
	return sentences.filter((sentence) => sentence !== "").join(" ");
}

/** What to do about a finding, in order. What a clinician has to see to comes first: stop, and call. */
export function remedyFor({ shows }: Finding): readonly Act[] {
	const found = causes.filter(({ name }) => shows.includes(name));
	if (found.some(({ forClinician }) => forClinician)) return ["pause", "call-help"];
	return found.slice(0, 1).flatMap(({ mendedBy }) => mendedBy.slice(0, 1));
}
