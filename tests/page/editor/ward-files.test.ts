import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Sheet, sheetOf } from "../../../src/page/editor/history.ts";
import { dataOf } from "../../../src/page/editor/scenario-text.ts";
import { filesNamed, loaderOf, placedWords, placingOf } from "../../../src/page/editor/ward-files.ts";
import { checkWard, sentence } from "../../../src/scenario/index.ts";
import { scenario, scenarios } from "../../cli/program.ts";

const ward = readFileSync(join(scenarios, "ward", "hospital.yaml"), "utf8");
const thigh = readFileSync(scenario("thigh-short-dwell"), "utf8");
const foot = readFileSync(scenario("foot-awkward-seal"), "utf8");
const files = {
	ward: { name: "hospital.yaml", text: ward },
	thigh: { name: "thigh-short-dwell.yaml", text: thigh },
	foot: { name: "foot-awkward-seal.yaml", text: foot },
	other: { name: "heavy-slough.yaml", text: thigh },
};
const beside = { "../thigh-short-dwell.yaml": thigh, "../foot-awkward-seal.yaml": foot };
const nothing = sheetOf("");
const checked = (sheet: Sheet, carried = {}, taken: string[] = []) =>
	checkWard(
		sheet.text,
		loaderOf(sheet, carried, (name) => taken.push(name)),
	);

test("a ward names the files of its kinds", () => {
	expect(filesNamed(dataOf(ward))).toEqual(Object.keys(beside));
	expect(filesNamed({ ward: { kinds: 3 } })).toEqual([]);
	expect(filesNamed(undefined)).toEqual([]);
});

test("a ward that comes with the files of its dressings finds them, whatever folder it names, and in any order", () => {
	const { foot, other, thigh, ward } = files;
	const placing = placingOf([thigh, other, ward, foot], false, nothing);
	expect(placing).toEqual({
		kind: "ward",
		name: "hospital.yaml",
		sheet: { text: ward.text, beside },
		used: ["thigh-short-dwell.yaml", "foot-awkward-seal.yaml"],
		unused: ["heavy-slough.yaml"],
	});
	if (placing?.kind !== "ward") throw new Error("no ward");
	expect(checked(placing.sheet).problems).toEqual([]);
	expect(placedWords(placing)).toBe(
		"hospital.yaml lies on the bench of the stores, with thigh-short-dwell.yaml, foot-awkward-seal.yaml beside it.",
	);
});

test("a file that is missing is a problem that names it and says what to do; dropped afterwards it is found", () => {
	const placing = placingOf([files.ward, files.thigh], true, nothing);
	if (placing?.kind !== "ward") throw new Error("no ward");
	const { problems } = checked(placing.sheet);
	expect(problems.map(sentence)).toEqual([
		expect.stringMatching(
			/^ward\.kinds\[1\]\.file \(line \d+\): expected foot-awkward-seal\.yaml beside the ward's file: drop it here too, or open both together, received no file of that name$/u,
		),
	]);
	const later = placingOf([files.foot], true, placing.sheet);
	if (later?.kind !== "beside") throw new Error("not beside");
	expect(checked(later.sheet).problems).toEqual([]);
	// In another view the same file is a day.
	expect(placingOf([files.foot], false, placing.sheet)?.kind).toBe("day");
});

test("files that lay beside a ward before are at hand when it is opened again, and a newer one takes the place of its like", () => {
	const before = { text: ward, beside };
	const again = placingOf([files.ward], false, before);
	expect(again).toMatchObject({ sheet: before, used: [] });
	const newer = placingOf([{ ...files.thigh, text: `${thigh}# newer\n` }], true, before);
	expect(newer).toMatchObject({
		kind: "beside",
		sheet: { beside: { ...beside, "../thigh-short-dwell.yaml": `${thigh}# newer\n` } },
	});
});

test("what the page carries stands in for a file that did not come, and is told of", () => {
	const taken: string[] = [];
	const { problems } = checked({ text: ward.replaceAll("../", "beds/"), beside: {} }, beside, taken);
	expect(problems).toEqual([]);
	expect([...new Set(taken)]).toEqual(["beds/thigh-short-dwell.yaml", "beds/foot-awkward-seal.yaml"]);
});

test("two files of one name from two folders are not mistaken for one another", () => {
	const text = ward.replace("../foot-awkward-seal.yaml", "beds/thigh-short-dwell.yaml");
	const placing = placingOf([{ name: "w.yaml", text }, files.thigh], true, nothing);
	if (placing?.kind !== "ward") throw new Error("no ward");
	expect(placing.unused).toEqual(["thigh-short-dwell.yaml"]);
	const { problems } = checked(placing.sheet);
	expect(problems.map(({ path }) => path)).toEqual(["ward.kinds[0].file", "ward.kinds[1].file"]);
	expect(problems[0]?.received).toBe("../thigh-short-dwell.yaml and beds/thigh-short-dwell.yaml");
});

test("a broken file goes where its problems can be read", () => {
	const broken = { name: "broken.yaml", text: `${ward}\n  b: }` };
	expect(placingOf([broken], false, nothing)?.kind).toBe("ward");
	const nonsense = { name: "nonsense.yaml", text: "a: [1,\n  b: }" };
	expect(placingOf([nonsense], true, nothing)?.kind).toBe("ward");
	expect(placingOf([nonsense], false, nothing)?.kind).toBe("day");
	expect(placingOf([files.other], true, nothing)?.kind).toBe("day");
	expect(placingOf([], true, nothing)).toBe(null);
});
