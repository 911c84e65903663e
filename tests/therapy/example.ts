import { constantsWith } from "../../src/physics/index.ts";
import type { Dressing, Regimen, Scenario } from "../../src/scenario/index.ts";

/** Short-dwell regimen of common practice: 50 mL for 5 min every 2 h. */
export const shortDwell: Regimen = {
	fromMin: 0,
	begin: "suction",
	depthMmHg: 125,
	fillMl: 50,
	fillSuggested: false,
	dwellMin: 5,
	suctionMin: 120,
	drawdown: 0.15,
	drawdownGiven: false,
};

export const longDwell: Regimen = { ...shortDwell, dwellMin: 10, suctionMin: 210 };

export const continuousSuction: Regimen = {
	...shortDwell,
	fillMl: 0,
	dwellMin: 0,
	suctionMin: Number.POSITIVE_INFINITY,
};

export const thigh: Dressing = {
	id: "thigh",
	patient: "patient",
	tissue: "necrotic-soft-tissue",
	areaCm2: 180,
	exudateMlPerDay: 162,
	slough: "ordinary",
	difficulty: "ordinary",
	outflow: null,
	foam: [{ areaCm2: 240, thicknessCm: 1 }],
	foamVolumeMl: 240,
	regimens: [shortDwell],
	canisterMl: 1000,
	sourceMl: 1000,
	canisterHoldsMl: 0,
	sourceLeftMl: null,
	ageMin: 0,
};

/** The reference day of the model: chance off, no rounds, no turning, 24 h from 07:00. */
export const reference: Scenario = {
	title: "reference",
	seed: "reference",
	start: "2026-03-02T07:00",
	startClockMin: 420,
	horizonMin: 1440,
	replications: 1,
	chance: false,
	dressings: [thigh],
	care: {
		response: { dayMin: 4, nightMin: 7, spread: 0.6 },
		roundsClockMin: [],
		turningMin: null,
		nurses: null,
		dressingChange: null,
		avoid: { handOver: [], meals: [], smallHours: [] },
	},
	happenings: [],
	compare: [],
	usual: null,
	sweep: null,
	home: null,
	constants: constantsWith(),
	solution: { name: "saline", named: false },
	prices: null,
	packs: {},
	defaulted: [],
	overridden: [],
};

/** The reference day with its one dressing altered. */
export function withDressing(change: Partial<Dressing>, rest: Partial<Scenario> = {}): Scenario {
	return { ...reference, ...rest, dressings: [{ ...thigh, ...change }] };
}
