import { defineConfig } from "vitest/config";

export default defineConfig({
	test: {
		include: ["tests/**/*.test.ts"],
		// Left to itself one of two cores stands idle.
		maxWorkers: 2,
		// Files keep nothing from each other's way, and loading the program anew for each took longer than most tests.
		isolate: false,
		testTimeout: 600_000,
		hookTimeout: 600_000,
	},
});
