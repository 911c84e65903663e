import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { fullScenario } from "../../../src/scenario/index.ts";
import { describeRegimen } from "../describe.ts";
import { changed, faultOf, type Raw, readChanged } from "../sample.ts";

const withUsual = (usual: object, change: (raw: Raw) => void = () => {}) =>
	readChanged((raw) => {
		raw.usual = usual;
		change(raw);
	}).usual;

describe("the site's usual regimen", () => {
	test("is none where a file names none", () => {
		expect(readChanged(() => {}).usual).toBeNull();
	});

	test("is laid over the scenario's own", () => {
		const usual = withUsual({ dwell: "10 min", suction: "3.5 h" });
		expect(usual?.thigh.map(describeRegimen)).toEqual([
			"−125 mmHg, 50 mL for 10 min, suction 3.5 h, drawdown 15 %, beginning in suction",
		]);
	});

	test("is one for every dressing, in the place of its first regimen", () => {
		const usual = withUsual({ depth: "-75 mmHg", drawdown: "5 %" }, (raw) => {
			const own = raw.dressings[0].regimen;
			raw.dressings.push({
				...raw.dressings[0],
				id: "flank",
				regimen: [own, { from: "9 h", depth: "-50 mmHg", fill: "none" }],
			});
		});
		expect(usual?.thigh[0]).toMatchObject({ depthMmHg: 75, drawdown: 0.05 });
		expect(usual?.flank.map(({ depthMmHg }) => depthMmHg)).toEqual([75, 50]);
	});

	test("must be a regimen that the pump holds, complete, and of no dressing", () => {
		const fault = (usual: object, fill?: string) =>
			faultOf((raw) => {
				raw.usual = usual;
				if (fill !== undefined) raw.dressings[0].regimen = { depth: "-125 mmHg", fill };
			});
		expect(fault({ depth: "-260 mmHg" })).toMatch(/^usual\.depth/u);
		expect(fault({ depth: "125 mmHg" })).toMatch(/^usual\.depth/u);
		expect(fault({ fill: "50 mL" }, "none")).toMatch(/^usual\.dwell.*\nusual\.suction/u);
		expect(fault({ dressing: "thigh" })).toMatch(/^usual\.dressing/u);
		expect(fault({ dwel: "5 min" })).toMatch(/did you mean dwell\?/u);
	});

	test("stays as it is written where everything is filled in", () => {
		const text = changed((raw) => {
			raw.usual = { dwell: "10 min" };
		});
		expect(parse(fullScenario(text)).usual).toEqual({ dwell: "10 min" });
	});
});
