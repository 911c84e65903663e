import { expect, test } from "vitest";
import { exponential, type Job, Resource, Simulation, Substream } from "../../src/engine/index.ts";

interface Customer {
	/** Time from the customer before. */
	readonly gap: number;
	readonly service: number;
	readonly patience: number;
}

type Outcome =
	| { readonly served: true; readonly waited: number; readonly at: number }
	| { readonly served: false; readonly waited: number; readonly at: number };

/** One counter; who has waited for longer than his patience goes away unserved. */
function bank(customers: readonly Customer[]): Outcome[] {
	const sim = new Simulation();
	const counter = new Resource(1, sim);
	const outcomes: Outcome[] = [];
	let arrival = 0;
	customers.forEach(({ gap, service, patience }, index) => {
		arrival += gap;
		const arrived = arrival;
		let waited = 0;
		const job: Job = {
			priority: 0,
			start: () => {
				waited = sim.now - arrived;
				sim.cancel(givesUp);
				sim.schedule(done, sim.now + service);
			},
		};
		const done = sim.event(`done ${index}`, 1, () => {
			outcomes[index] = { served: true, waited, at: sim.now };
			counter.release(job);
		});
		const givesUp = sim.event(`gives up ${index}`, 2, () => {
			outcomes[index] = { served: false, waited: sim.now - arrived, at: sim.now };
			counter.release(job);
		});
		const comes = sim.event(`comes ${index}`, 3, () => {
			sim.schedule(givesUp, sim.now + patience);
			counter.request(job);
		});
		sim.schedule(comes, arrived);
	});
	sim.run(Number.MAX_VALUE);
	return outcomes;
}

test("the bank with impatient customers, traced by hand", () => {
	// A documented example of a bank with one counter, bank_renege.py and its printed bank_renege.out (read): arrivals,
	// ends and the one who gave up as printed; services are their differences (derived), and where nobody gave up, any
	// patience longer than the wait does.
	const arrivals = [0, 10.2006, 12.7265, 34.9993, 40.4798];
	const services = [3.8595, 13.5501, 12, 2.9606, 2.6603];
	const patience = [3, 3, 1.1738, 3, 3];
	const outcomes = bank(
		arrivals.map((at, i) => ({ gap: at - (arrivals[i - 1] ?? 0), service: services[i], patience: patience[i] })),
	);
	const printed = [3.8595, 23.7507, 13.9003, 37.9599, 43.1401];
	expect(outcomes.map((outcome) => outcome.served)).toEqual([true, true, false, true, true]);
	outcomes.forEach((outcome, i) => {
		expect(Math.abs(outcome.at - printed[i])).toBeLessThan(1e-4);
	});
	expect(Math.abs(outcomes[2].waited - 1.174)).toBeLessThan(5e-4);
});

test("the bank in law: nobody waits beyond 3, and who gives up has waited 1 to 3", () => {
	// The law of the same example (read): gaps Exp(10), services Exp(12), patience uniform on 1…3
	const [gaps, services, patiences] = [0, 1, 2].map((purpose) => new Substream("bank", "customers", purpose));
	const outcomes = bank(
		Array.from({ length: 5000 }, () => ({
			gap: 10 * exponential(gaps),
			service: 12 * exponential(services),
			patience: 1 + 2 * patiences.uniform(),
		})),
	);
	const gone = outcomes.filter((outcome) => !outcome.served);
	expect(outcomes.length).toBe(5000);
	expect(gone.length).toBeGreaterThan(1000);
	expect(gone.length).toBeLessThan(4000);
	for (const { waited } of outcomes) expect(waited).toBeLessThan(3 + 1e-9);
	for (const { waited } of gone) expect(waited).toBeGreaterThan(1 - 1e-9);
});
