import { maxScenarioBytes } from "../../scenario/index.ts";

const lead = "#scenario=";

/** A scenario as the fragment of a link, `#scenario=…`: compressed where the browser can (RFC 1951), in base64url (RFC 4648). */
export async function scenarioLink(text: string): Promise<string> {
	const plain = new TextEncoder().encode(text);
	const packed =
		typeof CompressionStream === "undefined"
			? null
			: await through(plain, new CompressionStream("deflate-raw"), Infinity);
	return `${lead}${packed === null ? "p" : "z"}${toText(packed ?? plain)}`;
}

export const isScenarioLink = (fragment: string): boolean => fragment.startsWith(lead);

/** Reads a link's fragment; null where it was cut or altered on its way, or holds more than a scenario may. */
export async function readScenarioLink(fragment: string): Promise<string | null> {
	const [kind, body] = [fragment.charAt(lead.length), fragment.slice(lead.length + 1)];
	const bytes = toBytes(body);
	if (bytes === null || (kind !== "p" && kind !== "z")) return null;
	try {
		const plain = kind === "p" ? bytes : await through(bytes, new DecompressionStream("deflate-raw"), maxScenarioBytes);
		return plain === null ? null : new TextDecoder("utf-8", { fatal: true }).decode(plain);
	} catch {
		return null;
	}
}

/** What comes out of a stream; null where that is more than `most` bytes. */
async function through(
	bytes: Uint8Array<ArrayBuffer>,
	stream: CompressionStream | DecompressionStream,
	most: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
	const reader = new Blob([bytes]).stream().pipeThrough<Uint8Array<ArrayBuffer>>(stream).getReader();
	const parts: Uint8Array<ArrayBuffer>[] = [];
	let length = 0;
	for (;;) {
		const { done, value } = await reader.read();
		if (done) break;
		length += value.length;
		if (length > most) {
			await reader.cancel();
			return null;
		}
		parts.push(value);
	}
	return new Uint8Array(await new Blob(parts).arrayBuffer());
}

function toText(bytes: Uint8Array): string {
	let binary = "";
	for (const byte of bytes) binary += String.fromCharCode(byte);
	return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/u, "");
}

function toBytes(text: string): Uint8Array<ArrayBuffer> | null {
	if (!/^[\w-]*$/u.test(text)) return null;
	try {
		const binary = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
		return Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
	} catch {
		return null;
	}
}
