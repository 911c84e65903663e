import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { type Problem, sentence } from "../../scenario/index.ts";
import { type Keys, pathText } from "../../scenario/reading/problem.ts";
import { labelled, pressed } from "../kit/controls.ts";
import { type Field, formField } from "./form-field.ts";
import { editorFor, helpOf, plainKey, recordIn, type Shape } from "./shape.ts";

/** Part of the form that can be folded away; what is in it is made when it is first opened. */
interface Part {
	readonly keys: string;
	readonly build: () => void;
	readonly count: HTMLElement;
}

/** Keys that say what kind of file it is, not what is in it. */
const hidden = ["$schema", "slackwater"];
/** Parts that are open from the start. */
const open = /^(?:ward|stores)$|^dressings(?:\[0\](?:\.(?:wound|foam|regimen|unit)|\.(?:foam|regimen)\[\d+\])?)?$/u;

/**
 * A form for a whole scenario, made from its schema. Every value stands in its field as it stands in the file, units and
 * all. `set` is told of every change; where it `reshapes`, fields come or go, and `show` is expected afterwards.
 */
export function scenarioForm(
	html: HtmlMaker,
	schema: Shape,
	set: (keys: Keys, value: unknown, reshapes: boolean) => void,
) {
	const element = html("div", { class: "form" });
	const fields = new Map<string, Field>();
	const parts: Part[] = [];
	/** Which parts the reader has opened or shut. */
	const opened = new Map<string, boolean>();
	let made = 0;
	/** The part that was added last. */
	let added: string | null = null;

	function focus(path: string): void {
		const there = [...element.querySelectorAll<HTMLElement>("[data-path]")];
		const target =
			there.find((one) => one.dataset.path === path) ?? there.find((one) => isIn(path, one.dataset.path ?? ""));
		target?.querySelector<HTMLElement>("input,select,textarea,summary")?.focus();
	}

	/** The field of a path, or of what it is an item of. */
	function fieldOf(path: string): string | null {
		for (let at = path; at !== ""; at = at.replace(/(?:\.?[^.[\]]+|\[[^\]]*\])$/u, "")) {
			if (fields.has(at)) return at;
			if (!/[.[]/u.test(at)) break;
		}
		return null;
	}

	function editor(keys: Keys, shape: Shape, value: unknown): HTMLElement {
		const editor = editorFor(shape, value);
		switch (editor.kind) {
			case "leaf":
				return leaf(keys, shape, value);
			case "group":
				return part(keys, shape, () => [...members(keys, editor.shape, value), ...turns(keys, shape, value)]);
			case "list":
				return part(keys, shape, () => list(keys, editor.item, value));
			case "names":
				return part(keys, shape, () => names(keys, editor.item, value));
		}
	}

	function leaf(keys: Keys, shape: Shape, value: unknown): HTMLElement {
		const field = formField(html, `field-${++made}`, String(keys.at(-1)), shape, value, (typed) =>
			set(keys, typed, typeof typed === "object" && !Array.isArray(typed)),
		);
		field.element.dataset.path = pathText(keys);
		fields.set(pathText(keys), field);
		return field.element;
	}

	/** Fields and parts of a map. */
	const members = (keys: Keys, shape: Shape, value: unknown): HTMLElement[] =>
		Object.entries(shape.properties ?? {}).map(([key, inner]) => editor([...keys, key], inner, valueIn(value, key)));

	/** Buttons that make one map several, or take an optional one out. */
	function turns(keys: Keys, shape: Shape, value: unknown): HTMLElement[] {
		if (recordIn(shape) !== undefined)
			return value === undefined
				? []
				: [pressed(html, "Make it several, one after the other", () => set(keys, [value], true))];
		return shape.anyOf === undefined ? [] : [pressed(html, "Leave these parts out", () => set(keys, undefined, true))];
	}

	function list(keys: Keys, item: Shape, value: unknown): HTMLElement[] {
		const items = Array.isArray(value) ? value : [];
		const one = singular(String(keys.at(-1)));
		const without = (i: number) => items.filter((_, other) => other !== i);
		return [
			...items.map((inner, i) => {
				const own = [...keys, i];
				const remove = () => pressed(html, `Remove this ${one}`, () => set(keys, without(i), true));
				const content = () => [...members(own, item, inner), remove()];
				return part(own, item, content, `${one} ${i + 1}${nameIn(inner)}`);
			}),
			pressed(html, `Add ${/^[aeiou]/u.test(one) ? "an" : "a"} ${one}`, () => {
				add([...keys, items.length]);
				set(keys, [...items, {}], true);
			}),
		];
	}

	function names(keys: Keys, item: Shape, value: unknown): HTMLElement[] {
		const entries = Object.entries(valueIn({ value }, "value") ?? {});
		const isLeaf = editorFor(item, undefined).kind === "leaf";
		const input = html("input", { type: "text", id: `field-${++made}`, autocomplete: "off" });
		const addIt = pressed(html, "Add it", () => {
			const name = input.value.trim();
			if (name === "") return;
			add([...keys, name]);
			set([...keys, name], isLeaf ? 0 : {}, true);
		});
		return [
			...entries.map(([name, inner]) => {
				const own = [...keys, name];
				if (isLeaf) return leaf(own, item, inner);
				const remove = () => pressed(html, `Remove ${name}`, () => set(own, undefined, true));
				return part(own, item, () => [...members(own, item, inner), remove()], name);
			}),
			labelled(html, "field", "name of another", input, addIt),
		];
	}

	function add(keys: Keys): void {
		added = pathText(keys);
		opened.set(added, true);
	}

	function part(
		keys: Keys,
		shape: Shape,
		content: () => readonly HTMLElement[],
		heading = plainKey(String(keys.at(-1))),
	): HTMLElement {
		const path = pathText(keys);
		const count = html("span", { class: "wrong" });
		const body = html("div", { class: "part" });
		const isOpen = opened.get(path) ?? open.test(path);
		const summary = html("summary", {}, heading, count);
		const details = html("details", { "data-path": path, ...(isOpen ? { open: "" } : {}) }, summary, body);
		let built = false;
		const build = () => {
			if (built) return;
			built = true;
			const help = helpOf(shape);
			if (help !== "" && typeof keys.at(-1) === "string") body.append(html("p", { class: "help" }, help));
			body.append(...content());
		};
		if (isOpen) build();
		details.addEventListener("toggle", () => {
			opened.set(path, details.open);
			if (details.open) build();
		});
		parts.push({ keys: path, build, count });
		return details;
	}

	return {
		element,
		/** Makes the form anew for the data of a file; whoever was in it stays where he was, or comes to the part he has added. */
		show(data: unknown): void {
			const { activeElement } = html.document;
			const was =
				activeElement !== null && element.contains(activeElement)
					? (activeElement.closest("[data-path]")?.getAttribute("data-path") ?? "")
					: null;
			fields.clear();
			parts.length = 0;
			const { properties = {} } = schema;
			const keys = Object.keys(properties).filter((key) => !hidden.includes(key));
			const isLeaf = (key: string) => editorFor(properties[key], valueIn(data, key)).kind === "leaf";
			element.replaceChildren(
				...[...keys.filter(isLeaf), ...keys.filter((key) => !isLeaf(key))].map((key) =>
					editor([key], properties[key], valueIn(data, key)),
				),
			);
			if (was !== null) focus(added ?? was);
			added = null;
		},
		/** Says beside each field what is wrong with it. Returns the problems for which there is no field. */
		complain(problems: readonly Problem[]): readonly Problem[] {
			// A part that is made on the way brings further parts with it, which are met in their turn.
			for (const { keys, build, count } of parts) {
				const inside = problems.filter(({ path }) => isIn(path, keys)).length;
				if (inside > 0) build();
				count.textContent = inside === 0 ? "" : ` (${inside} ${inside === 1 ? "problem" : "problems"})`;
			}
			const homeless: Problem[] = [];
			const own = new Map<string, string[]>();
			for (const problem of problems) {
				const at = fieldOf(problem.path);
				if (at === null) homeless.push(problem);
				else own.set(at, [...(own.get(at) ?? []), sentence(problem)]);
			}
			for (const [path, field] of fields) field.complain(own.get(path) ?? []);
			return homeless;
		},
	};
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
	return name === undefined ? "" : `: ${name}${typeof size === "string" ? ` ${size}` : ""}`;
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
