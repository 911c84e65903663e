import { nameHash, Substream } from "../engine/index.ts";

/** A case as it is handed out: the text of its file, the seed, and whether the causes are to be drawn from that seed. */
export interface HandedOut {
	readonly text: string;
	readonly seed: string;
	readonly drawn: boolean;
}

const lead = "#case=";
/** Longest link that is read, characters. */
const longest = 200_000;

/**
 * A case as the fragment of a link, `#case=…`. Remarks are left out and the rest is mixed with a stream of numbers, so
 * that its answer is not read at a glance. That is all: it is no secret, and whoever has this program can undo it.
 */
export function caseLink({ text, seed, drawn }: HandedOut): string {
	const plain = new TextEncoder().encode(JSON.stringify([withoutRemarks(text), seed, drawn]));
	const sum = checkSum(plain);
	return `${lead}${toText(mixed(plain, sum))}.${sum.toString(36)}`;
}

export const isCaseLink = (text: string): boolean => text.startsWith(lead);

/** Reads a link's fragment; null where it is none, or was cut or altered on its way. */
export function readCaseLink(fragment: string): HandedOut | null {
	if (!isCaseLink(fragment) || fragment.length > longest) return null;
	const [body = "", end = "", ...rest] = fragment.slice(lead.length).split(".");
	const bytes = toBytes(body);
	const sum = Number.parseInt(end, 36);
	if (bytes === null || !Number.isSafeInteger(sum) || rest.length > 0) return null;
	const plain = mixed(bytes, sum);
	if (checkSum(plain) !== sum) return null;
	try {
		const read: unknown = JSON.parse(new TextDecoder().decode(plain));
		if (!Array.isArray(read) || read.length !== 3) return null;
		const [text, seed, drawn]: unknown[] = read;
		return typeof text === "string" && typeof seed === "string" && typeof drawn === "boolean"
			? { text, seed, drawn }
			: null;
	} catch {
		return null;
	}
}

/** Whole-line remarks of YAML hold what the facilitator knows; JSON has none. */
const withoutRemarks = (text: string) =>
	text
		.split("\n")
		.filter((line) => !/^\s*#/u.test(line))
		.join("\n");

/** Mixed with the stream of its sum, twice is not at all. */
function mixed(bytes: Uint8Array, sum: number): Uint8Array {
	const stream = new Substream("case link", String(sum), 0);
	return bytes.map((byte) => byte ^ Math.floor(256 * stream.uniform()));
}

const checkSum = (bytes: Uint8Array): number => nameHash(binary(bytes)) >>> 0;

/** One character a byte. */
function binary(bytes: Uint8Array): string {
	let text = "";
	for (const byte of bytes) text += String.fromCharCode(byte);
	return text;
}

/** base64url without padding (RFC 4648, section 5). */
const toText = (bytes: Uint8Array): string =>
	btoa(binary(bytes)).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");

function toBytes(text: string): Uint8Array | null {
	if (!/^[\w-]+$/u.test(text) || text.length % 4 === 1) return null;
	return Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (sign) => sign.charCodeAt(0));
}
