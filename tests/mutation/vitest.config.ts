import { defineConfig } from "vitest/config";

/** The fast tests that mutants of a folder of `src`, or of what `analysis` makes of a ward, have to get past. What only repeats a frozen output is not among them: it notices right changes as well. */
const tests = {
	elementary: ["elementary/*"],
	engine: [
		"engine/*",
		"outside/{erlang,machine-repair,several-servers,single-server}",
	],
	physics: ["physics/*", "outside/{laminar-flow,leaks,pump-down,units}"],
	analysis: [
		"analysis/!(coverage)",
		"outside/{certified-data,median-interval,proportion,quantiles,reference-data,sleep-data}",
	],
	supply: ["ward/{closed-form,refusals,service,stores}", "outside/stores"],
	therapy: [
		"therapy/*",
		"laws/*",
		"outside/{beds,clinical,demo,practice,stores}",
		"ward/{closed-form,conservation,stores}",
	],
};

const mutated = process.env.MUTATED;
if (mutated !== undefined && !Object.hasOwn(tests, mutated))
	throw new RangeError(
		`MUTATED is one of ${Object.keys(tests).join(", ")}, received ${mutated}`,
	);

/** `MUTATED` names one of them, whose tests alone are run. */
export default defineConfig({
	test: {
		include: Object.entries(tests)
			.filter(([folder]) => folder === (mutated ?? folder))
			.flatMap(([, names]) => names.map((name) => `tests/${name}.test.ts`)),
		setupFiles: ["tests/mutation/setup.ts"],
		testTimeout: 60_000,
	},
});
