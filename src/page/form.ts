// Longer than most: lists, maps and fields of a form hold one another, whatever their order.

import { htmlElement } from "../report/html-element.ts";
import { type Problem, sentence } from "../scenario/index.ts";
import { type Keys, pathText } from "../scenario/path.ts";
import { type Field, formField } from "./form-field.ts";
import { editorFor, helpOf, plainKey, recordIn, type Shape } from "./shape.ts";

/** Part of the form that can be folded away; what is in it is made when it is first opened. */
interface Part {
	readonly keys: string;
	readonly build: () => void;
	readonly count: HTMLElement;
}

/** `reshapes`: fields come or go, so that the form is to be shown anew. */
type Set = (keys: Keys, value: unknown, reshapes: boolean) => void;

/** Keys that say what kind of file it is, not what is in it. */
const hidden = ["$schema", "slackwater"];
/** Parts that are open from the start. */
const open =
	/^(?:ward|stores)$|^dressings(?:\[0\](?:\.(?:wound|foam|regimen|unit)|\.(?:foam|regimen)\[\d+\])?)?$/u;

/** A form for a whole scenario, made from its schema. Every value stands in its field as it stands in the file, units and all. */
export class Form {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #schema: Shape;
	readonly #set: Set;
	readonly #fields = new Map<string, Field>();
	readonly #parts: Part[] = [];
	/** Which parts the reader has opened or shut. */
	readonly #opened = new Map<string, boolean>();
	#made = 0;
	/** The part that was added last. */
	#added: string | null = null;

	/** `set` is told of every change; afterwards `show` is expected where fields come or go. */
	constructor(document: Document, schema: Shape, set: Set) {
		this.#document = document;
		this.#schema = schema;
		this.#set = set;
		this.element = htmlElement(document, "div", { class: "form" });
	}

	/** Makes the form anew for the data of a file; whoever was in it stays where he was, or comes to the part he has added. */
	show(data: unknown): void {
		const { activeElement } = this.#document;
		const was =
			activeElement !== null && this.element.contains(activeElement)
				? (activeElement.closest("[data-path]")?.getAttribute("data-path") ??
					"")
				: null;
		this.#fields.clear();
		this.#parts.length = 0;
		const { properties = {} } = this.#schema;
		const keys = Object.keys(properties).filter((key) => !hidden.includes(key));
		const isLeaf = (key: string) =>
			editorFor(properties[key], valueIn(data, key)).kind === "leaf";
		this.element.replaceChildren(
			...[...keys.filter(isLeaf), ...keys.filter((key) => !isLeaf(key))].map(
				(key) => this.#editor([key], properties[key], valueIn(data, key)),
			),
		);
		if (was !== null) this.#focus(this.#added ?? was);
		this.#added = null;
	}

	#focus(path: string): void {
		const there = [
			...this.element.querySelectorAll<HTMLElement>("[data-path]"),
		];
		const target =
			there.find((one) => one.dataset.path === path) ??
			there.find((one) => isIn(path, one.dataset.path ?? ""));
		target
			?.querySelector<HTMLElement>("input,select,textarea,summary")
			?.focus();
	}

	/** Says beside each field what is wrong with it. Returns the problems for which there is no field. */
	complain(problems: readonly Problem[]): readonly Problem[] {
		// A part that is made on the way may bring further parts with it.
		for (let i = 0; i < this.#parts.length; i++) {
			const part = this.#parts[i];
			const inside = problems.filter(({ path }) =>
				isIn(path, part.keys),
			).length;
			if (inside > 0) part.build();
			part.count.textContent =
				inside === 0
					? ""
					: ` (${inside} ${inside === 1 ? "problem" : "problems"})`;
		}
		const homeless: Problem[] = [];
		const own = new Map<string, string[]>();
		for (const problem of problems) {
			const at = this.#fieldOf(problem.path);
			if (at === null) homeless.push(problem);
			else own.set(at, [...(own.get(at) ?? []), sentence(problem)]);
		}
		for (const [path, field] of this.#fields)
			field.complain(own.get(path) ?? []);
		return homeless;
	}

	/** The field of a path, or of what it is an item of. */
	#fieldOf(path: string): string | null {
		for (
			let at = path;
			at !== "";
			at = at.replace(/(?:\.?[^.[\]]+|\[[^\]]*\])$/u, "")
		) {
			if (this.#fields.has(at)) return at;
			if (!/[.[]/u.test(at)) break;
		}
		return null;
	}

	#editor(keys: Keys, shape: Shape, value: unknown): HTMLElement {
		const editor = editorFor(shape, value);
		switch (editor.kind) {
			case "leaf":
				return this.#leaf(keys, shape, value);
			case "group":
				return this.#part(keys, shape, () => [
					...this.#members(keys, editor.shape, value),
					...this.#turns(keys, shape, value),
				]);
			case "list":
				return this.#part(keys, shape, () =>
					this.#list(keys, editor.item, value),
				);
			case "names":
				return this.#part(keys, shape, () =>
					this.#names(keys, editor.item, value),
				);
		}
	}

	#leaf(keys: Keys, shape: Shape, value: unknown): HTMLElement {
		const field = formField(
			this.#document,
			`field-${++this.#made}`,
			String(keys.at(-1)),
			shape,
			value,
			(typed) =>
				this.#set(
					keys,
					typed,
					typeof typed === "object" && !Array.isArray(typed),
				),
		);
		field.element.dataset.path = pathText(keys);
		this.#fields.set(pathText(keys), field);
		return field.element;
	}

	/** Fields and parts of a map, those of one value first. */
	#members(keys: Keys, shape: Shape, value: unknown): HTMLElement[] {
		return Object.entries(shape.properties ?? {}).map(([key, inner]) =>
			this.#editor([...keys, key], inner, valueIn(value, key)),
		);
	}

	/** Buttons that make one map several, or take an optional one out. */
	#turns(keys: Keys, shape: Shape, value: unknown): HTMLElement[] {
		const buttons: HTMLElement[] = [];
		if (recordIn(shape) !== undefined && value !== undefined)
			buttons.push(
				this.#button("Make it several, one after the other", () =>
					this.#set(keys, [value], true),
				),
			);
		if (shape.anyOf !== undefined && recordIn(shape) === undefined)
			buttons.push(
				this.#button("Leave these parts out", () =>
					this.#set(keys, undefined, true),
				),
			);
		return buttons;
	}

	#list(keys: Keys, item: Shape, value: unknown): HTMLElement[] {
		const items = Array.isArray(value) ? value : [];
		const one = singular(String(keys.at(-1)));
		return [
			...items.map((inner, i) =>
				this.#part(
					[...keys, i],
					item,
					() => [
						...this.#members([...keys, i], item, inner),
						this.#button(`Remove this ${one}`, () =>
							this.#set(
								keys,
								items.filter((_, other) => other !== i),
								true,
							),
						),
					],
					`${one} ${i + 1}${nameIn(inner)}`,
				),
			),
			this.#button(`Add ${/^[aeiou]/u.test(one) ? "an" : "a"} ${one}`, () => {
				this.#add([...keys, items.length]);
				this.#set(keys, [...items, {}], true);
			}),
		];
	}

	#names(keys: Keys, item: Shape, value: unknown): HTMLElement[] {
		const entries = Object.entries(valueIn({ value }, "value") ?? {});
		const isLeaf = editorFor(item, undefined).kind === "leaf";
		const id = `field-${++this.#made}`;
		const input = htmlElement(this.#document, "input", {
			type: "text",
			id,
			autocomplete: "off",
		});
		return [
			...entries.map(([name, inner]) =>
				isLeaf
					? this.#leaf([...keys, name], item, inner)
					: this.#part(
							[...keys, name],
							item,
							() => [
								...this.#members([...keys, name], item, inner),
								this.#button(`Remove ${name}`, () =>
									this.#set([...keys, name], undefined, true),
								),
							],
							name,
						),
			),
			htmlElement(
				this.#document,
				"div",
				{ class: "field" },
				htmlElement(this.#document, "label", { for: id }, "name of another"),
				input,
				this.#button("Add it", () => {
					if (input.value.trim() === "") return;
					this.#add([...keys, input.value.trim()]);
					this.#set([...keys, input.value.trim()], isLeaf ? 0 : {}, true);
				}),
			),
		];
	}

	#add(keys: Keys): void {
		this.#added = pathText(keys);
		this.#opened.set(this.#added, true);
	}

	#part(
		keys: Keys,
		shape: Shape,
		content: () => readonly HTMLElement[],
		heading = plainKey(String(keys.at(-1))),
	): HTMLElement {
		const path = pathText(keys);
		const element = htmlElement.bind(null, this.#document);
		const count = element("span", { class: "wrong" });
		const body = element("div", { class: "part" });
		const isOpen = this.#opened.get(path) ?? open.test(path);
		const details = htmlElement(
			this.#document,
			"details",
			isOpen ? { open: "" } : {},
			element("summary", {}, heading, count),
			body,
		);
		details.dataset.path = path;
		let made = false;
		const build = () => {
			if (made) return;
			made = true;
			const help = helpOf(shape);
			if (help !== "" && typeof keys.at(-1) === "string")
				body.append(element("p", { class: "help" }, help));
			body.append(...content());
		};
		if (isOpen) build();
		details.addEventListener("toggle", () => {
			this.#opened.set(path, details.open);
			if (details.open) build();
		});
		this.#parts.push({ keys: path, build, count });
		return details;
	}

	#button(words: string, press: () => void): HTMLElement {
		const button = htmlElement(
			this.#document,
			"button",
			{ type: "button" },
			words,
		);
		button.addEventListener("click", press);
		return button;
	}
}

const isIn = (path: string, keys: string) =>
	path === keys || path.startsWith(`${keys}.`) || path.startsWith(`${keys}[`);

function valueIn(data: unknown, key: string): unknown {
	return typeof data === "object" && data !== null && Object.hasOwn(data, key)
		? (data as Record<string, unknown>)[key] // an object that has the key
		: undefined;
}

const nameIn = (item: unknown): string => {
	const name = ["id", "what", "item", "from", "cause", "says"]
		.map((key) => valueIn(item, key))
		.find((value) => typeof value === "string");
	const size = valueIn(item, "size");
	return name === undefined
		? ""
		: `: ${name}${typeof size === "string" ? ` ${size}` : ""}`;
};

const singulars: Readonly<Record<string, string>> = {
	foam: "piece of foam",
	hides: "hidden cause",
	told: "thing told",
	regimen: "regimen",
	nurses: "shift",
	stores: "item",
};
const singular = (key: string) => singulars[key] ?? key.replace(/s$/u, "");
