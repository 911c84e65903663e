import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { filesOf, here, root, scenarios, temporary, written } from "../cli/program.ts";
import { smallWard } from "../ward/small-ward.ts";

const folder = temporary();
const slurm = join(folder, "slurm");
const script = join(root, "tests", "cluster", "one-node-slurm.sh");

const run = (command: string, words: readonly string[], env = {}) =>
	spawnSync(command, words, { encoding: "utf8", env: { ...process.env, ...env }, timeout: 300_000 });

const started = run("bash", [script, "start", slurm]);
const isUp = started.status === 0;
if (!isUp) console.warn(`SKIPPED: the job array on a real Slurm. It does not start here: ${started.stderr.trim()}`);

/** What the manual has Slurm run without a script: the rules, then the gathering. */
const wrapped = [...readFileSync(join(scenarios, "ward", "README.md"), "utf8").matchAll(/--wrap "([^"]*)"/g)].map(
	([, words]) => words,
);

test("the manual's own commands take the program from the variable that names it, and the script the number of shards", () => {
	expect(wrapped).toHaveLength(2);
	for (const words of wrapped) expect(words).toMatch(/^\$SLACKWATER /);
	const text = readFileSync(join(scenarios, "ward", "slurm-array.sh"), "utf8");
	const shard = (count: string) => {
		const ran = run("bash", [join(scenarios, "ward", "slurm-array.sh")], {
			SLACKWATER: "echo",
			SLACKWATER_WARD: "ward.yaml",
			SLACKWATER_PARTS: "parts",
			SLACKWATER_SHARDS: "10",
			SLURM_ARRAY_TASK_ID: "7",
			SLURM_ARRAY_TASK_COUNT: count,
		});
		return ran.stdout;
	};
	expect(text).toContain("SLACKWATER_SHARDS");
	// An array of the one index that failed counts one task.
	expect(shard("1")).toContain("--shard 7/10 ");
	expect(shard("10")).toBe(shard("1"));
});

afterAll(() => {
	run("bash", [script, "stop", slurm]);
});

describe.skipIf(!isUp)("on a real Slurm of one node", () => {
	test("the job array of scenarios/ward makes the shards, makes one of them again, and gather makes the bytes of one run of them", async () => {
		const ward = written(folder, "ward.yaml", smallWard());
		const [parts, whole, gathered] = ["parts", "whole", "gathered"].map((name) => join(folder, name));
		mkdirSync(parts, { recursive: true });
		const shards = 4;
		const env = {
			SLURM_CONF: join(slurm, "slurm.conf"),
			SLACKWATER: `${process.execPath} ${join(root, "dist", "cli", "main.js")}`,
			SLACKWATER_WARD: ward,
			SLACKWATER_PARTS: parts,
			SLACKWATER_SHARDS: String(shards),
			SLACKWATER_RULES: join(parts, "rules.json"),
		};
		const batch = (...words: string[]) => {
			const { status, stderr } = run(
				"sbatch",
				["--wait", `--output=${join(folder, "shard-%a.log")}`, `--chdir=${folder}`, ...words],
				env,
			);
			expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
		};
		const script = join(scenarios, "ward", "slurm-array.sh");
		const wrap = (words: string) =>
			batch(
				"--wrap",
				words.replaceAll(/\$(\w+)/g, (_, name) => env[name as keyof typeof env] ?? ""),
			);
		const [rules, gather] = wrapped;
		wrap(rules ?? "");
		batch(`--array=1-${shards}`, script);
		// One index is run again: it is still the third of four.
		const third = join(parts, `part-3-of-${shards}.json`);
		const before = readFileSync(third, "utf8");
		rmSync(third);
		batch("--array=3", script);
		expect(readFileSync(third, "utf8")).toBe(before);
		// The gathering of the manual, with a program that is not on the path.
		wrap((gather ?? "").replace("$PWD/out/ward", gathered));
		expect(Object.keys(filesOf(parts)).toSorted()).toEqual([
			...[1, 2, 3, 4].map((n) => `part-${n}-of-${shards}.json`),
			"rules.json",
		]);
		await here("supply", ward, "--out", whole);
		expect(filesOf(gathered)).toEqual(filesOf(whole));
	});
});

test.runIf(!isUp)("where it does not start, it says why", () => {
	expect(started.status).not.toBe(0);
	expect(started.stderr.trim()).not.toBe("");
});
