import { defineConfig } from "vitest/config";

export default defineConfig({
	test: {
		include: ["tests/**/*.test.ts"],
		// Left to itself one of two cores stands idle.
		maxWorkers: 2,
		// Files keep nothing from each other's way, and loading the program anew for each took longer than most tests.
		isolate: false,
		// What is waited for comes late on a machine that is busy with other things, and that is no fault: these are for what hangs.
		testTimeout: 1_800_000,
		hookTimeout: 1_800_000,
		expect: { poll: { timeout: 300_000 } },
	},
});
