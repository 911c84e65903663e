import { createHash } from "node:crypto";

/** SHA-256 of a text in hexadecimal digits. */
export const digest = (text: string): string =>
	createHash("sha256").update(text).digest("hex");

/** The first sixteen of them: enough to tell runs apart. */
export const shortDigest = (text: string): string => digest(text).slice(0, 16);
