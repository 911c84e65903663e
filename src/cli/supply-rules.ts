import { readFileSync } from "node:fs";
import { type Found, foundFits } from "../analysis/index.ts";
import type { Problem, WardScenario } from "../scenario/index.ts";
import { digest, shortDigest } from "./digest.ts";
import { reasonOf } from "./failure.ts";
import { fileName } from "./quoted.ts";

/** What `supply --rules-only` writes, for shards to read: format `slackwater/supply-rules@1`. */
interface RulesFile extends Found {
	readonly format: "slackwater/supply-rules@1";
	readonly version: string;
	/** Of scenario and version: rules that differ in it are not those of this ward. */
	readonly fingerprint: string;
}

/** Name of the file in the folder that it is written to. */
export const rulesName = "rules.json";

const fingerprintOf = (scenario: unknown, version: string): string =>
	shortDigest(JSON.stringify([scenario, version]));

/** The text of a file of rules, closed with a checksum like a part. */
export function rulesText(
	{ rules, orders, plenty }: Found,
	scenario: unknown,
	version: string,
): string {
	const file: RulesFile = {
		format: "slackwater/supply-rules@1",
		version,
		fingerprint: fingerprintOf(scenario, version),
		rules,
		orders,
		plenty,
	};
	return `${JSON.stringify({ ...file, checksum: digest(JSON.stringify(file)) })}\n`;
}

/** Reads the rules that were found for a ward elsewhere. Null, with a sentence in `problems`, where the file holds anything else. */
export function readRules(
	file: string,
	ward: WardScenario,
	scenario: unknown,
	version: string,
	problems: Problem[],
): Found | null {
	const refuse = (received: string) => {
		problems.push({
			path: fileName(file),
			expected: "order rules that supply --rules-only wrote of this ward",
			received,
		});
		return null;
	};
	let text: string;
	try {
		text = readFileSync(file, "utf8");
	} catch (error) {
		return refuse(`nothing: ${reasonOf(error)}`);
	}
	let data: unknown;
	try {
		data = JSON.parse(text);
	} catch {
		return refuse("no JSON");
	}
	const { checksum, ...rest } = (data ?? {}) as Partial<RulesFile> & {
		readonly checksum?: unknown;
	};
	if (rest.format !== "slackwater/supply-rules@1")
		return refuse("something else");
	if (checksum !== digest(JSON.stringify(rest)))
		return refuse("rules that were changed since");
	if (rest.version !== version)
		return refuse("those of another version of slackwater");
	if (rest.fingerprint !== fingerprintOf(scenario, version))
		return refuse("those of another scenario, seed or number of replications");
	const { rules, orders, plenty } = rest;
	const found = { rules, orders, plenty };
	return foundFits(ward, found) ? found : refuse("numbers that do not fit");
}
