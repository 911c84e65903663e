import type { History } from "./history.ts";

/** What is kept in this browser, and nowhere else. */
export interface Keep {
	/** What was kept; null where nothing was, or the browser keeps nothing for a page opened from a disk. */
	load(): History | null;
	/** False where it could not be kept. */
	save(history: History): boolean;
}

/** Keeps under a name made of the scenario that the page was written with, so that two pages in one folder do not mix. */
export function keepOf(window: Window, ownText: string): Keep {
	const name = `slackwater workbench ${hashOf(ownText)}`;
	return {
		load: () => {
			try {
				return historyFrom(
					JSON.parse(window.localStorage.getItem(name) ?? "null"),
				);
			} catch {
				return null; // refused, or somebody else's data
			}
		},
		save: (history) => {
			try {
				window.localStorage.setItem(name, JSON.stringify(history));
				return true;
			} catch {
				return false; // refused, or full
			}
		},
	};
}

function historyFrom(data: unknown): History | null {
	if (typeof data !== "object" || data === null) return null;
	const { texts, at } = data as Partial<Record<keyof History, unknown>>; // looked at, not trusted
	return Array.isArray(texts) &&
		texts.every((text) => typeof text === "string") &&
		typeof at === "number" &&
		Number.isInteger(at) &&
		at >= 0 &&
		at < texts.length
		? { texts, at }
		: null;
}

/** FNV-1a, 32 bits, over UTF-16 units: enough to tell scenarios of one reader apart. */
function hashOf(text: string): string {
	let hash = 0x811c9dc5;
	for (let i = 0; i < text.length; i++)
		hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
	return hash.toString(36);
}
