import seedrandom from "seedrandom";
import { expect, test } from "vitest";

// Guards the one generator of a package that every stream of the program draws from. Nothing here looks at the program:
// what it makes of the generator is in tests/engine/stream.test.ts and tests/frozen.

test("tychei, seed number 1: one double, one quick, one of 32 bits", () => {
	// test/prngtest.js of seedrandom 3.0.5, davidbau/seedrandom, commit 4460ad3 (read). The published types know string
	// seeds only; the generator takes numbers too.
	const rng = (seedrandom.tychei as unknown as (seed: number) => seedrandom.PRNG)(1);
	expect([rng.double(), rng.quick(), rng.int32()]).toEqual([0.42331440041340196, 0.9365617581643164, -884984569]);
});
