import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { reasonOf } from "../terminal/failure.ts";

/** SHA-256 of a text in hexadecimal digits. */
const digest = (text: string): string => createHash("sha256").update(text).digest("hex");

/** The first sixteen of them: enough to tell runs apart. */
export const shortDigest = (text: string): string => digest(text).slice(0, 16);

/** Of scenario, version and whatever else makes a run: what differs in it is not of one run. */
export const fingerprintOf = (...run: readonly unknown[]): string => shortDigest(JSON.stringify(run));

const checksumOf = (data: unknown) => digest(JSON.stringify(data));

/** The text of a file that is handed on: closed with a checksum of all that stands before it, so that what was damaged on its way is noticed. */
export const keptText = (data: object): string => `${JSON.stringify({ ...data, checksum: checksumOf(data) })}\n`;

/** Reads such a file of the outer form `isOf`; null, once `refuse` is told why, where it is anything else. `kind`: what it is of. */
export function readKept<T extends object>(
	file: string,
	kind: string,
	isOf: (data: Partial<Record<keyof T, unknown>>) => boolean,
	refuse: (received: string) => null,
): T | null {
	let text: string;
	try {
		text = readFileSync(file, "utf8");
	} catch (error) {
		return refuse(`nothing: ${reasonOf(error)}`);
	}
	try {
		const { checksum, ...data } = JSON.parse(text) ?? {};
		if (!isOf(data)) return refuse("something else");
		return checksum === checksumOf(data) ? data : refuse(`${kind} changed since`);
	} catch {
		return refuse("no JSON"); // or too deep to be gone through
	}
}
