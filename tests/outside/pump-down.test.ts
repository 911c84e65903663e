import { describe, expect, test } from "vitest";
import {
	constantFacts,
	convert,
	depthAfter,
	equilibriumDepth,
	leakFlow,
	pumpFlow,
	timeConstant,
	timeToDepth,
} from "../../src/physics/index.ts";

const ambient = constantFacts["air.ambient"].value;

/** Minutes that a pump of constant suction flow takes from ambient pressure to the `ratio`-th part of it. */
function evacuation(volume: number, flow: number, ratio: number): number {
	return timeToDepth(
		0,
		ambient * (1 - 1 / ratio),
		equilibriumDepth(flow, ambient, 0),
		timeConstant(volume, ambient, flow, ambient, 0),
	);
}

// vacuum-guide.com, evacuation time and vacuum pump sizing (read): S = (V/t)·ln(p0/p1), 1000 m³ in 10 min by a ratio of 5,
// "160 m³/min". (The page names 1013 mbar and computes with 1000: the ratio is what counts.)
describe("pump-down of vacuum practice, in the air law with C = 0 and pmax = Patm", () => {
	test("a thousand cubic metres to a fifth in ten minutes takes 160 m³ a minute", () => {
		// At a flow of 1 the time is V·ln(p0/p1); as much flow as makes it 10 is asked for.
		expect(Math.abs(evacuation(1000, 1, 5) / 10 - 160)).toBeLessThan(1);
		expect(evacuation(1000, 1, 5) / 10).toBeCloseTo(160.944, 3);
	});

	test("and at 160.944 m³ a minute it takes ten minutes", () => {
		// the same formula turned round (derived)
		expect(Math.abs(evacuation(1000, 160.944, 5) - 10)).toBeLessThan(1e-4);
	});

	test.each([1.1, 2, 10, 100])("t = (V/S)·ln(P0/P1) at a ratio of %d", (ratio) => {
		expect(evacuation(0.3, 8, ratio)).toBeCloseTo((0.3 / 8) * Math.log(ratio), 12);
	});
});

describe("steady pressure with a leak", () => {
	test("what the pump moves is what leaks in: Q = S·p", () => {
		// semiconductor-tools.pages.dev, throughput converter (read); Q = S·P is eq. 40 of Hoffman, Singh, Thomas,
		// Handbook of Vacuum Science and Technology, ch. 1.4 (read)
		for (const leak of [0.0002, 0.004, 0.05]) {
			const depth = equilibriumDepth(8, ambient, leak);
			// S·P of the pump, in free air, at the pressure P = Patm − p that is left
			expect((8 * (ambient - depth)) / ambient).toBeCloseTo(leakFlow(leak, depth), 10);
			expect(pumpFlow(8, ambient, depth)).toBeCloseTo(leakFlow(leak, depth), 10);
		}
	});

	test("a 50 L chamber that gives off 1e-8 mbar·L/s ends at 2e-10 mbar under 50 L/s", () => {
		// venables.asu.edu/grad/sect22.html (read); that S is 50 L/s follows from its numbers (derived)
		const atmosphere = convert(ambient, "mmHg", "mbar");
		const freeAir = (60 * 1e-8) / atmosphere;
		const depth = equilibriumDepth(60 * 50, ambient, freeAir / ambient);
		const left = convert(ambient - depth, "mmHg", "mbar");
		expect(Math.abs(left / 2e-10 - 1)).toBeLessThan(0.01);
	});
});

test("rate of rise: 1 cm³ of air a minute lifts V·Δp/Δt by 0.0168875 mbar·L/s", () => {
	// semiconductor-tools.pages.dev, throughput converter (read): q = V·Δp/Δt, 1 sccm = 0.0168875 mbar·L/s
	const [depth, air, minutes] = [125, 0.25, 1e-5];
	const leak = convert(1, "mL/min", "L/min") / depth;
	const tau = timeConstant(air, ambient, 0, 250, leak);
	const rise = depth - depthAfter(minutes, depth, 0, tau);
	const throughput = (air * convert(rise, "Torr", "mbar")) / (60 * minutes);
	expect(Math.abs(throughput / 0.0168875 - 1)).toBeLessThan(1e-5);
});
