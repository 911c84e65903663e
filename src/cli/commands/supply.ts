import { join } from "node:path";
import { checkWard, type Problem, UnusableInput, type WardOverrides } from "../../scenario/index.ts";
import type { SupplyPart } from "../../studies/index.ts";
import { mergedPart, orderRules, SupplyGathering, supplyResult, wardBlocks } from "../../studies/index.ts";
import { version } from "../files/own.ts";
import { folderFor } from "../files/report-folder.ts";
import { beside, checkedFile, oneFile, scenarioStem } from "../files/scenario-files.ts";
import { writeFolder } from "../files/write-folder.ts";
import { reader, type Typed } from "../options/options.ts";
import { readOverrides } from "../options/overrides.ts";
import { type ExitStatus, refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { runWard, searchRules } from "../threads/run-ward.ts";
import { delivery } from "./deliver.ts";
import { partName, partText, shardBlocks } from "./supply-part.ts";
import { readRules, rulesName, rulesText } from "./supply-rules.ts";

/**
 * Simulates the weeks of a ward and writes its report folder; with `--shard` one part of the run, with `--rules-only` the
 * order rules that its parts share. `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function supply(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const read = reader(typed, problems);
	const options = readOverrides({ ...typed, horizon: undefined }, problems);
	read("weeks"); // the ward's file reads the text again, beside its own
	const shard = read("shard") ?? null;
	const rulesOnly = typed.rulesOnly === true;
	const file = oneFile("supply", files, "one scenario file of a ward", problems);
	const over: WardOverrides = {
		seed: options.seed,
		replications: options.replications,
		horizon: typed.horizon,
		chance: options.chance === undefined ? undefined : options.chance ? "on" : "off",
	};
	const input = file === undefined ? null : checkedFile(file, (text) => checkWard(text, beside(file), over));
	problems.push(...(input?.problems ?? []));
	const ward = input?.ward ?? null;
	const usual = scenarioStem(file ?? "") ?? "supply";
	const forced = { ...typed, force: typed.force === true || shard !== null || rulesOnly };
	const folder = await folderFor("supply", forced, usual, ward?.title ?? null, problems);
	if (rulesOnly && (shard !== null || typed.rules !== undefined))
		refuse(problems, "--rules-only", "neither --shard nor --rules beside it", shard === null ? "--rules" : "--shard");
	const known =
		ward === null || typed.rules === undefined ? null : readRules(typed.rules, ward, input?.data, version(), problems);
	if (ward === null || problems.length > 0) throw new UnusableInput(problems);

	const found = known ?? (await searchRules(ward, options));
	if (rulesOnly)
		return writeOne(folder, rulesName, rulesText(found, input?.data, version()), "The order rules are", typed);
	const run = (span: readonly [number, number], take: (part: SupplyPart) => void) =>
		runWard(ward, orderRules(found), span, options, take);
	if (shard === null) {
		const gathered = new SupplyGathering(ward);
		await run([0, wardBlocks(ward)], (part) => gathered.add(part));
		return delivery(folder, typed, false)({ kind: "supply", result: supplyResult(gathered, found, version()) });
	}
	const parts: SupplyPart[] = [];
	const span = shardBlocks(shard, wardBlocks(ward));
	await run(span, (part) => parts.push(part));
	const text = partText(shard, input?.data, version(), found, mergedPart(ward, parts, span[0]));
	return writeOne(folder, partName(shard), text, "The part is", typed);
}

/** Writes one file into the folder, or prints it, or both. */
async function writeOne(
	folder: string | null,
	name: string,
	text: string,
	says: string,
	{ quiet, json }: Typed,
): Promise<ExitStatus> {
	if (folder !== null) {
		await writeFolder(folder, { [name]: text });
		if (quiet !== true && json !== true) process.stdout.write(`${says} in ${fileName(join(folder, name))}\n`);
	}
	if (json === true) process.stdout.write(text);
	return 0;
}
