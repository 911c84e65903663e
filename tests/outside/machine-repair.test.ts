import { expect, test } from "vitest";
import { exponential, Resource, Simulation, Substream } from "../../src/engine/index.ts";
import { oneRepairer, type Shop, shopAnswers, twoRepairers } from "../oracles/machine-repair.ts";
import { expectMean } from "./batches.ts";

/** The same shop on the engine: shares of time, and what machines meet that break down, in each of 40 spans. */
function simulate(shop: Shop, name: string, span: number) {
	const sim = new Simulation();
	const crew = new Resource(shop.servers, sim);
	const lives = new Substream("repair", name, 0);
	const repairs = new Substream("repair", name, 1);
	let [since, timeAllBusy, failures, waits, waited] = [0, 0, 0, 0, 0];
	const account = () => {
		if (crew.busy === shop.servers) timeAllBusy += sim.now - since;
		since = sim.now;
	};
	for (let machine = 0; machine < shop.machines; machine++) {
		let brokeAt = 0;
		const job = {
			priority: 0,
			start: () => {
				waited += sim.now - brokeAt;
				sim.schedule(repaired, sim.now + exponential(repairs) / shop.repairRate);
			},
		};
		const breaks = sim.event("breakdown", 1, () => {
			account();
			brokeAt = sim.now;
			failures++;
			if (crew.busy === shop.servers) waits++;
			crew.request(job);
		});
		const repaired = sim.event("repaired", 2, () => {
			account();
			crew.release(job);
			sim.schedule(breaks, sim.now + exponential(lives) / shop.failureRate);
		});
		sim.schedule(breaks, exponential(lives) / shop.failureRate);
	}
	const spans = [];
	let queue = 0;
	for (let k = 1; k <= 40; k++) {
		[timeAllBusy, failures, waits, waited] = [0, 0, 0, 0];
		sim.run(k * span);
		account();
		const queueNow = crew.meanWaiting() * sim.now;
		spans.push({
			allBusy: timeAllBusy / span,
			mustWait: waits / failures,
			wait: waited / failures,
			waiting: (queueNow - queue) / span,
		});
		queue = queueNow;
	}
	return spans;
}

test.each([
	["one repairer", oneRepairer],
	["two repairers", twoRepairers],
])("simulated on the engine with %s, by time and by breakdown", (name, shop) => {
	const exact = shopAnswers(shop);
	const spans = simulate(shop, name, 20_000);
	for (const what of ["allBusy", "mustWait", "wait", "waiting"] as const)
		expectMean(
			spans.map((span) => span[what]),
			exact[what],
		);
	// The two ways of counting differ by far more than the simulation errs.
	expect(exact.allBusy).toBeGreaterThan(1.1 * exact.mustWait);
});
