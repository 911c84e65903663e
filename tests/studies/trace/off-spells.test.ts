import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mostWithin, type Spell } from "../../../src/studies/trace/off-spells.ts";

/** Spells in order and apart, by gaps and lengths in whole minutes. */
const spells = fc
	.array(fc.record({ gap: fc.integer({ min: 1, max: 400 }), length: fc.integer({ min: 1, max: 200 }) }), {
		maxLength: 12,
	})
	.map((parts) => {
		let at = 0;
		return parts.map(({ gap, length }): Spell => {
			const start = at + gap;
			at = start + length;
			return { start, end: at };
		});
	});

/** Every window that begins at a whole minute, minute by minute. */
function searched(spells: readonly Spell[], windowMin: number): number {
	const last = spells.at(-1)?.end ?? 0;
	const off = new Uint8Array(last + 1);
	for (const { start, end } of spells) off.fill(1, start, end);
	let [sum, most] = [0, 0];
	for (let minute = 0; minute <= last; minute++) {
		sum += off[minute];
		if (minute >= windowMin) sum -= off[minute - windowMin];
		most = Math.max(most, sum);
	}
	return most;
}

describe("the most time off suction in any window", () => {
	test("is what a search minute by minute finds", () => {
		fc.assert(
			fc.property(spells, fc.integer({ min: 1, max: 1500 }), (spells, window) => {
				expect(mostWithin(spells, window)).toBe(searched(spells, window));
			}),
			{ numRuns: 300, seed: 1440 },
		);
	});

	test("is nought without spells, all of them where they fit, the window where one is longer", () => {
		expect(mostWithin([], 1440)).toBe(0);
		expect(
			mostWithin(
				[
					{ start: 0, end: 10 },
					{ start: 1400, end: 1440 },
				],
				1440,
			),
		).toBe(50);
		expect(mostWithin([{ start: 5, end: 3000 }], 1440)).toBe(1440);
	});

	test("is not the sum over a calendar day: two spells on either side of midnight count together", () => {
		const spells = [
			{ start: 1360, end: 1430 },
			{ start: 1450, end: 1510 },
		];
		expect(mostWithin(spells, 1440)).toBe(130);
		expect(mostWithin(spells, 100)).toBe(80);
	});
});
