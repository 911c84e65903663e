import { describe, expect, test } from "vitest";
import { firstParting, nameHash, Trace, TraceLog } from "../../src/engine/index.ts";

type Events = readonly (readonly [time: number, name: string])[];

const day: Events = [
	[0, "suction"],
	[120, "fill"],
	[120.8333333333333, "dwell"],
	[125.8333333333333, "drain"],
];

function traced<T extends Trace>(trace: T, events: Events): T {
	for (const [time, name] of events) trace.note(time, nameHash(name), name);
	return trace;
}

const hashOf = (events: Events) => traced(new Trace(), events).hash;
const logOf = (events: Events) => traced(new TraceLog(), events);

/** The number whose last bit is the other one. */
function lastBitFlipped(value: number): number {
	const view = new DataView(new ArrayBuffer(8));
	view.setFloat64(0, value);
	view.setInt32(4, view.getInt32(4) ^ 1);
	return view.getFloat64(0);
}

describe("a trace", () => {
	test("of equal runs has equal hashes, of 16 hexadecimal digits", () => {
		expect(hashOf(day)).toMatch(/^[0-9a-f]{16}$/);
		expect(hashOf([...day])).toBe(hashOf(day));
		expect(logOf(day).hash).toBe(hashOf(day));
		expect(traced(new Trace(), day).events).toBe(4);
	});

	test("of this day is this hash, in every version", () => {
		expect(hashOf(day)).toBe("8ce26ee015c53b7d");
		expect(hashOf([])).toBe("9e3779b985ebca6b");
	});

	test("has another hash when the last bit of any time, or any name, is another", () => {
		const hashes = new Set([hashOf(day)]);
		day.forEach(([time, name], i) => {
			hashes.add(hashOf(day.with(i, [lastBitFlipped(time), name])));
			hashes.add(hashOf(day.with(i, [time, `${name}s`])));
		});
		expect(hashes.size).toBe(1 + 2 * day.length);
	});

	test("has another hash when events are left out, doubled or change places", () => {
		const [a, b, c, d] = day;
		const hashes = [
			day,
			[a, b, c],
			[b, a, c, d],
			[a, b, d, c],
			[a, b, c, d, d],
			[],
			[[0, "fill"]] as const,
			[[0, "suction"]] as const,
		].map(hashOf);
		expect(new Set(hashes).size).toBe(hashes.length);
	});

	test("tells 20 000 single events apart", () => {
		const hashes = new Set(Array.from({ length: 20_000 }, (_, i) => hashOf([[i / 64, "tick"]])));
		expect(hashes.size).toBe(20_000);
	});
});

describe("two runs laid side by side", () => {
	test("do not part where they are the same", () => {
		expect(firstParting(logOf(day), logOf(day))).toBeNull();
		expect(firstParting(logOf([]), logOf([]))).toBeNull();
	});

	test("part at the first event of another time, be it by one bit", () => {
		const time = lastBitFlipped(day[2][0]);
		const other = day.with(2, [time, "dwell"]).with(3, [130, "drain"]);
		expect(firstParting(logOf(day), logOf(other))).toEqual({
			index: 2,
			first: { time: day[2][0], name: "dwell" },
			second: { time, name: "dwell" },
		});
	});

	test("part at the first event of another name", () => {
		const other = day.with(1, [120, "alarm"]);
		expect(firstParting(logOf(day), logOf(other))).toEqual({
			index: 1,
			first: { time: 120, name: "fill" },
			second: { time: 120, name: "alarm" },
		});
	});

	test("part where one ends early, with null on its side", () => {
		const short = day.slice(0, 2);
		const last = { time: day[2][0], name: "dwell" };
		expect(firstParting(logOf(short), logOf(day))).toEqual({ index: 2, first: null, second: last });
		expect(firstParting(logOf(day), logOf(short))).toEqual({ index: 2, first: last, second: null });
	});
});

describe("the hash of a name", () => {
	test("is 32-bit FNV-1a", () => {
		// published test values of FNV-1a: "" 811c9dc5, "a" e40c292c, "foobar" bf9cf968 (from memory)
		const hex = (name: string) => (nameHash(name) >>> 0).toString(16).padStart(8, "0");
		expect(["", "a", "foobar"].map(hex)).toEqual(["811c9dc5", "e40c292c", "bf9cf968"]);
	});
});
