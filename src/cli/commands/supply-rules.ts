import type { Problem, WardScenario } from "../../scenario/index.ts";
import { type Found, foundFits } from "../../studies/index.ts";
import { fingerprintOf, keptText, readKept } from "../files/kept-file.ts";
import { refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";

const format = "slackwater/supply-rules@1";

/** What `supply --rules-only` writes, for shards to read. */
interface RulesFile extends Found {
	readonly format: typeof format;
	readonly version: string;
	/** Of scenario and version: rules that differ in it are not those of this ward. */
	readonly fingerprint: string;
}

/** Name of the file in the folder that it is written to. */
export const rulesName = "rules.json";

/** The text of a file of rules. */
export function rulesText({ rules, orders, plenty }: Found, scenario: unknown, version: string): string {
	const fingerprint = fingerprintOf(scenario, version);
	return keptText({ format, version, fingerprint, rules, orders, plenty } satisfies RulesFile);
}

/** Reads the rules that were found for a ward elsewhere. Null, with a sentence in `problems`, where the file holds anything else. */
export function readRules(
	file: string,
	ward: WardScenario,
	scenario: unknown,
	version: string,
	problems: Problem[],
): Found | null {
	const other = (received: string) => {
		refuse(problems, fileName(file), "order rules that supply --rules-only wrote of this ward", received);
		return null;
	};
	const read = readKept<RulesFile>(file, "rules that were", (data) => data.format === format, other);
	if (read === null) return null;
	if (read.version !== version) return other("those of another version of slackwater");
	if (read.fingerprint !== fingerprintOf(scenario, version))
		return other("those of another scenario, seed or number of replications");
	const { rules, orders, plenty } = read;
	const found = { rules, orders, plenty };
	return foundFits(ward, found) ? found : other("numbers that do not fit");
}
