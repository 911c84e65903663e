import { readFileSync } from "node:fs";
import { stringify } from "yaml";
import { checkWard, type Load, readWard, sentence, type WardScenario } from "../../src/scenario/index.ts";

// biome-ignore lint/suspicious/noExplicitAny: raw data of a file, shaped at will by the tests
export type Raw = any;

/** Looks for a file beside the scenarios of the project. */
export const besideScenarios: Load = (file) => ({
	text: readFileSync(new URL(`../../scenarios/${file}`, import.meta.url), "utf8"),
});

/** As little as a ward may say: four beds of one kind for four weeks, with stores that lack nothing. */
export const leastWard = (): Raw => ({
	slackwater: 1,
	title: "Least ward",
	start: "2026-03-02T07:00",
	horizon: "28 d",
	replications: 10,
	ward: {
		units: 4,
		kinds: [
			{
				id: "thigh",
				wound: { tissue: "soft-tissue", exudate: "160 mL/d" },
				foam: [{ area: "240 cm2", thickness: "1 cm" }],
				regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "2 h" },
			},
		],
		beds: [1, 2, 3, 4].map((n) => ({ id: `bed ${n}`, kind: "thigh", start: "0 d", end: "28 d" })),
	},
	stores: [
		{ item: "canister", size: "1000 mL", stock: "unlimited" },
		{ item: "solution", size: "1000 mL", stock: "unlimited" },
		{ item: "kit", stock: "unlimited" },
		{ item: "port", stock: "unlimited" },
		{ item: "line", stock: "unlimited" },
	],
});

/** The least ward as text, changed by `change`. */
export function changedWard(change: (raw: Raw) => void = () => {}): string {
	const raw = leastWard();
	change(raw);
	return stringify(raw);
}

export const wardWith = (change: (raw: Raw) => void = () => {}): WardScenario =>
	readWard(changedWard(change), besideScenarios);

/** The sentences of everything that is wrong after a change. */
export const wardFaults = (change: (raw: Raw) => void): string[] =>
	checkWard(changedWard(change), besideScenarios).problems.map(sentence);

export const dressingsOf = (ward: WardScenario) => ward.kinds.map(({ dressing }) => dressing);
