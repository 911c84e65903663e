import { describe, expect, test } from "vitest";
import { addTo, noMoments } from "../../../src/statistics/index.ts";
import { directionOf, judge, roundedUp } from "../../../src/studies/compare/verdict.ts";
import { measureFact } from "../../../src/vocabulary/index.ts";

function judged(
	values: readonly number[],
	measure: "breaches" | "offSuctionMin" | "washes" = "breaches",
	other: Partial<Parameters<typeof judge>[0]> = {},
) {
	const moments = noMoments();
	for (const value of values) addTo(moments, value);
	const counts = new Map<number, number>();
	for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
	return judge({
		moments,
		higher: values.filter((value) => value > 0).length,
		lower: values.filter((value) => value < 0).length,
		deviating: values.length - Math.max(...counts.values()),
		fact: measureFact(measure),
		unit: measureFact(measure).unit,
		certain: false,
		judged: true,
		...other,
	});
}
const times = (value: number, count: number) => new Array<number>(count).fill(value);

describe("the verdict on a difference", () => {
	test("is fewer where the interval leaves nought out, with the interval", () => {
		const verdict = judged([...times(-1, 40), ...times(0, 60)]);
		expect(verdict.kind).toBe("differs");
		expect(verdict.verdict).toMatch(/^fewer: 0\.4 \(0\.3 to 0\.5\)$/u);
	});

	test("is more where a has more", () => {
		expect(judged([...times(1, 40), ...times(0, 60)]).verdict).toMatch(/^more: 0\.4/u);
	});

	test("says how fine a difference was looked for where none was found", () => {
		const verdict = judged([...times(1, 11), ...times(-1, 10), ...times(0, 79)]);
		expect(verdict.kind).toBe("none-found");
		expect(verdict.verdict).toBe("no difference found at 0.2");
	});

	test("is that they are the same where they never differed", () => {
		expect(judged(times(0, 50))).toMatchObject({ kind: "same", low95: null, verdict: "the same in every replication" });
		expect(judged(times(0, 50), "breaches", { certain: true })).toMatchObject({ kind: "same", low95: 0, high95: 0 });
	});

	test("gives no interval where hardly a replication differs", () => {
		expect(judged([...times(0, 97), ...times(1, 3)])).toMatchObject({
			kind: "too-rare",
			low95: null,
			high95: null,
			verdict: "cannot be told from 100 replications: 3 of them differ from the rest",
		});
	});

	test("says which way where nearly every replication has the same difference", () => {
		expect(judged([...times(5, 98), 4, 4], "washes")).toMatchObject({
			kind: "steady",
			low95: null,
			verdict: "more: 4.98, but for 2 of 100 replications",
		});
	});

	test("waits for more replications where the tail is long", () => {
		const values = Array.from({ length: 100 }, (_, i) => i % 7);
		expect(judged(values, "offSuctionMin").kind).toBe("too-rare");
		expect(judged([...values, ...values], "offSuctionMin").kind).toBe("differs");
	});

	test("has words for measures with a unit, without the sign", () => {
		const fewer = [...times(-123.4, 210), ...times(-123, 190)];
		expect(judged(fewer, "offSuctionMin").verdict).toMatch(/^less: 123\.21 min \(123\.19 to 123\.23\)$/u);
		const more = [...times(3.25, 210), ...times(3, 190)];
		expect(judged(more, "offSuctionMin")).toMatchObject({
			kind: "differs",
			verdict: expect.stringMatching(/^more: 3\.131 min \(3\.119 to 3\.144\)$/u),
		});
	});

	test("gives a share without a unit, and a great number to the digits that its interval supports", () => {
		const values = [...times(1, 40), ...times(0, 60)];
		expect(judged(values, "breaches", { unit: "share" }).verdict).toMatch(/^more: 0\.4 \(/u);
		const great = [...times(1234, 50), ...times(1235, 50)];
		expect(judged(great).verdict).toMatch(/^more: 1234\.5 \(1234\.4 to 1234\.6\)$/u);
	});

	test("leaves nought out in words, too, where an end of its interval comes close to it", () => {
		// 0.28 ± 0.276: an end at 0.004 is none at 0.
		expect(judged([...times(1, 13), ...times(10, 1), ...times(0, 69)]).verdict).toMatch(
			/^more: 0\.3 \(just over 0 to 0\.5\)$/u,
		);
	});

	test("turns round with the two that are compared", () => {
		const values = [...times(1, 40), ...times(0, 60)];
		const [there, back] = [values, values.map((value) => -value)].map((all) => judged(all));
		expect(back.low95).toBeCloseTo(-(there.high95 ?? 0), 12);
		expect(back.high95).toBeCloseTo(-(there.low95 ?? 0), 12);
		expect(back.verdict).toBe(there.verdict.replace("more", "fewer"));
	});

	test("an interval that ends at nought leaves nought in", () => {
		const { low95, high95, kind } = judged([1, 1, -1, -1], "breaches", {
			certain: true,
			moments: { count: 2, mean: 0, squares: 0 },
		});
		expect([low95, high95, kind]).toEqual([0, 0, "none-found"]);
	});

	test("five replications that differ from the rest give an interval, four do not", () => {
		expect(judged([...times(0, 95), ...times(1, 5)]).low95).not.toBeNull();
		expect(judged([...times(0, 96), ...times(1, 4)]).low95).toBeNull();
	});

	test("which way it is is said from a hundred replications on, of which most have the same difference", () => {
		expect(judged(times(5, 100), "washes")).toMatchObject({
			kind: "steady",
			low95: null,
			verdict: "more: 5, the same in every replication",
		});
		expect(judged(times(-5, 100), "washes").verdict).toBe("fewer: 5, the same in every replication");
		expect(judged(times(5, 99), "washes").kind).toBe("too-rare");
		expect(judged([...times(5, 98), 4, 4], "washes").kind).toBe("steady");
		// Two have none at all, and two the other way: what most have is still the direction of the rest.
		expect(judged([...times(5, 98), 0, 0], "washes").kind).toBe("steady");
		expect(judged([...times(5, 98), -1, -1], "washes", { deviating: 1 }).kind).toBe("too-rare");
		expect(judged(times(5, 100), "offSuctionMin", { deviating: 50 }).kind).toBe("too-rare");
	});

	test("says how many replications may tell where most minutes fall on few of them", () => {
		const { fewest } = measureFact("offSuctionMin");
		for (const few of [40, 5])
			expect(judged([...times(0, 100 - few), ...times(7, few)], "offSuctionMin").verdict).toBe(
				`cannot be told from 100 replications: most minutes fall on few of them (${fewest} replications may tell)`,
			);
	});

	test("is not given where the measure rests on assumed rates, though the interval is", () => {
		const values = [...times(1, 40), ...times(0, 60)];
		const { low95 } = judged(values);
		expect(judged(values, "breaches", { judged: false })).toMatchObject({
			kind: "not-judged",
			low95,
			verdict: "not judged: it rests on assumed rates of clogging",
		});
	});

	test("gives a direction only where it gives a difference", () => {
		expect(directionOf({ kind: "differs", mean: 2 })).toBe(1);
		expect(directionOf({ kind: "steady", mean: -2 })).toBe(-1);
		for (const kind of ["same", "none-found", "too-rare", "not-judged"] as const)
			expect(directionOf({ kind, mean: 2 })).toBe(0);
	});

	test("with chance off what is seen is all there is", () => {
		expect(judged([5], "washes", { certain: true }).low95).toBeNull();
		expect(judged([5, 5], "washes", { certain: true })).toMatchObject({ kind: "differs", low95: 5, high95: 5 });
	});
});

test.each([
	[0.0123, 0.02],
	[0.1 + 0.2, 0.5],
	[0.05, 0.05],
	[7, 10],
	[200, 200],
	[0, 0],
	[-3, 0],
	[1, 1],
	[9.9, 10],
	[0.0999999, 0.1],
	[1234, 2000],
])("%f is looked for no more sharply than %f", (value, up) => {
	expect(roundedUp(value)).toBe(up);
});
