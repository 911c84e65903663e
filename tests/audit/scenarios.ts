import fc from "fast-check";
import { stringify } from "yaml";

/** What is asked of the program with a scenario. */
export type Kind = "day" | "compare" | "sweep" | "ward";

export interface Sample {
	readonly kind: Kind;
	/** Number within its kind: the name of a failure. */
	readonly number: number;
	readonly text: string;
}

const starts = [
	"2026-03-02T07:00",
	"2026-03-02T13:30",
	"2026-01-05T19:00",
	"2028-02-28T22:47",
	"2026-12-31T00:00",
	"2026-10-24T06:59",
] as const;
const ids = ["thigh", "left hip", "heel 2", "Bauch", "sacrum (upper)", "№ 3"];
const titles = ["Thigh wound after debridement", "Two wounds, one night", "What if it leaks?", "Übung 12"];

const one = <const T extends readonly unknown[]>(...values: T): fc.Arbitrary<T[number]> => fc.constantFrom(...values);
const some = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });
const tenths = (least: number, most: number): fc.Arbitrary<number> =>
	fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
const hours = (least: number, most: number): fc.Arbitrary<string> =>
	fc.tuple(tenths(least, most), fc.boolean()).map(([value, whole]) => `${whole ? Math.ceil(value) : value} h`);
const minutes = (least: number, most: number): fc.Arbitrary<string> =>
	fc.integer({ min: least, max: most }).map((value) => `${value} min`);

const filling = fc.record({
	begin: some(one("suction", "fill")),
	depth: one("-50 mmHg", "-75 mmHg", "-100 mmHg", "-125 mmHg", "-150 mmHg"),
	fill: one("25 mL", "50 mL", "7.5 mL", "120 mL", "190 mL", "suggested"),
	dwell: fc.oneof(minutes(1, 40), one("2.5 min", "90 s", "1.5 h")),
	suction: fc.oneof(hours(0.5, 6), minutes(35, 400)),
	drawdown: some(one("5 %", "15 %", "50 %", "33.3 %")),
});
const suctionAlone = fc.record({ depth: one("-75 mmHg", "-125 mmHg"), fill: fc.constant("none") });
const regimen = fc.oneof({ weight: 5, arbitrary: filling }, { weight: 1, arbitrary: suctionAlone });

/** Regimens that take over one after the other. */
const regimens = (horizonH: number) =>
	fc.oneof(
		{ weight: 3, arbitrary: regimen },
		{
			weight: 2,
			arbitrary: fc
				.array(regimen, { minLength: 2, maxLength: 3 })
				.map((items) =>
					items.map((item, i) => ({ from: `${Math.round(((i * horizonH) / items.length) * 100) / 100} h`, ...item })),
				),
		},
	);

const dressing = (horizonH: number) =>
	fc.record({
		patient: some(one("bed 4", "bed 5")),
		wound: fc.record({
			tissue: one("soft-tissue", "necrotic-soft-tissue", "open-abdomen", "exposed-organ"),
			area: one("60 cm2", "180 cm2", "400 cm2"),
			exudate: one("0.4 mL/cm2/d", "1 mL/cm2/d", "350 mL/d", "1.4 L/d"),
			slough: some(one("clean", "ordinary", "heavy")),
			difficulty: some(one("easy", "ordinary", "awkward")),
			outflow: some(one("none", { total: "400 mL/d", bursts: "12 /d" })),
		}),
		foam: one(
			[{ area: "240 cm2", thickness: "1 cm" }],
			[{ area: "80 cm2", thickness: "3 cm" }],
			[
				{ area: "300 cm2", thickness: "1 cm" },
				{ area: "100 cm2", thickness: "1.5 cm" },
			],
		),
		regimen: regimens(horizonH),
		unit: some(
			fc.record({
				canister: some(one("300 mL", "500 mL", "1000 mL", "1.5 L")),
				source: some(one("250 mL", "500 mL", "1000 mL")),
				holds: some(one("120 mL", "0 mL", "45.5 mL")),
				left: some(one("180 mL", "240 mL")),
			}),
		),
		age: some(one("0 h", "20 h", "45 h")),
	});

/** Whether the course of the canister, half-hour by half-hour, reaches the end. */
const isInHalfHours = (horizonH: number): boolean => Number.isInteger(2 * horizonH) && horizonH <= 48;

const happening = (names: readonly string[], horizonH: number) =>
	fc.record({ at: hours(0, horizonH), dressing: fc.constantFrom(...names) }).chain((base) =>
		fc.oneof(
			one(
				"transfer",
				"turn",
				"kink-fill",
				"kink-suction",
				isInHalfHours(horizonH) ? "canister-change" : "turn",
				"source-change",
				"dressing-change",
			).map((what) => ({ ...base, what })),
			minutes(1, 180).map((time) => ({ ...base, what: "off", for: time })),
			one("0.004 L/min/mmHg", "0.02 L/min/mmHg").map((size) => ({ ...base, what: "breach", size })),
			one(0.4, 0.8, 1).map((share) => ({ ...base, what: "clog", share })),
		),
	);

const care = fc.record({
	rounds: some(one(["07:00", "19:00"], [], ["06:30", "12:00", "18:00", "23:45"])),
	turning: some(one("none", "2 h", "4 h")),
	nurses: some(one("unlimited", 1, 2)),
	dressingChange: some(one("none", "24 h", "48 h")),
});

const prices = one(undefined, {
	currency: "EUR",
	canister: 38,
	source: 2.9,
	kit: 64,
	line: 7,
	port: 19,
	asOf: "2026-01",
});

const patch = (names: readonly string[]) =>
	fc.record({
		dressing: some(fc.constantFrom(...names)),
		dwell: some(minutes(2, 20)),
		suction: some(one("1.5 h", "2 h", "3.5 h")),
		depth: some(one("-75 mmHg", "-125 mmHg")),
		canister: some(one("500 mL", "1000 mL")),
		source: some(one("500 mL", "1000 mL")),
	});

/** A sound day; with `many` regimens to set against each other, of which none may be there. */
const day = (kind: "day" | "compare", mostH: number) =>
	fc
		.record({
			names: fc
				.tuple(fc.uniqueArray(fc.constantFrom(...ids), { minLength: 3, maxLength: 3 }), one(1, 1, 1, 2, 2, 3))
				.map(([three, many]) => three.slice(0, many)),
			horizonH: fc.oneof(
				{ weight: 4, arbitrary: one(6, 12, 24).map((h) => Math.min(h, mostH)) },
				{ weight: 2, arbitrary: tenths(1, 24).map((h) => Math.min(h, mostH)) },
				{ weight: 1, arbitrary: tenths(1, mostH) },
			),
		})
		.chain(({ names, horizonH }) =>
			fc.record({
				slackwater: fc.constant(1),
				title: one(...titles),
				seed: fc.nat(1e6).map((n) => `seed ${n}`),
				start: one(...starts),
				horizon: fc.constant(`${horizonH} h`),
				replications: kind === "day" ? one(1, 2, 6, 12, 20, 40) : one(3, 8, 12, 24),
				chance: one("on", "on", "on", "off"),
				dressings: fc.tuple(...names.map((id) => dressing(horizonH).map((rest) => ({ id, ...rest })))),
				care: some(care),
				happenings: fc.array(happening(names, horizonH), { maxLength: 4 }),
				solution: some(one({ name: "saline" }, { hang: "12 h" })),
				prices,
				packs: some(one({ canister: 10 }, { canister: 5, kit: 5, line: 20 })),
				home:
					horizonH < 12
						? fc.constant(undefined)
						: some(one({ from: `${horizonH - 12} h`, for: "12 h" }, { from: "0 h", for: `${horizonH} h` })),
				...(kind === "day"
					? {}
					: {
							compare: fc.oneof(
								fc.tuple(patch(names), patch(names)).map(([a, b]) => ({ short: a, "long one": b })),
								fc.tuple(patch(names), patch(names)).map(([a, b]) => ({ now: {}, A: a, "B, slower": b })),
								patch(names).map((a) => ({ now: {}, other: a })),
							),
						}),
			}),
		);

const grid = fc
	.record({
		dwell: some(one(["5 min", "10 min"], ["3 min", "8 min", "15 min"])),
		suction: some(one(["2 h", "3.5 h"], ["1 h", "2 h", "4 h"])),
		fill: some(one(["25 mL", "50 mL"], ["40 mL", "60 mL", "90 mL"])),
		depth: some(one(["-75 mmHg", "-125 mmHg"])),
	})
	.filter((axes) => {
		const many = Object.values(axes).filter((axis) => axis !== undefined);
		return many.length > 0 && many.length < 4;
	});

/** A sound day with a grid of regimens. */
const swept = fc
	.tuple(day("compare", 24), grid)
	.map(([raw, sweep]) => ({
		...raw,
		replications: Math.min(20, raw.replications),
		compare: undefined,
		dressings: raw.dressings
			.slice(0, 1)
			.map((dressing) => ({
				...dressing,
				regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "2 h" },
			})),
		happenings: [],
		usual: raw.horizon.length % 2 === 0 ? undefined : { dwell: "10 min" },
		sweep,
	}));

const stock = (least: number, most: number) =>
	fc.oneof(
		{ weight: 3, arbitrary: fc.integer({ min: least, max: most }) },
		{ weight: 1, arbitrary: fc.constant("unlimited") },
	);

const ordering = fc.record({
	pack: some(one(1, 2, 5, 10)),
	lead: some(one("1 d", "2 d", "3 d")),
	leadSpread: some(one(0.2, 0.5)),
	orderDays: some(one(["mon", "thu"], ["mon", "wed", "fri"], ["tue"])),
	service: some(one("95 %", "98 %")),
	price: some(one(38, 2.9, 64.35, 7)),
	weight: some(one("400 g", "60 g")),
});

/** A sound ward, small and of few weeks. */
const ward = fc
	.record({
		kinds: fc.uniqueArray(fc.constantFrom("thigh", "foot 2", "Bauch"), { minLength: 1, maxLength: 2 }),
		canister: one("1000 mL", "500 mL"),
	})
	.chain(({ kinds, canister }) =>
		fc.record({
			slackwater: fc.constant(1),
			title: one("Ward 7, spring", "Small ward"),
			seed: fc.nat(1e6).map((n) => `seed ${n}`),
			start: one("2026-03-02T07:00", "2026-11-04T13:30", "2026-12-24T00:00"),
			horizon: one("7 d", "12 d", "9 d", "2 w"),
			replications: one(4, 8, 20),
			chance: one("on", "on", "on", "off"),
			ward: fc.record({
				units: some(one(2, 3, 5)),
				kinds: fc.tuple(
					...kinds.map((id) =>
						fc.record({
							id: fc.constant(id),
							share: one(1, 3),
							wound: one(
								{ tissue: "soft-tissue", exudate: "160 mL/d" },
								{ tissue: "necrotic-soft-tissue", exudate: "700 mL/d" },
							),
							foam: fc.constant([{ area: "240 cm2", thickness: "1 cm" }]),
							regimen: one(
								{ depth: "-125 mmHg", fill: "50 mL", dwell: "10 min", suction: "3.5 h" },
								{ depth: "-100 mmHg", fill: "120 mL", dwell: "2.5 min", suction: "8 h" },
								{ depth: "-75 mmHg", fill: "none" },
							),
							unit: fc.constant({ canister }),
						}),
					),
				),
				arrivals: one({ rate: "0.6 /d" }, { rate: "1.2 /d", weekdays: { sun: 0.2 } }),
				length: one({ median: "3 d", spread: 0.5 }, { mean: "4 d" }),
				warmUp: some(one("2 d", "7 d")),
			}),
			care: fc.constant({ rounds: ["07:00", "19:00"] }),
			solution: some(one({ name: "saline" })),
			stores: fc
				.tuple(
					fc.tuple(stock(1, 12), ordering),
					fc.tuple(stock(2, 20), ordering),
					fc.tuple(stock(1, 9), ordering),
					fc.tuple(stock(1, 9), ordering),
					fc.tuple(stock(1, 9), ordering),
				)
				.map((five) =>
					[
						{ item: "canister", size: canister },
						{ item: "solution", size: "1000 mL" },
						{ item: "kit" },
						{ item: "port" },
						{ item: "line" },
					].map((item, i) => ({ ...item, stock: five[i]?.[0], ...five[i]?.[1] })),
				),
			prices: one({ currency: "EUR", asOf: "2026-01" }),
			compare: some(
				one(
					{ "all long": { depth: "-100 mmHg" } },
					{ shallow: { depth: "-75 mmHg" }, "deeper, for all": { depth: "-150 mmHg" } },
				),
			),
		}),
	);

const arbitraryOf = (kind: Kind, mostH: number): fc.Arbitrary<unknown> => {
	switch (kind) {
		case "day":
		case "compare":
			return day(kind, mostH);
		case "ward":
			return ward;
		case "sweep":
			return swept;
	}
};

/** Scenarios of a kind, the same from run to run. */
export function samplesOf(kind: Kind, many: number, seed: number, mostH: number): Sample[] {
	return fc
		.sample(arbitraryOf(kind, mostH), { seed, numRuns: many })
		.map((raw, number) => ({ kind, number, text: stringify(JSON.parse(JSON.stringify(raw))) }));
}
