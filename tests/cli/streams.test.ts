import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { here, scenario, shell, temporary } from "./program.ts";

const cwd = temporary();
const day = `$SLACKWATER day ${scenario("two-dressings")} --json --replications 50`;

test("a reader that closes the pipe early is no fault, and nothing is said about it", async () => {
	const { out, err } = await shell(`${day} | head -1; echo "status \${PIPESTATUS[0]}"`, cwd);
	expect({ out, err }).toEqual({ out: "{\nstatus 0\n", err: "" });
});

test("what a pipe takes slowly arrives whole", async () => {
	const { out } = await shell(`${day} | (sleep 1; cat)`, cwd);
	const { out: direct } = await here("day", scenario("two-dressings"), "--json", "--replications", "50");
	expect(out.length).toBeGreaterThan(65_536); // more than a pipe holds
	expect(out === direct).toBe(true);
});

test.skipIf(!existsSync("/dev/full"))("standard output that takes nothing: one sentence and status 1", async () => {
	const { status, err } = await shell(`${day} > /dev/full`, cwd);
	expect(status).toBe(1);
	expect(err).toBe("slackwater: nothing can be written to standard output: there is no space left on the disk\n");
});

test("standard error that nobody reads does not change the status", async () => {
	const { out } = await shell(`$SLACKWATER day nothing.yaml 2> >(true); echo "status $?"`, cwd);
	expect(out).toBe("status 2\n");
});
