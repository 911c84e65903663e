import { expect, test } from "vitest";
import { editorFor, fieldText, fieldValue, type Shape } from "../../../src/page/editor/shape.ts";
import { dayScenarioSchema, wardScenarioSchema } from "../../../src/scenario/index.ts";

const schema = dayScenarioSchema() as Shape; // JSON Schema, of which Shape is a part

function at(...keys: readonly string[]): Shape {
	return keys.reduce((shape: Shape, key) => {
		const branch = [shape, ...(shape.anyOf ?? [])].find(
			(one) => one.items !== undefined || one.properties !== undefined,
		);
		const inner = branch?.properties?.[key] ?? branch?.items;
		if (inner === undefined) throw new Error(`nothing at ${keys.join(".")}`);
		return key === "[]" ? (branch?.items ?? inner) : inner;
	}, schema);
}

test("a regimen is edited as one map or as a list of them, as the file has it", () => {
	const regimen = at("dressings", "[]", "regimen");
	expect(editorFor(regimen, { dwell: "5 min" }).kind).toBe("group");
	expect(editorFor(regimen, [{ dwell: "5 min" }]).kind).toBe("list");
});

test("what may be a word or a map is a word until it is a map", () => {
	const outflow = at("dressings", "[]", "wound", "outflow");
	expect(editorFor(outflow, undefined).kind).toBe("leaf");
	expect(editorFor(outflow, "none").kind).toBe("leaf");
	expect(editorFor(outflow, { total: "1 mL/d" }).kind).toBe("group");
});

test("a list of times is typed with commas; none is an empty one, and nothing is the default", () => {
	const rounds = at("care", "rounds");
	expect(editorFor(rounds, ["07:00"]).kind).toBe("leaf");
	expect(fieldText(["07:00", "19:00"])).toBe("07:00, 19:00");
	expect(fieldValue("07:00, 19:00", rounds)).toEqual(["07:00", "19:00"]);
	expect(fieldValue("none", rounds)).toEqual([]);
	expect(fieldText([])).toBe("none");
	expect(fieldValue("  ", rounds)).toBe(undefined);
	const change = at("care", "dressingChange");
	expect(fieldValue("none", change)).toBe("none");
	expect(fieldValue("48 h", change)).toBe("48 h");
	expect(fieldValue("46 h, 94 h", change)).toEqual(["46 h", "94 h"]);
});

test("a number is one where free text is not meant; a bare quantity stays bare, so that check can name the units", () => {
	expect(fieldValue("400", at("replications"))).toBe(400);
	expect(fieldValue("12", at("title"))).toBe("12");
	expect(fieldValue("5", at("dressings", "[]", "regimen", "dwell"))).toBe(5);
	expect(fieldValue("5 min", at("dressings", "[]", "regimen", "dwell"))).toBe("5 min");
});

test("of several maps that may stand in one place the one that has the keys of the file is edited", () => {
	const ward = wardScenarioSchema() as Shape; // JSON Schema, of which Shape is a part
	const length = ward.properties?.ward?.properties?.length;
	if (length === undefined) throw new Error("no length");
	const keysOf = (value: unknown) => {
		const editor = editorFor(length, value);
		return editor.kind === "group" ? Object.keys(editor.shape.properties ?? {}) : editor.kind;
	};
	expect(keysOf({ median: "6 d", spread: 0.5 })).toEqual(["median", "spread"]);
	expect(keysOf({ mean: "6 d" })).toEqual(["mean"]);
	expect(keysOf([{ length: "6 d", share: 1 }])).toBe("list");
});
