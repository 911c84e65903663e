import fc from "fast-check";
import { expect, test } from "vitest";
import {
	canRedo,
	canUndo,
	changed,
	historyOf,
	present,
	redone,
	undone,
} from "../../src/page/history.ts";

test("what was done can be undone to the first text and redone to the last, whatever it was", () => {
	fc.assert(
		fc.property(fc.array(fc.string(), { maxLength: 40 }), (texts) => {
			let history = texts.reduce(changed, historyOf("first"));
			const last = present(history);
			while (canUndo(history)) history = undone(history);
			expect(present(history)).toBe("first");
			while (canRedo(history)) history = redone(history);
			expect(present(history)).toBe(last);
		}),
	);
});

test("a change after an undo forgets what was undone", () => {
	const history = changed(undone(changed(historyOf("a"), "b")), "c");
	expect(history.texts).toEqual(["a", "c"]);
	expect(canRedo(history)).toBe(false);
});

test("the same text again is no step", () => {
	expect(changed(historyOf("a"), "a")).toEqual(historyOf("a"));
});

test("a long day of work does not outgrow the browser's store: the oldest steps go first", () => {
	const long = "x".repeat(400_000);
	let history = historyOf("first");
	for (let i = 0; i < 20; i++) history = changed(history, `${i}${long}`);
	expect(history.texts.length).toBeLessThan(5);
	expect(present(history)).toBe(`19${long}`);
	expect(canUndo(history)).toBe(true);
});
