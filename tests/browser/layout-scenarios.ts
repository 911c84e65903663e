import fc from "fast-check";

const pad = (value: number): string => String(value).padStart(2, "0");

/** Titles and ids as long as somebody may type them. */
const titles = [
	"Thigh wound",
	"Abdominal wound after the second look, foam in two layers, with a second dressing over the left groin and hip",
	"Two wounds on one leg; transferred from another ward at noon, for review by the wound team on the morning after",
];
const ids = [
	["thigh", "left-groin-and-lower-abdomen", "w"],
	["abdomen", "hip-right", "the-dressing-with-an-id-as-long-as-a-line-of-text"],
] as const;

const regimen = fc.record({
	depth: fc.constantFrom("-75 mmHg", "-125 mmHg", "-150 mmHg"),
	fill: fc.constantFrom("none", "suggested", "25 mL", "80 mL", "190 mL"),
	dwell: fc.constantFrom("1 min", "5 min", "12.5 min", "20 min"),
	suction: fc.constantFrom("30 min", "1 h", "2 h", "3.5 h", "6 h"),
	begin: fc.constantFrom("suction", "fill"),
});

const dressing = (id: string, horizonH: number) =>
	fc.record({
		id: fc.constant(id),
		wound: fc.record({
			tissue: fc.constantFrom("soft-tissue", "necrotic-soft-tissue", "open-abdomen", "exposed-organ"),
			area: fc.constantFrom("40 cm2", "180 cm2", "500 cm2"),
			exudate: fc.constantFrom("0.3 mL/cm2/d", "0.9 mL/cm2/d", "1.4 mL/cm2/d"),
			difficulty: fc.constantFrom("easy", "ordinary", "awkward"),
		}),
		foam: fc.constantFrom(
			[{ area: "60 cm2", thickness: "1 cm" }],
			[
				{ area: "240 cm2", thickness: "1 cm" },
				{ area: "40 cm2", thickness: "1.6 cm" },
			],
		),
		regimen: fc.oneof(
			regimen,
			fc.tuple(regimen, regimen).map(([first, next]) => [
				{ ...first, from: "0 h" },
				{ ...next, from: `${Math.max(1, Math.floor(horizonH / 2))} h` },
			]),
		),
		unit: fc.constantFrom(
			{ canister: "300 mL", source: "500 mL" },
			{ canister: "500 mL", source: "1000 mL" },
			{ canister: "1000 mL", source: "1000 mL" },
		),
	});

const happenings = (names: readonly string[], horizonH: number) =>
	fc.array(
		fc
			.record({
				at: fc.double({ min: 0.1, max: Math.max(0.2, horizonH - 0.9), noNaN: true }).map((at) => `${at.toFixed(2)} h`),
				dressing: fc.constantFrom(...names),
			})
			.chain((base) =>
				fc.constantFrom(
					{ ...base, what: "transfer" },
					{ ...base, what: "dressing-change" },
					{ ...base, what: "off", for: "45 min" },
					{ ...base, what: "kink-suction" },
				),
			),
		{ maxLength: 4 },
	);

/** Raw data of a sound scenario of 1 to 72 h and one to three dressings, for looking at how its papers are laid out. */
export const layoutScenario = fc
	.record({
		horizonH: fc.constantFrom(1, 7, 12, 24, 24, 25, 36, 48, 48, 72),
		count: fc.constantFrom(1, 1, 2, 3),
		names: fc.constantFrom(...ids),
	})
	.chain(({ horizonH, count, names }) => {
		const used = names.slice(0, count);
		return fc.record({
			slackwater: fc.constant(1),
			title: fc.constantFrom(...titles),
			seed: fc.integer({ min: 1, max: 9999 }),
			start: fc
				.record({ hour: fc.integer({ min: 0, max: 23 }), minute: fc.constantFrom(0, 15, 30, 47) })
				.map(({ hour, minute }) => `2026-03-02T${pad(hour)}:${pad(minute)}`),
			horizon: fc.constant(`${horizonH} h`),
			replications: fc.constantFrom(1, 20, 60),
			dressings: fc.tuple(...used.map((id) => dressing(id, horizonH))),
			care: fc.record({
				rounds: fc.constantFrom(["07:00", "19:00"], ["06:00", "10:00", "14:00", "18:00", "22:00", "02:00"]),
			}),
			happenings: happenings(used, horizonH),
			compare: fc.constantFrom(
				{ now: {}, "suction-alone": { fill: "none" } },
				{
					"a-short-dwell-and-a-long-time-under-suction": { dwell: "2 min" },
					"twice-as-much-solution-half-as-often": { suction: "5 h" },
				},
			),
		});
	});
