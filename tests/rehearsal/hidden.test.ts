import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { causeOf } from "../../src/rehearsal/causes/causes.ts";
import { Rehearsal } from "../../src/rehearsal/index.ts";
import { drawCase } from "../../src/rehearsal/shift/draw-case.ts";
import type { HiddenCause } from "../../src/scenario/index.ts";
import { acts, type CauseName, type Place, places } from "../../src/vocabulary/index.ts";
import { hiding, often, small } from "./cases.ts";

const never = Number.POSITIVE_INFINITY;
const at = (atMin: number) => ({ atMin, withinMin: 0 });
const kinked = (atMin: number): HiddenCause => ({ cause: "suction-line-kinked", ...at(atMin), lastsMin: never });
const clogged = (atMin: number): HiddenCause => ({ cause: "port-clogged", ...at(atMin), share: 1 });

/** Everything a caller can read of a rehearsal without touching it. */
const readable = (rehearsal: Rehearsal) =>
	JSON.stringify([
		rehearsal.view(),
		rehearsal.soFar(),
		rehearsal.title,
		rehearsal.brief,
		rehearsal.over,
		Object.entries(rehearsal),
	]);

/** The words in which each cause is found: nothing may say them before the right look. */
const telling: { readonly [C in CauseName]: RegExp } = {
	"fill-line-kinked": /bed rail|: a kink/,
	"suction-line-kinked": /bent flat|: a kink/,
	"port-clogged": /Debris|clogged/,
	"canister-full": /and is at capacity\./,
	"source-empty": /hangs empty/,
	"seal-breach": /hiss|leaks there/,
	"dressing-dislodged": /corner/,
	"left-off": /switched off/,
	bleeding: /blood/,
};

describe("a kinked suction line and a port that is closed look the same", () => {
	const pair = () => [kinked, clogged].map((cause) => new Rehearsal(hiding([cause(200)]), "twin", small));

	test("minute by minute, until somebody looks at line or port", () => {
		const [line, port] = pair();
		for (let minute = 0; minute < 470; minute++) {
			expect(readable(line)).toBe(readable(port));
			expect(line.wait(1)).toEqual(port.wait(1));
		}
	});

	test("to one who looks everywhere else, and who lets time run to the next thing that happens", () => {
		const [line, port] = pair();
		for (let round = 0; round < 6; round++) {
			for (const place of places)
				if (place !== "suction-line" && place !== "port") expect(line.look(place)).toEqual(port.look(place));
			expect(line.next()).toEqual(port.next());
		}
	});

	test("and are told apart by a look at either", () => {
		for (const place of ["suction-line", "port"] as const) {
			const [line, port] = pair();
			line.wait(205);
			port.wait(205);
			expect(line.look(place).words).not.toBe(port.look(place).words);
		}
	});
});

describe("what is there and what is not look the same as long as nothing can be seen of it", () => {
	const sound = () => new Rehearsal(hiding([]), "twin", small);

	test.each<[string, HiddenCause, number, readonly Place[]]>([
		[
			"a kinked fill line, until the next fill",
			{ cause: "fill-line-kinked", ...at(10), lastsMin: never },
			119,
			["fill-line"],
		],
		[
			"a small leak that the pump outruns, until the next fill",
			{ cause: "seal-breach", ...at(30), size: 0.01 },
			119,
			["edge"],
		],
		[
			"a port half clogged in suction, until the next drain",
			{ cause: "port-clogged", ...at(20), share: 0.6 },
			119,
			["port"],
		],
		[
			"a kink that frees itself before the next fill",
			{ cause: "fill-line-kinked", ...at(20), lastsMin: 30 },
			479,
			["fill-line"],
		],
	])("%s", (_, cause, untilMin, right) => {
		const [a, b] = [new Rehearsal(hiding([cause]), "twin", small), sound()];
		while (a.view().atMin < untilMin - 12) {
			expect(readable(a)).toBe(readable(b));
			for (const place of places) if (!right.includes(place)) expect(a.look(place)).toEqual(b.look(place));
			expect(a.wait(1)).toEqual(b.wait(1));
		}
	});

	test("`next` does not stop where something hidden comes", () => {
		const a = new Rehearsal(hiding([{ cause: "seal-breach", ...at(30), size: 0.01 }]), "twin", small);
		expect(a.next()).toEqual(sound().next());
		expect(a.view().atMin).toBe(120);
	});
});

test("in random rehearsals of drawn cases no cause is named before a look in the right place", () => {
	const step = fc.oneof(
		fc.constantFrom(...places).map((place) => ({ place })),
		fc.constantFrom(...acts).map((act) => ({ act })),
		fc.integer({ min: 0, max: 90 }).map((minutes) => ({ minutes })),
	);
	let named = 0;
	fc.assert(
		fc.property(fc.string({ minLength: 1, maxLength: 8 }), fc.array(step, { maxLength: 25 }), (seed, steps) => {
			const of = drawCase(hiding([], { transferMin: 100 }), seed);
			const rehearsal = new Rehearsal(of, seed, small);
			const looked = new Set<Place>();
			let tookOff = false;
			for (const one of steps) {
				const answer =
					"place" in one
						? rehearsal.look(one.place)
						: "act" in one
							? rehearsal.act(one.act)
							: rehearsal.wait(one.minutes);
				if ("place" in one) looked.add(one.place);
				// Who takes the dressing off sees the wound; of what else was wrong it still tells nothing.
				tookOff ||= "act" in one && one.act === "new-dressing";
				const said = JSON.stringify(answer) + readable(rehearsal);
				for (const { cause } of of.rehearsal.hides) {
					// A leak at a loose corner is heard at the edge like any other.
					if (causeOf(cause).sights.some(({ place }) => looked.has(place)) || (cause === "bleeding" && tookOff)) {
						named++;
						continue;
					}
					expect(said).not.toMatch(telling[cause]);
					// An alarm may be called as its cause is, and says so.
					if (cause !== "source-empty") expect(said).not.toContain(cause);
					expect(said).not.toContain(causeOf(cause).words);
				}
			}
		}),
		{ numRuns: often(1000, 10_000), seed: 4 },
	);
	expect(named).toBeGreaterThan(500); // places are looked at, too
});

test("the words that tell a cause are those a look finds it in", () => {
	const causes: readonly HiddenCause[] = [
		{ cause: "fill-line-kinked", ...at(10), lastsMin: never },
		kinked(10),
		clogged(10),
		{ cause: "canister-full", holdsMl: 900 },
		{ cause: "source-empty", holdsMl: 0 },
		{ cause: "seal-breach", ...at(10), size: 0.03 },
		{ cause: "dressing-dislodged", size: 0.03 },
		{ cause: "left-off", ...at(10), lastsMin: never },
		{ cause: "bleeding", ...at(10), volumeMl: 300, lastsMin: 60 },
	];
	for (const cause of causes)
		for (const { place } of causeOf(cause.cause).sights) {
			const rehearsal = new Rehearsal(hiding([cause], { transferMin: 10 }), "found", small);
			const slow = ["canister-full", "source-empty"].includes(cause.cause);
			if (slow) while (rehearsal.view().alarms.length === 0) rehearsal.next();
			else rehearsal.wait(30);
			const { words } = rehearsal.look(place);
			expect(words, `${cause.cause} at ${place}`).toMatch(
				place === "edge" ? telling["seal-breach"] : telling[cause.cause],
			);
		}
});

test("a rehearsal holds its secret in no field that can be listed", () => {
	const rehearsal = new Rehearsal(hiding([kinked(10)]), "fields", small);
	expect(Object.keys(rehearsal)).toEqual(["title", "brief", "pace"]);
	expect(JSON.stringify(rehearsal)).not.toContain("kink");
});
