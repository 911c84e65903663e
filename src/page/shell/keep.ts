import * as z from "zod";
import { type History, sheetOf } from "../editor/history.ts";

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
				return keptHistory.parse(JSON.parse(window.localStorage.getItem(name) ?? "null"));
			} catch {
				return null; // refused, nothing, or somebody else's data
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

const beside = z.record(z.string(), z.string());
const sheets = z.array(z.union([z.string().transform(sheetOf), z.object({ text: z.string(), beside })]));
const keptHistory = z
	.object({ texts: sheets, at: z.int().min(0) })
	.refine(({ texts, at }) => at < texts.length)
	.transform(({ texts, at }): History => ({ sheets: texts, at }));

/** FNV-1a, 32 bits, over UTF-16 units: enough to tell scenarios of one reader apart. */
function hashOf(text: string): string {
	let hash = 0x811c9dc5;
	for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
	return hash.toString(36);
}
