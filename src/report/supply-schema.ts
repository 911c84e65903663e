import {
	atLeast0,
	list,
	number,
	object,
	type Schema,
	share,
	spread,
	text,
	count as whole,
} from "./schema-parts.ts";

const orNull = (schema: Schema): Schema => ({
	...schema,
	type: [schema.type, "null"],
});

const count = object({ mean: atLeast0, p10: whole, p50: whole, p90: whole });
const series = object({
	mean: list(atLeast0),
	p10: list(whole),
	p50: list(whole),
	p90: list(whole),
});
const demand = { total: count, days: series, weeks: series };

const rule = object({
	reorder: whole,
	upTo: whole,
	origin: { enum: ["given", "found"] },
	service: share,
	low95: orNull(whole),
	high95: orNull(whole),
	otherHalf: orNull(whole),
	reached: object({
		mean: share,
		low95: orNull(share),
		high95: orNull(share),
		onOtherHalf: { type: "boolean" },
	}),
	demandPerDay: atLeast0,
	demandSdPerDay: atLeast0,
	exposureDays: atLeast0,
	textBook: object({ reorder: whole, service: orNull(share) }),
	ladder: list(object({ reorder: whole, service: share })),
});

const store = object({
	rule,
	ready: spread,
	fillRate: orNull(share),
	stockOut: object({ probability: share, low: share, high: share }),
	short: count,
	substituted: count,
	offHours: spread,
	ordered: count,
	received: count,
	used: count,
	expired: count,
	endStock: count,
	onHand: series,
	outOnDay: list(share),
	outByDay: list(share),
});

/** JSON Schema (draft 2020-12) of the format `slackwater/supply@1`. Objects may gain keys; those named here keep their meaning. */
export const supplyJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "slackwater-supply-1",
	title: "slackwater/supply@1",
	...object({
		format: { const: "slackwater/supply@1" },
		scenario: object({
			title: text,
			seed: text,
			version: text,
			start: text,
			startClockMin: atLeast0,
			horizonMin: atLeast0,
			warmUpMin: atLeast0,
			days: whole,
			weeks: whole,
			replications: whole,
			chance: { enum: ["on", "off"] },
			units: orNull(whole),
			full: { enum: ["wait", "away"] },
			kinds: list(
				object({
					id: text,
					share: atLeast0,
					regimen: text,
					canisterMl: atLeast0,
					sourceMl: orNull(atLeast0),
					solution: orNull(text),
				}),
			),
			arrivalsPerWeek: orNull(atLeast0),
			meanLengthMin: orNull(atLeast0),
			currency: orNull(text),
			pricesAsOf: orNull(text),
		}),
		trace: object({ events: whole, hash: text }),
		orders: list(
			object({
				item: text,
				atMin: atLeast0,
				arrivesMin: atLeast0,
				packs: whole,
				packSize: whole,
				pieces: whole,
				cost: orNull(atLeast0),
				position: { type: "integer" },
				without: object({ byMin: atLeast0, probability: share }),
				with: object({ byMin: atLeast0, probability: share }),
			}),
		),
		items: list(
			object({
				item: text,
				kind: { enum: ["canister", "solution", "kit", "port", "line"] },
				sizeMl: orNull(atLeast0),
				pack: whole,
				price: orNull(atLeast0),
				stock: orNull(whole),
				demand: object({
					...demand,
					causes: list(object({ cause: text, ...demand })),
				}),
				store: { ...store, type: ["object", "null"] },
			}),
		),
		beds: object({
			firstDay: { type: "integer" },
			inBed: series,
			waiting: series,
			arrived: count,
			begun: count,
			left: count,
			turnedAway: count,
			meanInBed: spread,
			shareWaited: share,
			meanWaitMin: spread,
			therapyDays: spread,
		}),
		nurses: list(
			object({ fromClockMin: atLeast0, nurses: orNull(whole), hours: spread }),
		),
		waste: object({
			liquidMl: spread,
			solutionMl: spread,
			weightKg: spread,
			unweighed: list(text),
		}),
		cost: {
			...object({
				currency: text,
				asOf: text,
				items: list(
					object({
						item: text,
						price: atLeast0,
						used: count,
						expiredMean: atLeast0,
						needed: count,
					}),
				),
				unpriced: list(text),
				total: spread,
				totalNeeded: spread,
			}),
			type: ["object", "null"],
		},
		policies: list(
			object({
				name: text,
				cost: { ...spread, type: ["object", "null"] },
				difference: { ...spread, type: ["object", "null"] },
				variance: {
					...object({ paired: atLeast0, independent: atLeast0 }),
					type: ["object", "null"],
				},
				items: list(object({ item: text, used: count })),
				nurseHours: spread,
				nurseHoursDifference: { ...spread, type: ["object", "null"] },
			}),
		),
		cautions: list(object({ code: text, text, dressing: text }, ["dressing"])),
		assumptions: list(
			object({
				name: text,
				value: { anyOf: [number, text] },
				unit: text,
				provenance: text,
				source: text,
				meaning: text,
				defaulted: { type: "boolean" },
			}),
		),
	}),
};
