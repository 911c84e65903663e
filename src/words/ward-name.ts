import { legalText } from "./sentences.ts";

/** Text to a word of 53 bits, 14 hexadecimal digits (two lanes of the hash FNV-1a, Fowler, Noll, Vo; from memory). */
function hashed(text: string): string {
	let [low, high] = [0x811c9dc5, 0x01000193];
	for (let i = 0; i < text.length; i++) {
		const unit = text.charCodeAt(i);
		low = Math.imul(low ^ unit, 0x01000193);
		high = Math.imul(high ^ unit ^ (low >>> 13), 0x01000193);
	}
	const digits = (word: number) => (word >>> 0).toString(16).padStart(8, "0");
	return `${digits(high)}${digits(low)}`.slice(2);
}

/**
 * What tells a ward from others in the ids of calendars and requests: letters and digits of its title, and a hash of title and
 * seed. The same ward has it in every run, so that a newer list takes the place of an older one; at most 32 signs of
 * `a-z0-9-`.
 */
export function wardName({ title, seed }: { readonly title: string; readonly seed: string }): string {
	const words = legalText(title)
		.normalize("NFKD")
		.toLowerCase()
		.replaceAll(/\p{M}/gu, "")
		.replaceAll(/[^a-z0-9]+/g, "-")
		.slice(0, 17)
		.replaceAll(/^-|-$/g, "");
	return `${words === "" ? "ward" : words}-${hashed(`${title.length}:${title}${seed}`)}`;
}
