import type { History } from "../editor/history.ts";
import { type Sheet, sheetOf } from "../editor/history.ts";

/** What is kept in this browser, and nowhere else. */
export interface Keep {
	/** What was kept; null where nothing was, or the browser keeps nothing for a page opened from a disk. */
	load(): History | null;
	save(history: History): void;
}

/**
 * Keeps under a name made of what the page was written with, so that two pages in one folder do not mix. `unkept` is told
 * where something could not be kept.
 */
export function keepOf(window: Window, what: string, ownText: string, unkept: () => void): Keep {
	const name = `slackwater ${what} ${hashOf(ownText)}`;
	return {
		load: () => {
			try {
				return historyFrom(JSON.parse(window.localStorage.getItem(name) ?? "null"));
			} catch {
				return null; // refused, or somebody else's data
			}
		},
		save: (history) => {
			try {
				window.localStorage.setItem(name, JSON.stringify(kept(history)));
			} catch {
				unkept(); // refused, or full
			}
		},
	};
}

/** A sheet with nothing beside it is kept as its text. */
const kept = ({ sheets, at }: History) => ({
	texts: sheets.map((sheet) => (Object.keys(sheet.beside).length === 0 ? sheet.text : sheet)),
	at,
});

function historyFrom(data: unknown): History | null {
	if (typeof data !== "object" || data === null) return null;
	const { texts, at } = data as Partial<Record<"texts" | "at", unknown>>; // looked at, not trusted
	if (!Array.isArray(texts) || typeof at !== "number") return null;
	const sheets = texts.map(sheetFrom);
	return Number.isInteger(at) && at >= 0 && at < sheets.length && sheets.every((sheet) => sheet !== null)
		? { sheets, at }
		: null;
}

function sheetFrom(data: unknown): Sheet | null {
	if (typeof data === "string") return sheetOf(data);
	if (typeof data !== "object" || data === null) return null;
	const { text, beside } = data as Partial<Record<keyof Sheet, unknown>>; // looked at, not trusted
	return typeof text === "string" &&
		typeof beside === "object" &&
		beside !== null &&
		Object.values(beside).every((other) => typeof other === "string")
		? { text, beside: { ...beside } }
		: null;
}

/** FNV-1a, 32 bits, over UTF-16 units: enough to tell scenarios of one reader apart. */
function hashOf(text: string): string {
	let hash = 0x811c9dc5;
	for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
	return hash.toString(36);
}
