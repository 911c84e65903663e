import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { fingerprintOf, keptText } from "../../src/cli/files/kept-file.ts";
import { supplyJsonSchema } from "../../src/results/index.ts";
import { here, isSentence, lines, type Ran, spawned, temporary, written } from "../cli/program.ts";
import type { Raw } from "../scenario/sample.ts";
import { smallWard } from "../ward/small-ward.ts";
import { bend, type Change, changeWith, type Edit, edited, editWith, type Place } from "./bend.ts";
import { bounded } from "./bounded.ts";

/** Sets of parts that are tried: `LONG=1` tries fifty times as many. */
const count = process.env.LONG === undefined ? 2000 : 100_000;

const { Ajv2020 } = await import("ajv/dist/2020.js");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(supplyJsonSchema);

const folder = temporary();
/** The texts of a run in one part, and in two. */
const texts: { lone: string; pair: string[] } = { lone: "", pair: [] };
/** What gather prints of either; they are of different lengths. */
const sound = { lone: "", pair: "" };

beforeAll(async () => {
	const file = written(folder, "ward.yaml", smallWard());
	const shard = async (replications: string, name: string) => {
		const ran = await here(...["supply", file, "--replications", replications], ...["--shard", name, "--json"]);
		expect(ran).toMatchObject({ status: 0, err: "" });
		return ran.out;
	};
	texts.lone = await shard("7", "1/1");
	texts.pair = [await shard("12", "1/2"), await shard("12", "2/2")];
	const whole = async (replications: string) =>
		(await here("supply", file, "--replications", replications, "--json")).out;
	sound.lone = await whole("7");
	sound.pair = await whole("12");
});

const value = fc.oneof(
	fc.constantFrom<unknown>(
		...[0, -0, 1, -1, 0.5, 2 ** 31, 2 ** 53, 2 ** 53 - 1, 1e300, -1e300],
		...["", "0", "NaN", "Infinity", "__proto__", "\u202e", "</script>"],
		...[null, true, false, [], {}, [null], [[]], { "": 1 }],
	),
	fc.double(),
	fc.integer({ min: -3, max: 40 }),
	fc.string({ maxLength: 20, unit: "binary" }),
	fc.jsonValue({ maxDepth: 3 }),
);
/** A way down into a tree: a part has few keys above and very many numbers below, and each level is to be reached. */
const way = fc.array(fc.nat(), { minLength: 1, maxLength: 7 });
const turn = fc.record({
	way,
	change: changeWith(value),
	other: way,
	/** A number moves by so much and a text grows, in the place of the change: what is bent so may still be a run. */
	nudge: fc.option(fc.constantFrom(1, -1, 1e-12, -1e-12), { freq: 4 }),
});
const edit = editWith(
	[
		...["{", "}", "[", "]", ",", ":", '"', "\\", "-", "e999", "NaN", "null"],
		...["[".repeat(20_000), "\u0000", "\uFEFF", "\ud800", "__proto__"],
	],
	300_000,
);

/** What is handed to gather. */
const attempt = fc.record({
	of: fc.constantFrom("lone" as const, "pair" as const),
	turns: fc.array(turn, { maxLength: 2 }),
	edits: fc.oneof(
		{ weight: 3, arbitrary: fc.constant<Edit[]>([]) },
		{ weight: 1, arbitrary: fc.array(edit, { maxLength: 2 }) },
	),
	/** Whether the sums that vouch for a part are made anew, so that what is bent is looked at for itself. */
	sealed: fc.oneof({ weight: 4, arbitrary: fc.constant(true) }, { weight: 1, arbitrary: fc.constant(false) }),
	/** Whether scenario and rules of the other part are bent alike. */
	alike: fc.boolean(),
	/** Where the text is cut off. */
	cut: fc.oneof(
		{ weight: 12, arbitrary: fc.constant(null) },
		{ weight: 1, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
	),
	hand: fc.constantFrom(...(["each", "each", "each", "each", "twice", "alone", "turned"] as const)),
});
type Attempt = typeof attempt extends fc.Arbitrary<infer T> ? T : never;

function find(tree: Raw, steps: readonly number[]): Place | undefined {
	let place: Place | undefined;
	let node = tree;
	for (const step of steps) {
		if (typeof node !== "object" || node === null) break;
		const keys = Object.keys(node);
		if (keys.length === 0) break;
		const key = keys[step % keys.length];
		place = [node, key];
		node = node[key];
	}
	return place;
}

interface Turn {
	readonly way: readonly number[];
	readonly change: Change;
	readonly other: readonly number[];
	readonly nudge: number | null;
}

function turned(text: string, turns: readonly Turn[]): Raw {
	const tree: Raw = JSON.parse(text);
	for (const { way: steps, change, other, nudge } of turns) {
		const place = find(tree, steps);
		if (place === undefined) continue;
		const [node, key] = place;
		if (nudge !== null && ["number", "string"].includes(typeof node[key])) node[key] += nudge;
		else bend(place, change, () => find(tree, other));
	}
	return tree;
}

/** A part whose sums are right for whatever it holds. */
function sealed(tree: Raw): string {
	const { checksum: _, ...part } = tree;
	const fingerprint = fingerprintOf(part.scenario, part.version, part.shard?.of);
	return keptText({ ...part, fingerprint });
}

/** The texts that an attempt hands to gather, in their order. */
function handed({ of, turns, edits, cut, hand, ...one }: Attempt): string[] {
	const [first, second] = of === "lone" ? [texts.lone] : texts.pair;
	const tree = turned(first, turns);
	const whole = edited(one.sealed ? sealed(tree) : `${JSON.stringify(tree)}\n`, edits);
	const bent = cut === null ? whole : whole.slice(0, Math.floor(cut * whole.length));
	if (second === undefined) return hand === "twice" ? [bent, bent] : [bent];
	const { scenario, rules, orders, plenty } = tree;
	const other = one.alike && one.sealed ? sealed({ ...JSON.parse(second), scenario, rules, orders, plenty }) : second;
	return { each: [bent, other], turned: [other, bent], twice: [bent, bent, other], alone: [bent] }[hand];
}

const filesOf = (all: readonly string[]) => all.map((text, i) => written(folder, `part-${i}.json`, text));

const seen = { sound: 0, bentAndSound: 0, refused: 0 };

/** Of what a run of gather came to: an answer that is sound, or sentences. */
function look(one: Attempt, ran: Ran): void {
	expect(ran.status, ran.err).toBeOneOf([0, 2]);
	if (ran.status === 2) {
		seen.refused++;
		expect(ran.out).toBe("");
		expect(lines(ran.err).length).toBeGreaterThan(0);
		for (const line of lines(ran.err)) expect(line).toSatisfy(isSentence);
		return;
	}
	expect(ran.err).toBe("");
	validate(JSON.parse(ran.out));
	expect(validate.errors).toBeNull();
	seen.sound++;
	const same = ran.out === sound[one.of];
	// Without new sums nothing but the run itself is let through.
	if (!one.sealed || one.turns.length === 0) expect(same).toBe(true);
	if (!same) seen.bentAndSound++;
}

describe("gather of any parts", () => {
	test("the parts as they are give the run", async () => {
		for (const of of ["lone", "pair"] as const) {
			const all = of === "lone" ? [texts.lone] : texts.pair;
			const ran = await here("gather", ...filesOf(all), "--json");
			expect(ran).toMatchObject({ status: 0, err: "" });
			expect(ran.out === sound[of]).toBe(true);
			// What seals a bent part here seals as the program does.
			expect(all.every((text) => sealed(JSON.parse(text)) === text)).toBe(true);
		}
	});

	test("is a sound answer or a refusal in sentences: status 0 or 2, in bounded time and memory", async () => {
		await fc.assert(
			fc.asyncProperty(attempt, async (one) => {
				const files = filesOf(handed(one));
				look(one, await bounded("gather", ...files, "--json"));
			}),
			{ numRuns: count, seed: 640, endOnFailure: true },
		);
		// Both sides are reached, and parts that were bent and can be all the same.
		expect(seen.sound).toBeGreaterThan(count / 20);
		expect(seen.bentAndSound).toBeGreaterThan(count / 100);
		expect(seen.refused).toBeGreaterThan(count / 3);
	}, 7_200_000);

	test("in a process of its own: the same status and the same words", async () => {
		for (const one of fc.sample(attempt, { numRuns: 24, seed: 65 })) {
			const files = filesOf(handed(one));
			const ran = await spawned(["gather", ...files, "--json"]);
			look(one, ran);
			const inside = await here("gather", ...files, "--json");
			expect({ ...ran, out: ran.out === inside.out }).toEqual({ ...inside, out: true });
		}
	});

	test("a part of another version is named with both versions", async () => {
		const other = sealed({ ...JSON.parse(texts.lone), version: "9.9.9\u202e" });
		const { status, err } = await here("gather", ...filesOf([other]), "--json");
		expect(status).toBe(2);
		expect(err).toMatch(/written by version .*received one of version "9\.9\.9/u);
		expect(err).not.toContain("\u202e");
	});

	test("of very many shards that are missing one line speaks", async () => {
		const part = JSON.parse(texts.lone);
		const other = sealed({ ...part, shard: { number: 50, of: 99_999 } });
		const { status, err } = await here("gather", ...filesOf([other]), "--json");
		expect(status).toBe(2);
		expect(err).toMatch(/no shards 1 to 49 of 99999/u);
		expect(err).toMatch(/no shards 51 to 99999 of 99999/u);
		expect(lines(err).length).toBeLessThan(5);
	});

	test("a folder and an empty file are no parts", async () => {
		const empty = written(folder, "empty.json", "");
		const { status, err } = await here("gather", folder, empty, "--json");
		expect(status).toBe(2);
		expect(err).toMatch(/it is a folder, not a file/u);
		expect(err).toMatch(/empty\.json: .*received no JSON/u);
		expect(readFileSync(join(folder, "empty.json"), "utf8")).toBe("");
	});
});
