import { describe, expect, test } from "vitest";
import { addTo, measureFact, noMoments } from "../../src/analysis/index.ts";
import { judge, roundedUp } from "../../src/analysis/verdict.ts";

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
const times = (value: number, count: number) =>
	new Array<number>(count).fill(value);

describe("the verdict on a difference", () => {
	test("is fewer where the interval leaves nought out, with the interval", () => {
		const verdict = judged([...times(-1, 40), ...times(0, 60)]);
		expect(verdict.kind).toBe("differs");
		expect(verdict.verdict).toMatch(/^fewer: 0\.4 \(0\.30\d to 0\.498\)$/u);
	});

	test("is more where a has more", () => {
		expect(judged([...times(1, 40), ...times(0, 60)]).verdict).toMatch(
			/^more: 0\.4/u,
		);
	});

	test("says how fine a difference was looked for where none was found", () => {
		const verdict = judged([
			...times(1, 11),
			...times(-1, 10),
			...times(0, 79),
		]);
		expect(verdict.kind).toBe("none-found");
		expect(verdict.verdict).toBe("no difference found at 0.2");
	});

	test("is that they are the same where they never differed", () => {
		expect(judged(times(0, 50))).toMatchObject({
			kind: "same",
			low95: null,
			verdict: "the same in every replication",
		});
		expect(judged(times(0, 50), "breaches", { certain: true })).toMatchObject({
			kind: "same",
			low95: 0,
			high95: 0,
		});
	});

	test("gives no interval where hardly a replication differs", () => {
		expect(judged([...times(0, 97), ...times(1, 3)])).toMatchObject({
			kind: "too-rare",
			low95: null,
			high95: null,
			verdict:
				"cannot be told from 100 replications: 3 of them differ from the rest",
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
		expect(judged([...values, ...values], "offSuctionMin").kind).toBe(
			"differs",
		);
	});

	test("with chance off what is seen is all there is", () => {
		expect(judged([5], "washes", { certain: true }).low95).toBeNull();
		expect(judged([5, 5], "washes", { certain: true })).toMatchObject({
			kind: "differs",
			low95: 5,
			high95: 5,
		});
	});
});

test.each([
	[0.0123, 0.02],
	[0.1 + 0.2, 0.5],
	[0.05, 0.05],
	[7, 10],
	[200, 200],
	[0, 0],
])("%f is looked for no more sharply than %f", (value, up) => {
	expect(roundedUp(value)).toBe(up);
});
