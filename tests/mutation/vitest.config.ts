import { matchesGlob } from "node:path";

import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/**
 * The fast tests that mutants of a folder of `src` have to get past, the quickest first; those of
 * statistics and of the studies' own (`numbers`) and of what is made of a ward (`supply`), in `therapy` those of the parts that have tests of their
 * own (`parts`) have a name besides. What only repeats a frozen output is not among them: it notices right changes as well.
 */
const tests = {
	elementary: ["elementary/*"],
	engine: ["engine/*", "outside/machine-repair"],
	physics: ["physics/*", "outside/{laminar-flow,leaks,pump-down,units}"],
	numbers: [
		"statistics/!(coverage)",
		"studies/**/!(precision|study|sweep|day-papers)",
		"outside/{certified-data,median-interval,proportion,quantiles,reference-data,sleep-data}",
		"studies/day/precision",
	],
	studies: ["studies/**/{precision,study,sweep,day-papers}"],
	supply: ["outside/stores", "ward/{closed-form,refusals,service,shelf,stores}"],
	parts: ["therapy/**/!(hazard-example)", "ward/shelf"],
	therapy: [
		"therapy/**/*",
		"outside/{beds,clinical,demo,practice}",
		"ward/{closed-form,conservation}",
		"laws/{closed-forms,common-numbers,mass-balance}",
	],
};

const mutated = process.env.MUTATED;
if (mutated !== undefined && !Object.hasOwn(tests, mutated))
	throw new RangeError(`MUTATED is one of ${Object.keys(tests).join(", ")}, received ${mutated}`);

/** `MUTATED` names one of them, whose tests alone are run. */
const include = Object.entries(tests)
	.filter(([name]) => name === (mutated ?? name))
	.flatMap(([, names]) => names.map((name) => `tests/${name}.test.ts`));

/** In the order of the table: most mutants fall at the first tests, and a slow one need not be run. */
class AsListed extends BaseSequencer {
	override async sort(files: TestSpecification[]) {
		const place = ({ moduleId }: TestSpecification) =>
			include.findIndex((pattern) => matchesGlob(moduleId, `**/${pattern}`));
		return files.toSorted((a, b) => place(a) - place(b));
	}
}

export default defineConfig({
	test: { include, setupFiles: ["tests/mutation/setup.ts"], sequence: { sequencer: AsListed }, testTimeout: 60_000 },
});
