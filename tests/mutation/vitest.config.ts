import { defineConfig } from "vitest/config";

/** The fast tests that mutants of `src/elementary`, `src/engine` and `src/physics` have to get past. */
export default defineConfig({
	test: {
		include: [
			"tests/elementary/*.test.ts",
			"tests/engine/*.test.ts",
			"tests/physics/*.test.ts",
			"tests/outside/{single-server,laminar-flow,leaks,pump-down,units,generator}.test.ts",
			"tests/therapy/*.test.ts",
		],
		// A fine integration of ten seconds is no test for a thousand mutants.
		testNamePattern: /^(?!.*fine integration)/,
		testTimeout: 60_000,
	},
});
