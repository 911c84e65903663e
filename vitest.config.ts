import { defineConfig } from "vitest/config";

export default defineConfig({
	test: {
		include: ["tests/**/*.test.ts"],
		// Left to itself one of two cores stands idle.
		maxWorkers: 2,
		testTimeout: 600_000,
		hookTimeout: 600_000,
	},
});
