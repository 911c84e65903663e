import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type SweepResult, sweepJsonSchema } from "../../src/results/index.ts";
import { filesOf, here, isSentence, lines, scenario, shellStatus, spawned, temporary } from "./program.ts";

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(sweepJsonSchema);

const folder = temporary();
const thigh = scenario("thigh-short-dwell");
const grid = ["--dwell", "2 min to 10 min by 4 min", "--suction", "1.5 h, 3 h", "--replications", "60"];

describe("sweep --json", () => {
	test("is of its schema, and nothing else is on standard output", async () => {
		const { status, out, err } = await here("sweep", thigh, ...grid, "--json");
		expect({ status, err }).toEqual({ status: 0, err: "" });
		const result: SweepResult = JSON.parse(out);
		expect(validate(result), JSON.stringify(validate.errors)).toBe(true);
		expect(result.points).toHaveLength(6);
	});

	test("gives the same bytes for one, two and three workers", async () => {
		const outs = [];
		for (const workers of ["1", "2", "3"])
			outs.push((await spawned(["sweep", thigh, ...grid, "--json", "--workers", workers])).out);
		expect(outs[0].length).toBeGreaterThan(1000);
		expect(outs[1] === outs[0]).toBe(true);
		expect(outs[2] === outs[0]).toBe(true);
	});

	test("varies the clock time of the first phase, and says what is likely when", async () => {
		const { out } = await here("sweep", thigh, "--start", "07:00, 13:30", "--replications", "50", "--json");
		const result: SweepResult = JSON.parse(out);
		expect(result.axes).toMatchObject([{ name: "start", unit: "clock", values: [420, 810], current: 420 }]);
		expect(result.points.map(({ clock }) => clock?.alarmBins.length)).toEqual([48, 48]);
	});
});

describe("what is wrong", () => {
	test.each([
		["a grid of one point", ["--dwell", "5 min"], /sweep.*two points or more.*one point/u],
		["no grid", [], /sweep.*two points or more.*one point/u],
		[
			"a grid of 10⁹ points",
			[
				"--dwell",
				"1 min to 1000 min by 1 min",
				"--suction",
				"10 min to 10000 min by 10 min",
				"--fill",
				"1 mL to 1000 mL by 1 mL",
			],
			/sweep.*at most 10000 points.*one of 1000000000/u,
		],
		[
			"an axis of more values than a grid may have points",
			["--dwell", "1 min to 1000 min by 0.001 min"],
			/--dwell.*at most 10000 dwells.*a range of more/u,
		],
		["a value without a unit", ["--dwell", "5, 10"], /--dwell.*"5"/u],
		["one value twice", ["--dwell", "5 min, 300 s"], /--dwell.*twice/u],
		["a positive depth", ["--depth", "125 mmHg, -100 mmHg"], /--depth.*write -125 mmHg/u],
		[
			"dressings out of step where there is one",
			["--apart", "0 min, 30 min"],
			/--apart.*two dressings or more.*one dressing/u,
		],
		[
			"an unknown measure to keep",
			["--dwell", "5 min, 6 min", "--keep", "nightcall<1"],
			/--keep.*did you mean nightCalls\?/u,
		],
		["a condition without a limit", ["--dwell", "5 min, 6 min", "--keep", "nightCalls"], /--keep.*"nightCalls"/u],
		["one measure to weigh", ["--dwell", "5 min, 6 min", "--efficient", "nurseMin"], /--efficient.*two or three/u],
		[
			"a measure of which more is neither better nor worse",
			["--dwell", "5 min, 6 min", "--efficient", "nurseMin,wetMin"],
			/--efficient.*wetMin:lower or wetMin:higher/u,
		],
		["a curve over an axis that is not varied", ["--dwell", "5 min, 6 min", "--curve", "fill"], /--curve.*of dwell/u],
	])("%s is a sentence", async (_, words, sentence) => {
		const { status, out, err } = await here("sweep", thigh, ...words, "--json");
		expect({ status, out }).toEqual({ status: 2, out: "" });
		expect(err).toMatch(sentence);
		expect(lines(err).every(isSentence)).toBe(true);
	});
});

describe("a sweep that is stopped", () => {
	const whole = join(folder, "whole");
	const cut = join(folder, "cut");
	const words = [
		"sweep",
		thigh,
		"--dwell",
		"2 min to 12 min by 1 min",
		"--suction",
		"1 h, 2 h, 3 h",
		"--replications",
		"150",
		"--workers",
		"1",
		"--quiet",
	];
	const unfinished = () => readdirSync(cut).filter((name) => name.startsWith(".unfinished"));

	test.each(["SIGINT", "SIGKILL"] as const)(
		"by %s leaves no half file, and the same command goes on to the same bytes",
		async (signal) => {
			await spawned([...words, "--out", whole, "--force"]);
			let watching: NodeJS.Timeout | undefined;
			const ran = await spawned([...words, "--out", cut], {
				meanwhile: (child) => {
					watching = setInterval(() => {
						try {
							if (unfinished().length > 0) child.kill(signal);
						} catch {} // the folder is not there yet
					}, 2);
				},
			});
			clearInterval(watching);
			expect(shellStatus(ran)).toBe(signal === "SIGINT" ? 130 : 137);
			if (signal === "SIGINT") expect(ran.err).toMatch(/the same command goes on from there/u);
			expect(readdirSync(cut)).toEqual(unfinished());
			expect(unfinished()).toHaveLength(1);
			const again = await spawned([...words, "--out", cut]);
			expect(again.status).toBe(0);
			expect(filesOf(cut)).toEqual(filesOf(whole));
			rmSync(cut, { recursive: true });
		},
	);
});
