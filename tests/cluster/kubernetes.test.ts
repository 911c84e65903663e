import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { filesOf, here, root, scenarios, temporary, written } from "../cli/program.ts";
import { smallWard } from "../ward/small-ward.ts";

const folder = temporary();
const job = parse(readFileSync(join(scenarios, "ward", "kubernetes-job.yaml"), "utf8"));
const [container] = job.spec.template.spec.containers;
const shards = Number(container.env.find(({ name }: { name: string }) => name === "SHARDS").value);

describe("waiting for the Job", () => {
	/** Waits, with a kubectl that answers one line after the other. */
	const waited = (name: string, ...answers: readonly string[]) => {
		const bin = join(folder, name);
		mkdirSync(bin);
		writeFileSync(join(bin, "answers"), answers.join("\n"));
		const kubectl = join(bin, "kubectl");
		writeFileSync(
			kubectl,
			`#!/bin/sh\necho asked >>${bin}/asked\nhead -n 1 ${bin}/answers\nsed -i 1d ${bin}/answers\n`,
		);
		chmodSync(kubectl, 0o755);
		const ran = spawnSync("sh", [join(scenarios, "ward", "kubernetes-wait.sh"), "a-job", "20"], {
			encoding: "utf8",
			timeout: 60_000,
			env: { ...process.env, PATH: `${bin}${delimiter}${process.env.PATH}`, SLACKWATER_WAIT: "0" },
		});
		const asked = readFileSync(join(bin, "asked"), "utf8").trim().split("\n");
		return { status: ran.status, said: ran.stderr, asked: asked.length };
	};

	test("ends well when the Job is complete", () => {
		expect(waited("well", "", "", "SuccessCriteriaMet Complete")).toEqual({ status: 0, said: "", asked: 3 });
	});

	test("ends at once when the Job has failed, and says so", () => {
		expect(waited("failed", "", "FailureTarget Failed")).toEqual({
			status: 1,
			said: "the Job a-job has failed: kubectl describe job a-job\n",
			asked: 2,
		});
	});

	test("is what the manual says", () => {
		const manual = readFileSync(join(scenarios, "ward", "README.md"), "utf8");
		expect(manual).toContain("sh kubernetes-wait.sh slackwater-supply");
		expect(manual).not.toContain("kubectl wait");
	});
});

describe("the Indexed Job", () => {
	test("counts as many completions as shards, and starts a shard again that failed", () => {
		expect(job).toMatchObject({
			apiVersion: "batch/v1",
			kind: "Job",
			spec: { completionMode: "Indexed", completions: shards },
		});
		expect(job.spec.backoffLimit).toBeGreaterThanOrEqual(shards);
		expect(job.spec.template.spec.restartPolicy).toBe("Never");
	});

	test("runs in each pod the shard of its index, which counts from 0", async () => {
		const ward = written(folder, "ward.yaml", smallWard());
		const [bin, parts] = ["bin", "parts"].map((name) => join(folder, name));
		mkdirSync(bin);
		const program = join(bin, "slackwater");
		writeFileSync(program, `#!/bin/sh\nexec "${process.execPath}" "${join(root, "dist", "cli", "main.js")}" "$@"\n`);
		chmodSync(program, 0o755);
		// The container's own command, with its two mounts put here.
		const [text] = container.args;
		const here_ = text.replace("/ward/ward.yaml", ward).replace("/parts", parts);
		for (const index of [0, shards - 1]) {
			const { status, stderr } = spawnSync(container.command[0], [...container.command.slice(1), here_], {
				encoding: "utf8",
				env: {
					...process.env,
					PATH: `${bin}${delimiter}${process.env.PATH}`,
					SHARDS: String(shards),
					JOB_COMPLETION_INDEX: String(index),
				},
			});
			expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
		}
		expect(Object.keys(filesOf(parts)).toSorted()).toEqual([
			`part-1-of-${shards}.json`,
			`part-${shards}-of-${shards}.json`,
		]);
		const { err } = await here("gather", ...Object.keys(filesOf(parts)).map((name) => join(parts, name)), "--json");
		// All the others are missed, and named in one sentence.
		expect(err.trim().split("\n")).toHaveLength(1);
		expect(err).toContain(`2 to ${shards - 1}`);
	});
});
