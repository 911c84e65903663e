import { maxScenarioBytes } from "../../scenario/index.ts";
import type { OpenedFile } from "../editor/ward-files.ts";

/** Most files that are opened together: a ward and one file a kind are fewer. */
const mostFiles = 100;

/** What is told of files: their texts, or why there are none. */
export interface Opening {
	readonly open: (files: readonly OpenedFile[]) => void;
	readonly refuse: (words: string) => void;
}

/** Lets files be dropped anywhere on the page. */
export function openDropped(document: Document, opening: Opening): void {
	document.addEventListener("dragover", (event) => {
		event.preventDefault();
		document.body.classList.add("dropping");
	});
	document.addEventListener("dragleave", (event) => {
		if (event.relatedTarget === null) document.body.classList.remove("dropping");
	});
	document.addEventListener("drop", (event) => {
		event.preventDefault();
		document.body.classList.remove("dropping");
		void readFiles([...(event.dataTransfer?.files ?? [])], opening);
	});
}

/** Reads files that were dropped or chosen together. */
export async function readFiles(files: readonly File[], { open, refuse }: Opening): Promise<void> {
	if (files.length > mostFiles) {
		refuse(`expected at most ${mostFiles} files, received ${files.length}`);
		return;
	}
	const refusals: string[] = [];
	const texts = await Promise.all(
		files.map(async (file): Promise<OpenedFile[]> => {
			if (file.size > maxScenarioBytes) {
				refusals.push(`${file.name}: expected at most ${maxScenarioBytes} bytes, received ${file.size} bytes`);
				return [];
			}
			try {
				return [{ name: file.name, text: await file.text() }];
			} catch {
				refusals.push(`${file.name}: it could not be read`);
				return [];
			}
		}),
	);
	if (refusals.length > 0) refuse(refusals.join("; "));
	else if (files.length > 0) open(texts.flat());
}
