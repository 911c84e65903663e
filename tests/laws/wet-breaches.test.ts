import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ConstantName, constantsWith } from "../../src/physics/index.ts";
import type { Dressing, Regimen, Scenario } from "../../src/scenario/index.ts";
import { reference, shortDwell, withDressing } from "../therapy/example.ts";
import { between } from "./steady-day.ts";
import { type WetSpells, WetSpellWatch } from "./wet-spells.ts";

// The wet hazard has one threshold E after another, the same for every regimen, and is used up from the start of a fill
// to the end of its drain. So the k-th wet spell of a regimen whose spells are shorter, come no later in the dressing's age
// and pool no liquid under the drape has used up no more of it.

/** Nothing withholds a fill: breaches are counted but let nothing through, lines do not kink, no debris. */
const harmless: { [N in ConstantName]?: number } = {
	"breach.sizeMedian": 1e-12,
	"kink.rate": 1e-12,
	"slough.ordinary": 0,
};

/** What two regimens have in common. */
interface Shared {
	readonly dressing: Partial<Dressing>;
	readonly wetScale: number;
	readonly seed: string;
}

interface Pair extends Shared {
	readonly short: Regimen;
	readonly long: Regimen;
}

/** Two regimens that differ in dwell, and in a suction period that is no longer beside the shorter dwell. */
const pair: fc.Arbitrary<Pair> = fc
	.record({
		begin: fc.constantFrom<Regimen["begin"]>("suction", "fill"),
		depthMmHg: between(75, 175),
		fillMl: between(20, 60),
		dwellMin: between(1, 15),
		suctionMin: between(60, 200),
		longerDwell: fc.oneof(between(0.5, 2), between(2, 20)),
		longerSuction: fc.oneof(fc.constant(0), between(0, 60)),
		wetScale: between(12, 57.7),
		seed: fc.string({ minLength: 1, maxLength: 8 }),
		exudateMlPerDay: between(20, 300),
		foamVolumeMl: between(300, 450),
		ageMin: between(0, 3000),
		difficulty: fc.constantFrom("easy", "ordinary", "awkward"),
	})
	.map(
		({ begin, depthMmHg, fillMl, dwellMin, suctionMin, longerDwell, longerSuction, wetScale, seed, ...dressing }) => {
			const given = { ...shortDwell, begin, depthMmHg, fillMl };
			return {
				short: { ...given, dwellMin, suctionMin },
				long: { ...given, dwellMin: dwellMin + longerDwell, suctionMin: suctionMin + longerSuction },
				dressing: { ...dressing, canisterMl: 12_000, sourceMl: 20_000 },
				wetScale,
				seed,
			};
		},
	);

/** Three days with chance on; moves off: no turning, no transfer. */
function watch(
	{ dressing, wetScale, seed }: Shared,
	regimen: Regimen,
	constants: { [N in ConstantName]?: number },
	rest: Partial<Scenario> = {},
): WetSpellWatch {
	return new WetSpellWatch(
		withDressing(
			{ ...dressing, regimens: [regimen] },
			{
				chance: true,
				seed,
				horizonMin: 4320,
				constants: constantsWith({ "breach.wetScale": wetScale, ...constants }),
				...rest,
			},
		),
	);
}

/**
 * Holds the law for the first k spells, for every k for which its conditions hold; returns for how many k, and in how many
 * of them the shorter has fewer.
 */
function compare(short: WetSpells, long: WetSpells) {
	const firstAlarm = Math.min(short.firstAlarmMin, long.firstAlarmMin);
	const most = Math.min(short.spells.length, long.spells.length);
	let [fewer, breachesShort, breachesLong] = [0, 0, 0];
	for (let k = 0; k < most; k++) {
		const [a, b] = [short.spells[k], long.spells[k]];
		const holds =
			a.endMin - a.startMin <= b.endMin - b.startMin &&
			a.startMin <= b.startMin &&
			!a.pooled &&
			!b.pooled &&
			b.endMin < firstAlarm &&
			a.endMin < firstAlarm;
		if (!holds) return { compared: k, fewer };
		breachesShort += a.breaches;
		breachesLong += b.breaches;
		expect(breachesShort).toBeLessThanOrEqual(breachesLong);
		if (breachesShort < breachesLong) fewer++;
	}
	return { compared: most, fewer };
}

describe("shorter wet spells and wet breaches, chance on, moves off, equal fills below what the foam takes, every spell no longer and no later", () => {
	test("where no fill is withheld, the first k wet spells have no more breaches, for every k, in every replication", () => {
		let [possible, compared, fewer] = [0, 0, 0];
		fc.assert(
			fc.property(pair, (both) => {
				const short = watch(both, both.short, harmless);
				const long = watch(both, both.long, harmless);
				for (let replication = 0; replication < 4; replication++) {
					const spells = long.run(replication);
					const counts = compare(short.run(replication), spells);
					possible += spells.spells.length;
					compared += counts.compared;
					fewer += counts.fewer;
				}
			}),
			{ numRuns: 100, seed: 6, endOnFailure: true },
		);
		// nearly every spell is compared, and often the regimens differ
		expect(compared).toBeGreaterThan(0.9 * possible);
		expect(fewer).toBeGreaterThan(0.3 * compared);
	});

	test("with leaks, kinks and debris as they are, the same holds up to the first alarm of either", () => {
		let [compared, fewer] = [0, 0];
		fc.assert(
			fc.property(pair, (both) => {
				const short = watch(both, both.short, {});
				const long = watch(both, both.long, {});
				for (let replication = 0; replication < 4; replication++) {
					const counts = compare(short.run(replication), long.run(replication));
					compared += counts.compared;
					fewer += counts.fewer;
				}
			}),
			{ numRuns: 100, seed: 6, endOnFailure: true },
		);
		expect(compared).toBeGreaterThan(800);
		expect(fewer).toBeGreaterThan(100);
	});
});

describe("counterexamples: the shorter wet spells have more breaches", () => {
	/** In how many of 100 replications the shorter have more in their first k, for any k. */
	function more(
		short: Partial<Regimen>,
		long: Partial<Regimen>,
		dressing: Partial<Dressing> = {},
		rest: Partial<Scenario> = {},
	): number {
		const both = { dressing: { canisterMl: 12_000, sourceMl: 20_000, ...dressing }, wetScale: 57.7, seed: "tide" };
		const [a, b] = [short, long].map((change) => watch(both, { ...shortDwell, ...change }, harmless, rest));
		let hits = 0;
		for (let replication = 0; replication < 100; replication++) {
			const [shorter, longer] = [a.run(replication), b.run(replication)];
			let ahead = 0;
			const overtakes = shorter.spells.some((spell, k) => {
				if (k >= longer.spells.length) return false;
				ahead += spell.breaches - longer.spells[k].breaches;
				return ahead > 0;
			});
			if (overtakes) hits++;
		}
		return hits;
	}

	test("none while the conditions hold", () => {
		expect(more({ dwellMin: 5 }, { dwellMin: 10 })).toBe(0);
	});

	test("when the patient is turned: a turn may fall in the shorter spell and beside the longer", () => {
		const turned = { care: { ...reference.care, turningMin: 240 } };
		expect(more({ dwellMin: 5 }, { dwellMin: 10 }, {}, turned)).toBeGreaterThan(0);
	});

	test("when they come much later: the dressing is older by then, and its seal weaker", () => {
		const later = { dwellMin: 9.5, suctionMin: 210 };
		expect(more(later, { dwellMin: 10, suctionMin: 60 })).toBeGreaterThan(25);
	});

	test("when their fill pools under the drape", () => {
		const pooling = { fillMl: 60, dwellMin: 9 };
		const foam = { foamVolumeMl: 100 };
		const below = { fillMl: 20, dwellMin: 10 };
		const one = { horizonMin: 1440 };
		expect(more(pooling, below, foam, one)).toBeGreaterThan(80);
	});
});
