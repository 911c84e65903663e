import { describe, expect, test } from "vitest";
import { describeRegimen } from "../describe.ts";
import { faultOf, type Raw, readChanged } from "../sample.ts";

const second = (raw: Raw) => {
	raw.dressings.push({
		...structuredClone(raw.dressings[0]),
		id: "calf",
		regimen: [
			{ depth: "-75 mmHg", fill: "none" },
			{ from: "8 h", depth: "-100 mmHg", fill: "none" },
		],
	});
};

describe("regimens to compare", () => {
	test("what a partial regimen leaves out stays as it is", () => {
		const { compare } = readChanged((raw) => {
			raw.compare = { long: { dwell: "10 min", suction: "3.5 h" } };
		});
		expect(compare[0]?.regimens.thigh).toMatchObject([{ dwellMin: 10, suctionMin: 210, fillMl: 50, depthMmHg: 125 }]);
	});

	test("it is laid over every dressing, over the first item of a list only", () => {
		const { compare } = readChanged((raw) => {
			second(raw);
			raw.compare = { deep: { depth: "-150 mmHg" } };
		});
		const depths = (id: string) => compare[0]?.regimens[id]?.map(({ depthMmHg }) => depthMmHg);
		expect(depths("thigh")).toEqual([150]);
		expect(depths("calf")).toEqual([150, 100]);
	});

	test("one that names a dressing leaves the others alone", () => {
		const { compare } = readChanged((raw) => {
			second(raw);
			raw.compare = { deep: { dressing: "thigh", depth: "-150 mmHg" } };
		});
		expect(compare[0]?.dressing).toBe("thigh");
		expect(compare[0]?.regimens.calf?.[0]?.depthMmHg).toBe(75);
	});

	test("equal items and empty items are regimens like any", () => {
		const { compare } = readChanged((raw) => {
			raw.compare = { a: {}, b: {} };
		});
		expect(compare[0]?.regimens).toEqual(compare[1]?.regimens);
	});

	test("they keep the order of the file", () => {
		const { compare } = readChanged((raw) => {
			raw.compare = { zebra: {}, ant: {} };
		});
		expect(compare.map(({ name }) => name)).toEqual(["zebra", "ant"]);
	});

	test("one that names no dressing of the file is refused with the nearest", () => {
		expect(
			faultOf((raw) => {
				raw.compare = { deep: { dressing: "thihg", depth: "-150 mmHg" } };
			}),
		).toMatch(/compare\.deep\.dressing.*did you mean thigh\?/u);
	});

	test("a fill laid over suction alone needs a dwell and a suction period", () => {
		expect(
			faultOf((raw) => {
				raw.dressings[0].regimen = { depth: "-125 mmHg", fill: "none" };
				raw.compare = { wash: { fill: "50 mL", dwell: "5 min" } };
			}),
		).toMatch(/^compare\.wash\.suction .*since there is a fill, received nothing$/u);
	});

	test("a dressing may have a name that objects of the host inherit", () => {
		const { compare } = readChanged((raw) => {
			raw.dressings[0].id = "constructor";
			raw.compare = { toString: { dwell: "6 min" } };
		});
		const regimens = new Map(Object.entries(compare[0]?.regimens ?? {}));
		expect(regimens.get("constructor")?.[0]?.dwellMin).toBe(6);
	});

	test("a regimen is described in one line", () => {
		const regimens = readChanged(() => {}).dressings[0]?.regimens ?? [];
		expect(regimens.map(describeRegimen)).toEqual([
			"−125 mmHg, 50 mL for 5 min, suction 2 h, drawdown 15 %, beginning in suction",
		]);
	});
});
