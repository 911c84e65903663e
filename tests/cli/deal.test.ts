import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import { deal } from "../../src/cli/threads/deal.ts";
import { dayTasks, runScenario } from "../../src/cli/threads/run-scenario.ts";
import { dayJson } from "../../src/results/index.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { dayResult, ProjectionGathering } from "../../src/studies/index.ts";
import { least } from "../scenario/sample.ts";
import { root, temporary, written } from "./program.ts";

const scenario = readScenario(`${least}replications: 3010\n`);
const tasks = dayTasks(scenario);
const job = { kind: "day", scenario } as const;
const bytes = (gathering: ProjectionGathering) => dayJson(dayResult(scenario, gathering, "1.2.3"));
const alone = bytes(await runScenario(scenario, { workers: 1, quiet: true }));

async function dealt(threads: number, script: URL): Promise<string> {
	const gathering = new ProjectionGathering(scenario);
	await deal<"day">(job, tasks, threads, (part) => gathering.add(part), script);
	return bytes(gathering);
}

const built = join(root, "dist", "cli", "block-worker.js");
const folder = temporary();
const script = (name: string, text: string) => pathToFileURL(written(folder, name, text));

/** A thread of the program that dies when it is given its `task`-th task, before it has answered. */
const dying = (task: number) =>
	script(
		`dies-at-${task}.mjs`,
		`import { parentPort } from "node:worker_threads";
let tasks = 0;
parentPort.prependListener("message", () => { if (++tasks === ${task}) process.exit(3); });
await import(${JSON.stringify(pathToFileURL(built).href)});
`,
	);

describe("whatever becomes of the threads, the bytes are those of one", () => {
	test("the run has tasks for several threads", () => {
		expect(tasks.length).toBeGreaterThan(3);
	});

	test("threads that live", async () => {
		expect((await dealt(3, pathToFileURL(built))) === alone).toBe(true);
	});

	test.each([1, 2])("threads that die with their task %i in hand", async (task) => {
		expect((await dealt(2, dying(task))) === alone).toBe(true);
	});

	test("a thread that dies with an error of its own", async () => {
		const throwing = script("throws.mjs", `throw new Error("out of memory");`);
		expect((await dealt(2, throwing)) === alone).toBe(true);
	});

	test("a script that is not there", async () => {
		const absent = pathToFileURL(join(folder, "absent.mjs"));
		expect((await dealt(2, absent)) === alone).toBe(true);
	});
});

test("a fault of the work itself, which every thread would meet again, is told and not passed over", async () => {
	const refuse = () => {
		throw new RangeError("block 0 came twice");
	};
	await expect(deal<"day">(job, tasks, 2, refuse, pathToFileURL(built))).rejects.toThrow("block 0 came twice");
});
