import { defineConfig } from "vitest/config";

/** The fast tests that mutants of `src/elementary`, `src/engine` and `src/physics` have to get past; `MUTATED` names one of them. */
export default defineConfig({
	test: {
		include: [
			`tests/${process.env.MUTATED ?? "{elementary,engine,physics}"}/*.test.ts`,
		],
		// A fine integration of ten seconds is no test for a thousand mutants.
		testNamePattern: /^(?!.*fine integration)/,
		testTimeout: 60_000,
	},
});
