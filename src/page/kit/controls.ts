import type { HtmlMaker } from "../../report/kit/html-element.ts";

type Attributes = { readonly [name: string]: string };

/** A button with words on it. */
export function pressed(html: HtmlMaker, words: string, press: () => void, attributes: Attributes = {}) {
	const button = html("button", { type: "button", ...attributes }, words);
	button.addEventListener("click", press);
	return button;
}

/** A control with its label before it, and what else belongs to it. */
export const labelled = (
	html: HtmlMaker,
	kind: "field" | "which",
	label: string,
	control: HTMLElement,
	...rest: readonly HTMLElement[]
): HTMLElement => html("div", { class: kind }, html("label", { for: control.id }, label), control, ...rest);

/** What may be chosen; an option whose words are not its value has both. */
export const options = (html: HtmlMaker, all: readonly (string | readonly [value: string, words: string])[]) =>
	all.map((one) => {
		const [value, words] = typeof one === "string" ? [one, one] : one;
		return html("option", { value }, words);
	});

/** A section named by its heading. */
export const headed = (html: HtmlMaker, id: string, heading: string, ...children: readonly Node[]): HTMLElement =>
	html("section", { "aria-labelledby": id }, html("h3", { id }, heading), ...children);

/** A region of its own that scrolls where the page is narrow. */
export const scrolling = (html: HtmlMaker, kind: string, label: string): HTMLElement =>
	html("div", { class: `scroll ${kind}`.trim(), role: "region", tabindex: "0", "aria-label": label });

/** A place for a link, which stands there to be copied once it has been made. */
export function linkField(html: HtmlMaker, label: string, rows: number) {
	const element = html("textarea", {
		class: "link",
		readonly: "",
		rows: String(rows),
		"aria-label": label,
		hidden: "",
	});
	return {
		element,
		show: (link: string): void => {
			element.hidden = false;
			element.value = link;
			element.focus();
			element.select();
		},
		hide: (): void => {
			element.hidden = true;
		},
	};
}

/** How far something has come; hidden while nothing is under way. */
export function progressBar(html: HtmlMaker, label: string) {
	const element = html("progress", { "aria-label": label, hidden: "" });
	return {
		element,
		begin: (): void => {
			element.removeAttribute("value");
			element.hidden = false;
		},
		/** What has not begun yet is not drawn as nothing done. */
		show: (done: number, of: number): void => {
			element.max = of;
			if (done > 0) element.value = done;
		},
		end: (): void => {
			element.hidden = true;
		},
	};
}

/** Stands where nothing can be shown of what lies on the bench. */
export function emptyNote(html: HtmlMaker): HTMLElement {
	const words = "Nothing is shown of this scenario: it has problems, which stand beside it. Mend them, or undo.";
	return html("p", { class: "caution", hidden: "" }, words);
}

/** A button that hands a text to the reader as a file, where there is one; nothing is sent anywhere. */
export const saveButton = (
	html: HtmlMaker,
	words: string,
	name: string | (() => string),
	text: () => string | null,
): HTMLButtonElement =>
	pressed(html, words, () => {
		const said = text();
		if (said !== null) saveFile(html, typeof name === "string" ? name : name(), said);
	});

function saveFile(html: HtmlMaker, name: string, text: string): void {
	const address = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
	const link = html("a", { href: address, download: name });
	html.document.body.append(link);
	link.click();
	link.remove();
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** The title as the beginning of a file's name. */
export const fileStem = (title: string): string =>
	title
		.toLowerCase()
		.normalize("NFKD")
		.replace(/[^a-z0-9]+/gu, "-")
		.replace(/^-+|-+$/gu, "")
		.slice(0, 60) || "scenario";
