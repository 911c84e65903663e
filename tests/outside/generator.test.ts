import seedrandom from "seedrandom";
import { describe, expect, test } from "vitest";

type Algorithm = (
	seed: string | number,
	options?: { readonly state: unknown },
) => seedrandom.PRNG;

/** The generators by name. The published types know string seeds only; the generators take numbers too. */
const generators: { readonly [name: string]: Algorithm } = {
	default: seedrandom as unknown as Algorithm,
	alea: seedrandom.alea as unknown as Algorithm,
	xor128: seedrandom.xor128 as unknown as Algorithm,
	xorwow: seedrandom.xorwow as unknown as Algorithm,
	xorshift7: seedrandom.xorshift7 as unknown as Algorithm,
	xor4096: seedrandom.xor4096 as unknown as Algorithm,
	tychei: seedrandom.tychei as unknown as Algorithm,
};

describe("seedrandom's own vectors, seed 'hello.'", () => {
	test("default: two numbers, one quick, one of 32 bits", () => {
		// README of seedrandom 3.0.5, davidbau/seedrandom, commit 4460ad3 (read)
		const rng = generators.default("hello.");
		expect([rng(), rng(), rng.quick(), rng.int32()]).toEqual([
			0.9282578795792454, 0.3752569768646784, 0.7316977467853576, 1966374204,
		]);
	});

	test.each([
		// README of seedrandom 3.0.5 (read)
		["alea", 0.4783254903741181, 0.8297006866124559, 1076136327],
		// README of seedrandom 2.4.0 (read)
		["xor4096", 0.9798525865189731, 0.03583478477375346, 1341429986],
		// what version 3.0.5 gives (derived)
		["xor128", 0.698391932528466, 0.6919901616354039, 1766921365],
		["tychei", 0.4676165450364351, 0.7942571119974906, -125536250],
		["xorwow", 0.14254314289428294, 0.5642470374583382, 2012036386],
		["xorshift7", 0.7404357127379626, 0.017942031413647808, 155022480],
	])(
		"%s: one number, one double, one of 32 bits",
		(name, first, double, word) => {
			const rng = generators[name]("hello.");
			expect([rng(), rng.double(), rng.int32()]).toEqual([first, double, word]);
		},
	);
});

describe("seedrandom's own vectors, seed number 1", () => {
	// test/prngtest.js of seedrandom 3.0.5, the same commit (read)
	test.each([
		["xor128", 0.7963797148975774, 0.22171171731315553, 317177041],
		["xorwow", 0.8178000247146859, 0.8407576507888734, 533150816],
		["xorshift7", 0.21241471533241418, 0.9957620368804783, -1678071207],
		["tychei", 0.42331440041340196, 0.9365617581643164, -884984569],
		["default", 0.1776348083296759, 0.2160690303426236, 1397712774],
		["xor4096", 0.1520436450538547, 0.4206166828516871, 1312695376],
		["alea", 0.5260470956849501, 0.47771977609954774, -1625913352],
	])(
		"%s: one double, one quick, one of 32 bits",
		(name, double, quick, word) => {
			const rng = generators[name](1);
			expect([rng.double(), rng.quick(), rng.int32()]).toEqual([
				double,
				quick,
				word,
			]);
		},
	);
});

describe("seedrandom's state and seeds", () => {
	// README of seedrandom 3.0.5 (read)
	test.each(Object.keys(generators))(
		"%s goes on from a saved state as it would have",
		(name) => {
			const rng = generators[name]("tide", {
				state: true,
			}) as seedrandom.StatefulPRNG<unknown>; // with state: true there is a state()
			for (let i = 0; i < 100; i++) rng();
			const replica = generators[name]("", { state: rng.state() });
			for (let i = 0; i < 100; i++) expect(replica()).toBe(rng());
		},
	);

	test("the default generator cycles its key: 'ab' and 'abab' are one seed", () => {
		const [short, long] = [
			generators.default("ab"),
			generators.default("abab"),
		];
		for (let i = 0; i < 10; i++) expect(long()).toBe(short());
	});
});
