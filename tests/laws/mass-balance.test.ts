import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Trace } from "../../src/engine/index.ts";
import type { Scenario } from "../../src/scenario/index.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { type DressingProcess, TherapyDay } from "../../src/therapy/index.ts";
import { randomDay } from "../second/random-day.ts";

/** Looks at every dressing at every event, before it acts: what the last event left behind. */
class Audit extends Trace {
	processes: readonly DressingProcess[] = [];
	#last = 0;

	override note(time: number, nameHashed: number, name: string): void {
		super.note(time, nameHashed, name);
		if (time < this.#last) throw new Error(`${name} at ${time} comes after ${this.#last}`);
		this.#last = time;
		for (const process of this.processes) audit(process, time, name);
	}
}

function audit(process: DressingProcess, time: number, name: string): void {
	const { liquid, air } = process;
	const kept = liquid.toCanister + liquid.level + liquid.wept + liquid.discarded;
	const came = liquid.instilled + liquid.exudate;
	if (!(Math.abs(came - kept) <= 1e-6)) throw new Error(`${name} at ${time}: ${came} mL came, ${kept} mL are kept`);
	const volumes = [
		liquid.level,
		liquid.canister,
		liquid.source,
		liquid.toCanister,
		liquid.wept,
		liquid.discarded,
		process.levelAt(time),
		process.canisterAt(time),
		process.sourceAt(time),
	];
	if (!volumes.every((volume) => volume >= -1e-9))
		throw new Error(`${name} at ${time}: a negative volume in ${volumes}`);
	const depth = process.depthAt(time);
	if (!(depth >= 0 && depth <= air.setDepth + 1e-9))
		throw new Error(`${name} at ${time}: depth ${depth} of ${air.setDepth}`);
	if (!(liquid.share >= -1e-9 && liquid.share <= 1 + 1e-9))
		throw new Error(`${name} at ${time}: share ${liquid.share}`);
	const spec = process.canisterAt(time);
	if (!(spec <= process.canister.size + 1e-6)) throw new Error(`${name} at ${time}: ${spec} mL in the canister`);
}

const chancy: fc.Arbitrary<Scenario> = fc
	.tuple(
		randomDay,
		fc.string({ minLength: 1, maxLength: 6 }),
		fc.constantFrom(true, true, true, false),
		fc.constantFrom(60, 720, 1440, 2880),
	)
	.map(([day, seed, chance, horizonMin]) => ({
		...day,
		seed,
		chance,
		horizonMin,
		care: { ...day.care, turningMin: 240 },
	}));

describe("laws of every day", () => {
	test("mass balances to 1e-6 mL, nothing is negative, depth stays within 0 and the set depth, events are in order and the horizon is reached, at every event of 10,000 random days", () => {
		fc.assert(
			fc.property(chancy, (scenario) => {
				const day = new TherapyDay(scenario, unobserved);
				const trace = new Audit();
				trace.processes = day.processes;
				day.run(0, unobserved, trace);
				for (const process of day.processes) audit(process, scenario.horizonMin, "the end");
				expect(day.now).toBe(scenario.horizonMin);
			}),
			{ numRuns: 10_000, seed: 7, endOnFailure: true },
		);
	});
	test("the audit notices a day that loses a hair of liquid", () => {
		const [scenario] = fc.sample(chancy, { numRuns: 1, seed: 1 });
		const day = new TherapyDay(scenario, unobserved);
		day.run(0, unobserved);
		const [process] = day.processes;
		process.liquid.wept += 2e-6;
		expect(() => audit(process, scenario.horizonMin, "the end")).toThrow(/are kept/);
	});
});
