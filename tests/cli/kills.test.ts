import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { filesOf, scenario, shellStatus, spawned, temporary } from "./program.ts";

/** Killed at random moments of their run; LONG=1 for a hundred of each, as a benchmark. */
const kills = process.env.LONG === undefined ? 10 : 100;
/** Long enough for every one of them on a crowded machine, ms. */
const enoughMs = kills * 180_000;
const folder = temporary();

const runs = {
	day: ["day", scenario("thigh-short-dwell"), "--replications", "300"],
	sweep: [
		"sweep",
		scenario("thigh-short-dwell"),
		"--dwell",
		"2 min to 12 min by 1 min",
		"--suction",
		"1 h, 3 h",
		"--replications",
		"50",
	],
	supply: ["supply", scenario("ward/hospital"), "--replications", "2"],
};

describe("a run that is killed at any moment", () => {
	test.each(Object.entries(runs))(
		"%s: leaves no half file, and the same command gives the bytes of an uninterrupted run",
		async (name, run) => {
			const words = [...run, "--quiet", "--workers", "2", "--out"];
			const whole = join(folder, `${name}-whole`);
			const began = performance.now();
			await spawned([...words, whole]);
			const tookMs = performance.now() - began;
			const reference = filesOf(whole);
			const chance = new Substream("kills", name, 0);
			const cut = join(folder, `${name}-cut`);
			// Each goes on where the one before was killed.
			for (let kill = 0; kill < kills; kill++) {
				const atMs = tookMs * chance.uniform();
				let timer: NodeJS.Timeout | undefined;
				const ran = await spawned([...words, cut], {
					meanwhile: (child) => {
						timer = setTimeout(() => child.kill("SIGKILL"), atMs);
					},
				});
				clearTimeout(timer);
				expect([0, 137]).toContain(shellStatus(ran));
				// Nothing under a name of its own but what is whole.
				const seen = existsSync(cut) ? readdirSync(cut).filter((file) => !file.startsWith(".")) : [];
				for (const file of seen) expect(filesOf(cut)[file] === reference[file], file).toBe(true);
				if (ran.status === 0) rmSync(cut, { recursive: true });
			}
			const last = await spawned([...words, cut]);
			expect(last).toMatchObject({ status: 0, err: "" });
			const files = filesOf(cut);
			for (const [file, text] of Object.entries(reference)) expect(files[file] === text, file).toBe(true);
		},
		enoughMs,
	);
});
