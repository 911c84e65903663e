import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { labelled, options } from "../kit/controls.ts";
import { fieldText, fieldValue, groupIn, helpOf, onlyWords, plainKey, type Shape, wordsOf } from "./shape.ts";

/** One field of the form: a label, what is typed or chosen, what it means, and what is wrong with it. */
export interface Field {
	readonly element: HTMLElement;
	/** Says what is wrong beside it; nothing for an empty list. */
	complain(sentences: readonly string[]): void;
}

const inParts = "in parts";
/** Letters that a field shows on one line where the form is narrow. */
const lineLetters = 16;

type Set = (value: unknown) => void;

/** A field for one value. `set` is told what was typed, undefined where the field was emptied. */
export function formField(html: HtmlMaker, id: string, key: string, shape: Shape, value: unknown, set: Set): Field {
	const isChoice = onlyWords(shape) || (wordsOf(shape).length > 0 && groupIn(shape) !== undefined);
	const control = (isChoice ? choice : typed)(html, shape, value, set);
	control.id = id;
	control.setAttribute("aria-describedby", `${id}-help ${id}-wrong`);
	const help = html("p", { class: "help", id: `${id}-help` }, helpOf(shape));
	const wrong = html("p", { class: "wrong", id: `${id}-wrong` });
	return {
		element: labelled(html, "field", plainKey(key), control, help, wrong),
		complain: (sentences) => {
			wrong.textContent = sentences.join(" ");
			if (sentences.length > 0) control.setAttribute("aria-invalid", "true");
			else control.removeAttribute("aria-invalid");
		},
	};
}

function typed(html: HtmlMaker, shape: Shape, value: unknown, set: Set): HTMLInputElement | HTMLTextAreaElement {
	const text = fieldText(value);
	const hint = shape.default === undefined ? fieldText(shape.examples?.at(-1)) : fieldText(shape.default);
	const rows = String(Math.min(6, Math.ceil(text.length / lineLetters)));
	const input =
		text.length > lineLetters
			? html("textarea", { rows, spellcheck: "false" })
			: html("input", { type: "text", autocomplete: "off", spellcheck: "false" });
	input.value = text;
	// An example stands in an empty field, so that the unit is seen; a default says that it is one.
	if (hint !== "") input.placeholder = shape.default === undefined ? `such as ${hint}` : hint;
	input.addEventListener("change", () => set(fieldValue(input.value, shape)));
	return input;
}

function choice(html: HtmlMaker, shape: Shape, value: unknown, set: Set): HTMLSelectElement {
	const words = [...wordsOf(shape), ...(groupIn(shape) === undefined ? [] : [inParts])];
	const given = value === true ? "on" : value === false ? "off" : fieldText(value);
	const empty = shape.default === undefined ? "choose" : `${fieldText(shape.default)} (default)`;
	// What stands in the file is shown though it is none of the words.
	const strange = given === "" || words.includes(given) ? [] : [given];
	const select = html("select", {}, ...options(html, [["", empty], ...words, ...strange]));
	select.value = given;
	select.addEventListener("change", () =>
		set(select.value === "" ? undefined : select.value === inParts ? {} : select.value),
	);
	return select;
}
