import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { smallWard } from "../ward/small-ward.ts";
import { filesOf, here, lines, temporary, written } from "./program.ts";

const folder = temporary();
const file = written(folder, "ward.yaml", smallWard());
const whole = join(folder, "whole");
const parts = join(folder, "parts");
const part = (number: number, of = 10) => join(parts, `part-${number}-of-${of}.json`);
const all = Array.from({ length: 10 }, (_, i) => part(i + 1));
/** Neither rising nor falling. */
const mixed = [7, 2, 10, 1, 5, 9, 3, 8, 4, 6].map((number) => part(number));

beforeAll(async () => {
	const { status, err } = await here("supply", file, "--out", whole);
	expect({ status, err }).toEqual({ status: 0, err: "" });
	for (let number = 1; number <= 10; number++) {
		const ran = await here("supply", file, "--shard", `${number}/10`, "--out", parts, "--quiet");
		expect(ran).toMatchObject({ status: 0, err: "", out: "" });
	}
});

describe("a run in ten shards", () => {
	test("gathered in any order is the whole, byte for byte", async () => {
		const out = join(folder, "gathered");
		const { status, err } = await here("gather", ...mixed, "--out", out);
		expect({ status, err }).toEqual({ status: 0, err: "" });
		expect(filesOf(out)).toEqual(filesOf(whole));
		const printed = await here("gather", ...all, "--json");
		expect(printed.out).toBe(readFileSync(join(whole, "supply.json"), "utf8"));
	});

	test("is the same for any number of threads, parts included", async () => {
		const out = join(folder, "threads");
		await here("supply", file, "--workers", "3", "--out", out);
		expect(filesOf(out)).toEqual(filesOf(whole));
		const { out: printed } = await here("supply", file, "--shard", "4/10", "--workers", "2", "--json");
		expect(printed).toBe(readFileSync(part(4), "utf8"));
	});

	test("may have more shards than blocks: some are empty", async () => {
		const few = join(folder, "few");
		const short = ["--replications", "5", "--quiet"] as const;
		for (const number of [1, 2, 3]) await here("supply", file, ...short, "--shard", `${number}/3`, "--out", few);
		const gathered = await here("gather", ...[3, 1, 2].map((n) => join(few, `part-${n}-of-3.json`)), "--json");
		const once = await here("supply", file, ...short, "--json");
		expect(gathered.status).toBe(0);
		expect(gathered.out).toBe(once.out);
	});
});

describe("order rules that are found once", () => {
	const shared = join(folder, "shared");
	const rules = join(shared, "rules.json");
	beforeAll(async () => {
		const ran = await here("supply", file, "--rules-only", "--out", shared);
		expect(ran).toMatchObject({ status: 0, err: "" });
		expect(ran.out).toMatch(/^The order rules are in .*rules\.json\n$/);
	});

	test("give shards, and the whole, the bytes that they find themselves", async () => {
		const one = await here(...["supply", file, "--rules", rules], ...["--shard", "4/10", "--json"]);
		expect(one).toMatchObject({ status: 0, err: "" });
		expect(one.out).toBe(readFileSync(part(4), "utf8"));
		const all = await here("supply", file, "--rules", rules, "--json");
		expect(all.out).toBe(readFileSync(join(whole, "supply.json"), "utf8"));
		const threads = await here(...["supply", file, "--rules-only", "--workers", "3", "--json"]);
		expect(threads.out).toBe(readFileSync(rules, "utf8"));
	});

	test("are refused where they are others', were changed, or are none", async () => {
		const refused = async (...words: string[]) => {
			const ran = await here("supply", ...words, "--json");
			expect({ status: ran.status, out: ran.out }).toEqual({ status: 2, out: "" });
			expect(lines(ran.err)).toHaveLength(1);
			return ran.err;
		};
		expect(await refused(file, "--seed", "other", "--rules", rules)).toMatch(
			/rules\.json: expected order rules that supply --rules-only wrote of this ward, received those of another scenario, seed or number of replications/,
		);
		expect(await refused(file, "--replications", "20", "--rules", rules)).toMatch(
			/of another scenario, seed or number of replications/,
		);
		const text = readFileSync(rules, "utf8");
		const changed = written(folder, "changed-rules.json", text.replace(/"upTo":\d+/, '"upTo":99'));
		expect(await refused(file, "--rules", changed)).toMatch(/received rules that were changed since/);
		expect(await refused(file, "--rules", part(1))).toMatch(/received something else/);
		expect(await refused(file, "--rules", join(folder, "none"))).toMatch(/received nothing/);
		expect(await refused(file, "--rules-only", "--shard", "1/2")).toMatch(
			/--rules-only: expected neither --shard nor --rules beside it/,
		);
	});
});

describe("gather refuses, by name and all at once", () => {
	const refusal = async (...words: string[]) => {
		const { status, out, err } = await here("gather", ...words, "--json");
		expect({ status, out }).toEqual({ status: 2, out: "" });
		return lines(err);
	};

	test("a shard that is missing", async () => {
		const said = await refusal(...mixed.filter((name) => name !== part(3)));
		expect(said).toEqual(["slackwater: gather: expected all 10 shards, received no shard 3 of 10"]);
	});

	test("a shard that comes twice, and another that is missing", async () => {
		const again = join(folder, "again.json");
		writeFileSync(again, readFileSync(part(2), "utf8"));
		const said = await refusal(...all.filter((name) => name !== part(9)), again);
		expect(said).toHaveLength(2);
		expect(said[0]).toMatch(
			/again\.json: expected each shard once, received shard 2 of 10 again \(.*part-2-of-10\.json has it\)/,
		);
		expect(said[1]).toMatch(/no shard 9 of 10/);
	});

	test("a foreign shard, of another seed or another number of shards", async () => {
		const strange = join(folder, "strange");
		await here("supply", file, "--seed", "other", "--shard", "3/10", "--out", strange, "--quiet");
		const said = await refusal(...all.filter((name) => name !== part(3)), join(strange, "part-3-of-10.json"));
		expect(said[0]).toMatch(
			/strange.part-3-of-10\.json: expected a part of the same run as .*part-1-of-10\.json, received shard 3 of 10 of another scenario, seed or number of shards/,
		);
		expect(said[1]).toMatch(/no shard 3 of 10/);
	});

	test("what is no part, what was changed, what is not there", async () => {
		const changed = written(folder, "changed.json", readFileSync(part(1), "utf8").replace("Small ward", "Large ward"));
		const said = await refusal(file, changed, join(folder, "nowhere.json"), ...all.slice(1));
		expect(said.join("\n")).toMatch(/ward\.yaml: expected a part that supply --shard wrote, received no JSON/);
		expect(said.join("\n")).toMatch(/changed\.json: .*received a part that was changed since/);
		expect(said.join("\n")).toMatch(/nowhere\.json: .*it is not there/);
		expect(said.join("\n")).toMatch(/no shard 1 of 10/);
	});

	test("no parts at all", async () => {
		expect(await refusal()).toHaveLength(1);
	});
});

describe("supply", () => {
	test("refuses a shard that there is not, an odd horizon and a day, all at once", async () => {
		const { status, err } = await here(
			"supply",
			"scenarios/thigh-short-dwell.yaml",
			"--shard",
			"11/10",
			"--horizon",
			"36 h",
		);
		expect(status).toBe(2);
		expect(lines(err)).toHaveLength(3);
		expect(err).toMatch(/--shard: expected which part of how many/);
		expect(err).toMatch(/--horizon: expected whole days up to 52 w/);
		expect(err).toMatch(/which the command day simulates/);
	});

	test("lets options stand in for what the file says", async () => {
		const { out } = await here(
			"supply",
			file,
			"--horizon",
			"7 d",
			"--replications",
			"5",
			"--chance",
			"off",
			"--seed",
			"x",
			"--json",
		);
		expect(JSON.parse(out).scenario).toMatchObject({ days: 7, replications: 5, chance: "off", seed: "x" });
	});
});

describe("check", () => {
	test("knows a ward, and prints it with every default filled in", async () => {
		expect((await here("check", file)).out).toMatch(/ward\.yaml: sound/);
		const full = await here("check", "--full", file);
		expect(full).toMatchObject({ status: 0 });
		expect(full.out).toMatch(/cutOff: "?14:00"? # assumed/);
		const again = written(folder, "full.yaml", full.out);
		const one = await here("supply", file, "--replications", "5", "--json");
		const two = await here("supply", again, "--replications", "5", "--json");
		const answer = (text: string) => {
			const { assumptions: _, ...rest } = JSON.parse(text);
			return rest;
		};
		expect(answer(two.out)).toEqual(answer(one.out));
	});
});
