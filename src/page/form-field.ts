import { htmlElement } from "../report/html-element.ts";
import {
	fieldText,
	fieldValue,
	groupIn,
	helpOf,
	onlyWords,
	plainKey,
	type Shape,
	wordsOf,
} from "./shape.ts";

/** One field of the form: a label, what is typed or chosen, what it means, and what is wrong with it. */
export interface Field {
	readonly element: HTMLElement;
	/** Says what is wrong beside it; nothing for an empty list. */
	complain(sentences: readonly string[]): void;
}

const inParts = "in parts";
/** Letters that a field shows on one line where the form is narrow. */
const lineLetters = 16;

/** A field for one value. `set` is told what was typed, undefined where the field was emptied. */
export function formField(
	document: Document,
	id: string,
	key: string,
	shape: Shape,
	value: unknown,
	set: (value: unknown) => void,
): Field {
	const element = htmlElement.bind(null, document);
	const control =
		onlyWords(shape) ||
		(wordsOf(shape).length > 0 && groupIn(shape) !== undefined)
			? choice(document, shape, value, set)
			: typed(document, shape, value, set);
	control.id = id;
	control.setAttribute("aria-describedby", `${id}-help ${id}-wrong`);
	const wrong = element("p", { class: "wrong", id: `${id}-wrong` });
	const field = element(
		"div",
		{ class: "field" },
		element("label", { for: id }, plainKey(key)),
		control,
		element("p", { class: "help", id: `${id}-help` }, helpOf(shape)),
		wrong,
	);
	return {
		element: field,
		complain: (sentences) => {
			wrong.textContent = sentences.join(" ");
			if (sentences.length > 0) control.setAttribute("aria-invalid", "true");
			else control.removeAttribute("aria-invalid");
		},
	};
}

function typed(
	document: Document,
	shape: Shape,
	value: unknown,
	set: (value: unknown) => void,
): HTMLInputElement | HTMLTextAreaElement {
	const text = fieldText(value);
	const hint =
		shape.default === undefined
			? fieldText(shape.examples?.at(-1))
			: fieldText(shape.default);
	const input =
		text.length > lineLetters
			? htmlElement(document, "textarea", {
					rows: String(Math.min(6, Math.ceil(text.length / lineLetters))),
					spellcheck: "false",
				})
			: htmlElement(document, "input", {
					type: "text",
					autocomplete: "off",
					spellcheck: "false",
				});
	input.value = text;
	// An example stands in an empty field, so that the unit is seen; a default says that it is one.
	if (hint !== "")
		input.placeholder = shape.default === undefined ? `such as ${hint}` : hint;
	input.addEventListener("change", () => set(fieldValue(input.value, shape)));
	return input;
}

function choice(
	document: Document,
	shape: Shape,
	value: unknown,
	set: (value: unknown) => void,
): HTMLSelectElement {
	const words = [
		...wordsOf(shape),
		...(groupIn(shape) === undefined ? [] : [inParts]),
	];
	const given =
		value === true ? "on" : value === false ? "off" : fieldText(value);
	const empty =
		shape.default === undefined
			? "choose"
			: `${fieldText(shape.default)} (default)`;
	const option = (word: string, label = word) =>
		htmlElement(document, "option", { value: word }, label);
	const select = htmlElement(
		document,
		"select",
		{},
		option("", empty),
		...words.map((word) => option(word)),
		// What stands in the file is shown though it is none of the words.
		...(given === "" || words.includes(given) ? [] : [option(given)]),
	);
	select.value = given;
	select.addEventListener("change", () =>
		set(
			select.value === ""
				? undefined
				: select.value === inParts
					? {}
					: select.value,
		),
	);
	return select;
}
