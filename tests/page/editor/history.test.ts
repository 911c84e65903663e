import fc from "fast-check";
import { expect, test } from "vitest";
import {
	canRedo,
	canUndo,
	changed,
	historyOf,
	present,
	redone,
	type Sheet,
	sheetOf,
	undone,
} from "../../../src/page/editor/history.ts";

const anySheet = fc.record({ text: fc.string(), beside: fc.dictionary(fc.string(), fc.string(), { maxKeys: 3 }) });

test("what was done can be undone to the first text and redone to the last, whatever it was", () => {
	fc.assert(
		fc.property(fc.array(anySheet, { maxLength: 40 }), (sheets) => {
			const first: Sheet = sheetOf("first");
			let history = sheets.reduce(changed, historyOf(first));
			const last = present(history);
			while (canUndo(history)) history = undone(history);
			expect(present(history)).toEqual(first);
			while (canRedo(history)) history = redone(history);
			expect(present(history)).toEqual(last);
		}),
	);
});

test("a change after an undo forgets what was undone", () => {
	const [a, b, c] = ["a", "b", "c"].map(sheetOf) as [Sheet, Sheet, Sheet]; // map forgets how many
	const history = changed(undone(changed(historyOf(a), b)), c);
	expect(history.sheets).toEqual([a, c]);
	expect(canRedo(history)).toBe(false);
});

test("the same text again is no step", () => {
	const one = historyOf(sheetOf("a"));
	expect(changed(one, sheetOf("a"))).toBe(one);
});

test("the same text with another file beside it is a step", () => {
	const one = { text: "a", beside: { "x.yaml": "1" } };
	const history = changed(historyOf(one), { text: "a", beside: { "x.yaml": "2" } });
	expect(canUndo(history)).toBe(true);
	expect(present(undone(history))).toEqual(one);
});

test("a long day of work does not outgrow the browser's store: the oldest steps go first", () => {
	const long = "x".repeat(400_000);
	let history = historyOf(sheetOf("first"));
	for (let i = 0; i < 20; i++) history = changed(history, sheetOf(`${i}${long}`));
	expect(history.sheets.length).toBeLessThan(5);
	expect(present(history).text).toBe(`19${long}`);
	expect(canUndo(history)).toBe(true);
});
