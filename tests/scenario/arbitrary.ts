import fc from "fast-check";
import type { Raw } from "./sample.ts";

const amount = (units: readonly string[], min: number, max: number) =>
	fc
		.tuple(fc.double({ min, max, noNaN: true }), fc.constantFrom(...units))
		.map(([value, unit]) => `${Number(value.toPrecision(6))} ${unit}`);

const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const name = fc
	.string({ minLength: 1, maxLength: 20, unit: "grapheme" })
	.filter(
		(text) =>
			text.trim() === text &&
			!/[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFEFF\uFFFD]/u.test(text) &&
			text !== "__proto__",
	);
const clock = fc
	.tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
	.map((parts) => parts.map((part) => String(part).padStart(2, "0")).join(":"));

const settings = {
	begin: optional(fc.constantFrom("suction", "fill")),
	depth: amount(["mmHg"], -200, -25),
	fill: fc.oneof(fc.constantFrom("suggested", "none"), amount(["mL"], 5, 200), amount(["cL"], 1, 20)),
	dwell: amount(["min"], 0.5, 60),
	suction: amount(["h"], 0.5, 12),
	drawdown: optional(fc.constantFrom("5 %", "15 %", "50 %", "0.5 %", "100%", 0.3, "0.07")),
};
const regimen = fc.record(settings);
const regimens = fc.oneof(
	regimen,
	fc
		.array(regimen, { minLength: 1, maxLength: 3 })
		.map((items) => items.map((item, i) => ({ from: `${i * 5} h`, ...item }))),
);

const dressing = fc.record({
	patient: optional(name),
	wound: fc.record({
		tissue: fc.constantFrom("soft-tissue", "necrotic-soft-tissue", "open-abdomen", "exposed-organ"),
		area: amount(["cm2"], 5, 900),
		exudate: fc.oneof(amount(["mL/cm2/d"], 0, 3), amount(["mL/d", "L/d"], 0, 15)),
		slough: optional(fc.constantFrom("clean", "ordinary", "heavy")),
		difficulty: optional(fc.constantFrom("easy", "ordinary", "awkward")),
		outflow: optional(
			fc.oneof(fc.constant("none"), fc.record({ total: amount(["mL/d"], 10, 900), bursts: amount(["/d"], 1, 48) })),
		),
	}),
	foam: fc.array(fc.record({ area: amount(["cm2"], 5, 500), thickness: amount(["cm"], 0.5, 3) }), {
		minLength: 1,
		maxLength: 3,
	}),
	regimen: regimens,
	unit: optional(
		fc.record({
			canister: optional(amount(["mL"], 300, 1500)),
			holds: optional(amount(["mL"], 0, 299)),
			source: optional(amount(["mL"], 300, 1500)),
			left: optional(amount(["mL"], 0, 300)),
		}),
	),
	age: optional(amount(["h"], 0, 90)),
});

const happening = (ids: readonly string[]) =>
	fc.record({ at: amount(["h"], 0, 23), dressing: fc.constantFrom(...ids) }).chain((base) =>
		fc.oneof(
			fc
				.constantFrom(
					"transfer",
					"turn",
					"kink-fill",
					"kink-suction",
					"canister-change",
					"source-change",
					"dressing-change",
				)
				.map((what) => ({ ...base, what })),
			amount(["L/min/mmHg"], 0.001, 0.05).map((size) => ({ ...base, what: "breach", size })),
			fc.double({ min: 0.01, max: 1, noNaN: true }).map((share) => ({ ...base, what: "clog", share })),
			amount(["min"], 1, 90).map((time) => ({ ...base, what: "off", for: time })),
			fc
				.tuple(amount(["mL"], 1, 500), amount(["min"], 1, 90))
				.map(([volume, time]) => ({ ...base, what: "bleed", volume, for: time })),
		),
	);

const care = fc.record({
	response: optional(
		fc.record({
			day: optional(amount(["min"], 1, 30)),
			night: optional(amount(["min"], 1, 60)),
			spread: optional(fc.double({ min: 0, max: 2, noNaN: true })),
		}),
	),
	rounds: optional(fc.uniqueArray(clock, { maxLength: 6 })),
	turning: optional(fc.oneof(fc.constant("none"), amount(["h"], 1, 12))),
	nurses: optional(fc.oneof(fc.constant("unlimited"), fc.integer({ min: 1, max: 20 }))),
	dressingChange: optional(
		fc.oneof(fc.constant("none"), amount(["h"], 12, 96), fc.uniqueArray(amount(["h"], 1, 23), { maxLength: 3 })),
	),
});

const assumptions = fc.record({
	"breach.dry": optional(amount(["/h", "/d"], 0, 1)),
	"fill.flow": optional(amount(["mL/min"], 20, 100)),
	"turn.wet": optional(fc.double({ min: 0, max: 1, noNaN: true })),
	"foam.suggested": optional(fc.double({ min: 0.1, max: 0.4, noNaN: true })),
});

/** Raw data of a sound scenario; keys that are undefined are left out. */
export const rawScenario: fc.Arbitrary<Raw> = fc
	.uniqueArray(name, { minLength: 1, maxLength: 3 })
	.chain((ids) =>
		fc.record({
			slackwater: fc.constant(1),
			title: name,
			seed: optional(fc.oneof(name, fc.maxSafeInteger())),
			start: optional(fc.constantFrom("2026-03-02T07:00", "2028-02-29T23:59")),
			horizon: optional(amount(["h"], 24, 96)),
			replications: optional(fc.integer({ min: 1, max: 1000 })),
			chance: optional(fc.constantFrom("on", "off", true, false)),
			dressings: fc.tuple(...ids.map((id) => dressing.map((rest) => ({ id, ...rest })))),
			care: optional(care),
			happenings: optional(fc.array(happening(ids), { maxLength: 5 })),
			compare: optional(
				fc.dictionary(
					name,
					fc.record({
						dwell: optional(amount(["min"], 1, 30)),
						fill: optional(fc.constantFrom("none", "suggested")),
						dressing: optional(fc.constantFrom(...ids)),
					}),
					{ maxKeys: 3 },
				),
			),
			assumptions: optional(assumptions),
			solution: optional(fc.record({ name: optional(name), hang: optional(amount(["h"], 6, 48)) })),
			packs: optional(fc.record({ canister: optional(fc.integer({ min: 1, max: 50 })) })),
		}),
	)
	.map((raw) => JSON.parse(JSON.stringify(raw)));
