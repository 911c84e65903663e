import { stringify } from "yaml";
import { checkScenario, readScenario, type Scenario, sentence } from "../../src/scenario/index.ts";

/** As little as a scenario may say. */
export const least = `slackwater: 1
title: Least
dressings:
  - id: thigh
    wound: { tissue: soft-tissue, exudate: 160 mL/d }
    foam: [{ area: 240 cm2, thickness: 1 cm }]
    regimen: { depth: -125 mmHg, fill: 50 mL, dwell: 5 min, suction: 2 h }
`;

// biome-ignore lint/suspicious/noExplicitAny: raw data of a file, shaped at will by the tests
export type Raw = any;

/** The least scenario as data, changed by `change`, as YAML. */
export function changed(change: (raw: Raw) => void): string {
	const raw: Raw = {
		slackwater: 1,
		title: "Least",
		dressings: [
			{
				id: "thigh",
				wound: { tissue: "soft-tissue", exudate: "160 mL/d" },
				foam: [{ area: "240 cm2", thickness: "1 cm" }],
				regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "2 h" },
			},
		],
	};
	change(raw);
	return stringify(raw);
}

/** The scenario that a change of the least one reads to. */
export const readChanged = (change: (raw: Raw) => void): Scenario => readScenario(changed(change));

/** The sentences of everything that is wrong with a text. */
export const faults = (text: string): string[] => checkScenario(text).problems.map(sentence);

/** The one thing that is wrong after a change; all of them in one where there are more, so that a test fails on it. */
export const faultOf = (change: (raw: Raw) => void): string => faults(changed(change)).join("\n");
