import { maxScenarioBytes } from "../scenario/index.ts";

/** Lets files be dropped anywhere on the page; `open` is told the text, `refuse` why one cannot be opened. */
export function openDropped(
	document: Document,
	open: (text: string, name: string) => void,
	refuse: (words: string) => void,
): void {
	document.addEventListener("dragover", (event) => {
		event.preventDefault();
		document.body.classList.add("dropping");
	});
	document.addEventListener("dragleave", (event) => {
		if (event.relatedTarget === null)
			document.body.classList.remove("dropping");
	});
	document.addEventListener("drop", (event) => {
		event.preventDefault();
		document.body.classList.remove("dropping");
		const [file] = event.dataTransfer?.files ?? [];
		if (file !== undefined) void readFile(file, open, refuse);
	});
}

/** Reads a file that was dropped or chosen. */
export async function readFile(
	file: File,
	open: (text: string, name: string) => void,
	refuse: (words: string) => void,
): Promise<void> {
	if (file.size > maxScenarioBytes) {
		refuse(
			`${file.name}: expected at most ${maxScenarioBytes} bytes, received ${file.size} bytes`,
		);
		return;
	}
	try {
		open(await file.text(), file.name);
	} catch {
		refuse(`${file.name}: it could not be read`);
	}
}
