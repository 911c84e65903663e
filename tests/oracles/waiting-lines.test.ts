import { describe, expect, test } from "vitest";
import { erlangB, erlangC, generalService, severalServers } from "./erlang.ts";
import { oneRepairer, shopAnswers, twoRepairers } from "./machine-repair.ts";

// Guards the formulas of erlang.ts and machine-repair.ts, which tests elsewhere hold the engine against. Nothing here looks
// at the program. Standing of each value: 'read' in a copy of the source named; 'quoted' read in a copy that quotes the
// primary; 'derived' recomputed from inputs of the source; 'from memory'.

describe("Erlang's loss formula", () => {
	// Published Erlang B table values, to four decimals (quoted)
	test.each([
		[5, 2, 0.0367],
		[14, 10, 0.0568],
		[10, 5, 0.0184],
		[1, 1, 0.5],
	])("%d servers, load %d: %d", (servers, load, printed) => {
		expect(Math.abs(erlangB(servers, load) - printed)).toBeLessThan(5e-5);
	});

	// The same table read backwards: the load that loses the given share (quoted)
	test.each([
		[50, 0.02, 40.26, 0.01],
		[57, 0.01, 44.2, 0.1],
	])("%d servers lose %d at a load of %d", (servers, share, printed, within) => {
		let [low, high] = [0, 2 * servers];
		while (high - low > 1e-9) {
			const middle = (low + high) / 2;
			if (erlangB(servers, middle) < share) low = middle;
			else high = middle;
		}
		expect(Math.abs(low - printed)).toBeLessThan(within);
	});
});

test("Erlang's delay formula: 100 calls in 30 min, 3 min each, 14 agents", () => {
	// README of pyworkforce 0.1.0 (read): P(wait), service level for 20 s, occupancy
	const [servers, rate, handling] = [14, 100 / 30, 3];
	const load = rate * handling;
	const delayed = erlangC(servers, load);
	expect(Math.abs(delayed - 0.1741319335950498)).toBeLessThan(1e-12);
	const within = 1 - delayed * Math.exp((-(servers - load) * (20 / 60)) / handling);
	expect(Math.abs(within - 0.8883500191794669)).toBeLessThan(1e-12);
	expect(load / servers).toBeCloseTo(0.7142857, 7);
});

describe("M/M/1", () => {
	// Bronson 1982, examples 23.3 and 23.14, by web.ist.utl.pt/mcasquilho/compute/or/Fx-queuevars.php (read)
	test("24 an hour, 30 served an hour: L 4, W a sixth of an hour, empty a fifth of the time", () => {
		const line = severalServers(1, 24, 30);
		expect(line.all).toBeCloseTo(4, 9);
		expect(line.inSystem).toBeCloseTo(1 / 6, 9);
		expect(line.empty).toBeCloseTo(0.2, 9);
	});

	test("30 an hour, 1.5 min each: Lq 2.25, Wq 4.5 min, empty a quarter of the time", () => {
		const line = severalServers(1, 30, 40);
		expect(line.waiting).toBeCloseTo(2.25, 9);
		expect(60 * line.wait).toBeCloseTo(4.5, 9);
		expect(line.empty).toBeCloseTo(0.25, 9);
	});

	test("2 an hour, 3 served an hour: Wq 2/3 h", () => {
		// Render and Stair, Quantitative Analysis for Management, the muffler shop of the chapter on waiting lines (from memory)
		expect(severalServers(1, 2, 3).wait).toBeCloseTo(2 / 3, 9);
	});
});

describe("M/M/3", () => {
	// Bronson 1982, example 24.6, by web.ist.utl.pt/mcasquilho/compute/or/Fx-queuevars.php (read); years
	const years = severalServers(3, 300, 182.5);
	test.each([
		["waiting", 0.352, 5e-4],
		["all", 1.996, 5e-4],
		["wait", 0.001175, 1e-6],
		["inSystem", 0.006654, 1e-6],
		["empty", 0.17754, 1e-5],
	] as const)("300 a year, 182.5 served a year by each: %s is %d", (name, printed, within) => {
		expect(Math.abs(years[name] - printed)).toBeLessThan(within);
	});

	test("0.001175 of a year is 0.43 days", () => {
		// The same example (read)
		expect(365 * years.wait).toBeCloseTo(0.43, 2);
	});

	// Trueman 1977, table 12.2 p. 512, quoted by a calculator solutions handbook, p. 145 (read); minutes. C derived
	const minutes = severalServers(3, 1.2, 0.5);
	test.each([
		["wait", 2.16, 5e-3],
		["inSystem", 4.16, 5e-3],
		["waiting", 2.59, 5e-3],
		["all", 4.99, 5e-3],
		["delayed", 0.647191, 1e-6],
	] as const)("1.2 a minute, 0.5 served a minute by each: %s is %d", (name, printed, within) => {
		expect(Math.abs(minutes[name] - printed)).toBeLessThan(within);
	});
});

describe("M/G/1", () => {
	test("Pollaczek and Khinchine: L = ρ + (ρ² + λ²·Var S)/(2(1 − ρ)), M/M/1 among them", () => {
		// theinfolist.com, Pollaczek–Khinchine formula (read, text)
		expect(generalService(2, 1 / 3, 1 / 9).all).toBeCloseTo(2, 12);
	});

	test("the square of ρ counts: λ 2, μ 3, variance 1 gives 7.3333", () => {
		// by the formula (derived)
		expect(generalService(2, 1 / 3, 1).all).toBeCloseTo(22 / 3, 12);
	});

	test("0.35 a minute, service of mean 2 and sd 1.2 min: Lq 1.1107, Wq 3.1733 min", () => {
		// Anderson et al., Management Science, section on M/G/1 (from memory, recomputed)
		const line = generalService(0.35, 2, 1.2 ** 2);
		expect(Math.abs(line.waiting - 1.1107)).toBeLessThan(1e-4);
		expect(Math.abs(line.wait - 3.1733)).toBeLessThan(1e-4);
	});

	test("8 an hour, 12 served an hour at constant length: Wq 5 min, Lq 2/3", () => {
		// Render and Stair, Quantitative Analysis for Management, the recycling yard of the chapter on waiting lines (from memory)
		const line = generalService(8, 1 / 12, 0);
		expect(60 * line.wait).toBeCloseTo(5, 9);
		expect(line.waiting).toBeCloseTo(2 / 3, 9);
	});
});

// An Introduction to Management Science, pp. 477–478, digilib.universitaspertamina.ac.id (read): six machines, a breakdown
// every 20 h each, a repair in 2 h. Its chances of waiting are shares of time; what a machine meets that breaks down is
// less, 0.4360 and 0.0721 (derived).
describe("six machines", () => {
	const [one, two] = [shopAnswers(oneRepairer), shopAnswers(twoRepairers)];
	test.each([
		["noneDown", 0.4845, 5e-4],
		["waiting", 0.3297, 5e-4],
		["down", 0.8451, 5e-4],
		["wait", 1.279, 5e-4],
		["downTime", 3.279, 5e-4],
		["allBusy", 0.5155, 5e-5],
		["mustWait", 0.436, 5e-5],
	] as const)("and one repairer: %s is %d", (name, printed, within) => {
		expect(Math.abs(one[name] - printed)).toBeLessThan(within);
	});

	test.each([
		["wait", 0.0834, 5e-5],
		["allBusy", 0.1036, 5e-5],
		["mustWait", 0.0721, 5e-5],
	] as const)("and two repairers: %s is %d", (name, printed, within) => {
		expect(Math.abs(two[name] - printed)).toBeLessThan(within);
	});
});

describe("finite queueing tables, population 5, one server", () => {
	// Peck and Hazelwood, Finite Queuing Tables, 1958, is where text-books have such tables from (citeman.com, finite waiting
	// line models, read). The book itself was not read: the digits are those of lecture slides that name no source, and all
	// of them come out of the formula. X = T/(T + U), F = 1 − Lq/N, D the chance that an arrival must wait
	test.each([
		[0.05, 0.989, 0.198],
		[0.06, 0.983, 0.237],
		[0.07, 0.977, 0.275],
		[0.08, 0.969, 0.313],
		[0.09, 0.96, 0.35],
		[0.1, 0.95, 0.386],
	])("X = %d: F %d, D %d", (x, efficiency, delay) => {
		const exact = shopAnswers({ machines: 5, failureRate: x / (1 - x), repairRate: 1, servers: 1 });
		expect(Math.abs(1 - exact.waiting / 5 - efficiency)).toBeLessThan(5.01e-4);
		expect(Math.abs(exact.mustWait - delay)).toBeLessThan(5.01e-4);
	});
});
