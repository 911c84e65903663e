import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import {
	filesOf,
	here,
	root,
	scenarios,
	temporary,
	written,
} from "../cli/program.ts";
import { smallWard } from "../ward/small-ward.ts";

const folder = temporary();
const slurm = join(folder, "slurm");
const script = join(root, "tests", "cluster", "one-node-slurm.sh");

const run = (command: string, words: readonly string[], env = {}) =>
	spawnSync(command, words, {
		encoding: "utf8",
		env: { ...process.env, ...env },
		timeout: 300_000,
	});

const started = run("bash", [script, "start", slurm]);
const isUp = started.status === 0;
if (!isUp)
	console.warn(
		`SKIPPED: the job array on a real Slurm. It does not start here: ${started.stderr.trim()}`,
	);

afterAll(() => {
	run("bash", [script, "stop", slurm]);
});

describe.skipIf(!isUp)("on a real Slurm of one node", () => {
	test("the job array of scenarios/ward makes the shards, and gather makes the bytes of one run of them", async () => {
		const ward = written(folder, "ward.yaml", smallWard());
		const [parts, whole, gathered] = ["parts", "whole", "gathered"].map(
			(name) => join(folder, name),
		);
		mkdirSync(parts, { recursive: true });
		const shards = 4;
		const array = run(
			"sbatch",
			[
				"--wait",
				`--array=1-${shards}`,
				`--output=${join(folder, "shard-%a.log")}`,
				`--chdir=${folder}`,
				join(scenarios, "ward", "slurm-array.sh"),
			],
			{
				SLURM_CONF: join(slurm, "slurm.conf"),
				SLACKWATER: `${process.execPath} ${join(root, "dist", "cli", "main.js")}`,
				SLACKWATER_WARD: ward,
				SLACKWATER_PARTS: parts,
			},
		);
		expect({ status: array.status, said: array.stderr }).toEqual({
			status: 0,
			said: "",
		});
		const names = Object.keys(filesOf(parts));
		expect(names).toHaveLength(shards);
		const put = await here(
			"gather",
			...names.toReversed().map((name) => join(parts, name)),
			"--out",
			gathered,
		);
		expect(put).toMatchObject({ status: 0, err: "" });
		await here("supply", ward, "--out", whole);
		expect(filesOf(gathered)).toEqual(filesOf(whole));
	});
});

test.runIf(!isUp)("where it does not start, it says why", () => {
	expect(started.status).not.toBe(0);
	expect(started.stderr.trim()).not.toBe("");
});
