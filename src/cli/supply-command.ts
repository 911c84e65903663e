import { join } from "node:path";
import {
	mergedPart,
	orderRules,
	SupplyGathering,
	type SupplyPart,
	type SupplyResult,
	supplyResult,
	wardBlocks,
} from "../analysis/index.ts";
import { readQuantity } from "../physics/index.ts";
import { checkWard, type Problem, UnusableInput } from "../scenario/index.ts";
import { placedIn } from "./check-file.ts";
import { deliver } from "./deliver.ts";
import type { ExitStatus } from "./failure.ts";
import { oneFile } from "./one-file.ts";
import { readOptions, type TypedOptions } from "./options.ts";
import { fileName, quoted } from "./quoted.ts";
import { checkFolder } from "./report-folder.ts";
import { runWard, searchRules } from "./run-ward.ts";
import { scenarioStem } from "./scenario-stem.ts";
import {
	checkParts,
	fingerprintOf,
	isShard,
	partName,
	partText,
	readParts,
	type Shard,
	type SupplyPartFile,
	shardBlocks,
} from "./supply-part.ts";
import { readRules, rulesName, rulesText } from "./supply-rules.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { version } from "./version.ts";
import { readWardFile } from "./ward-file.ts";
import { writeFolder } from "./write-folder.ts";

export interface SupplyOptions extends TypedOptions {
	readonly shard?: string;
	/** A file of rules that were found before. */
	readonly rules?: string;
	readonly rulesOnly?: boolean;
}

/**
 * Simulates the weeks of a ward and writes its report folder; with `--shard` one part of the run, with `--rules-only` the
 * order rules that its parts share. `problems` are those of the command line. Throws UnusableInput with these and all others, CouldNotFinish.
 */
export async function supply(
	files: readonly string[],
	typed: SupplyOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const options = readOptions({ ...typed, horizon: undefined }, problems);
	checkHorizon(typed.horizon, problems);
	const shard = readShard(typed.shard, problems);
	const file = oneFile(
		"supply",
		files,
		"one scenario file of a ward",
		problems,
	);
	const read =
		file === undefined
			? null
			: readWardFile(file, {
					seed: options.seed,
					replications: options.replications,
					horizon: typed.horizon,
					chance:
						options.chance === undefined
							? undefined
							: options.chance
								? "on"
								: "off",
				});
	problems.push(...(read?.problems ?? []));
	const folder = folderOf(typed, file ?? "");
	if (folder !== null)
		await uninterrupted(() =>
			checkFolder(
				folder,
				"supply",
				read?.ward?.title ?? null,
				typed.force === true || shard !== null || typed.rulesOnly === true,
				problems,
			),
		);
	const ward = read?.ward ?? null;
	if (typed.rulesOnly === true && (shard !== null || typed.rules !== undefined))
		problems.push({
			path: "--rules-only",
			expected: "neither --shard nor --rules beside it",
			received: shard === null ? "--rules" : "--shard",
		});
	const known =
		ward === null || typed.rules === undefined
			? null
			: readRules(typed.rules, ward, read?.data, version(), problems);
	if (ward === null || problems.length > 0) throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const found = known ?? (await searchRules(ward, options.workers, quiet));
	if (typed.rulesOnly === true) {
		const text = rulesText(found, read?.data, version());
		return writeOne(folder, rulesName, text, "The order rules are", typed);
	}
	const parts: SupplyPart[] = [];
	const blocks = wardBlocks(ward);
	const span =
		shard === null ? ([0, blocks] as const) : shardBlocks(shard, blocks);
	const gathered = new SupplyGathering(ward);
	await runWard(
		ward,
		orderRules(found),
		span,
		options.workers,
		quiet,
		(part) => {
			if (shard === null) gathered.add(part);
			else parts.push(part);
		},
	);
	if (shard === null)
		return write(supplyResult(gathered, found, version()), folder, typed);

	const part: SupplyPartFile = {
		format: "slackwater/supply-part@1",
		version: version(),
		shard,
		fingerprint: fingerprintOf(read?.data, version(), shard.of),
		scenario: read?.data,
		...found,
		part: mergedPart(ward, parts, span[0]),
	};
	return writeOne(
		folder,
		partName(shard),
		partText(part),
		"The part is",
		typed,
	);
}

/** Writes one file into the folder, or prints it, or both. */
async function writeOne(
	folder: string | null,
	name: string,
	text: string,
	says: string,
	{ quiet, json }: SupplyOptions,
): Promise<ExitStatus> {
	if (folder !== null) {
		await uninterrupted(() => writeFolder(folder, { [name]: text }));
		if (quiet !== true && json !== true)
			process.stdout.write(`${says} in ${fileName(join(folder, name))}\n`);
	}
	if (json === true) process.stdout.write(text);
	return 0;
}

/**
 * Puts the parts of a run that was made on many machines together, in any order: the bytes are those of one run.
 * Throws UnusableInput with every part that is missing, repeated, foreign or unreadable.
 */
export async function gather(
	files: readonly string[],
	typed: SupplyOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	if (files.length === 0)
		problems.push({
			path: "gather",
			expected: "the parts that supply --shard wrote",
			received: "nothing",
		});
	const parts = readParts(files, version(), problems);
	const [first] = parts;
	const checked =
		first === undefined ? null : checkWard(JSON.stringify(first.part.scenario));
	problems.push(
		...placedIn(fileName(first?.file ?? ""), checked?.problems ?? []),
	);
	const ward = checked?.ward ?? null;
	if (ward !== null) checkParts(ward, parts, problems);
	const folder =
		typed.out ?? (typed.json === true ? null : join("out", "gathered"));
	if (folder !== null)
		await uninterrupted(() =>
			checkFolder(
				folder,
				"supply",
				ward?.title ?? null,
				typed.force === true,
				problems,
			),
		);
	if (ward === null || first === undefined || problems.length > 0)
		throw new UnusableInput(problems);
	const gathered = new SupplyGathering(ward);
	for (const { part } of parts) gathered.add(part.part);
	const result = supplyResult(gathered, first.part, version());
	return write(result, folder, typed);
}

async function write(
	result: SupplyResult,
	folder: string | null,
	typed: SupplyOptions,
): Promise<ExitStatus> {
	const { supplyJson } = await import("../report/supply-json.ts");
	await deliver(
		folder,
		{
			files: async () =>
				(await import("./supply-files.ts")).supplyFiles(result),
			json: () => supplyJson(result),
			spoken: async () =>
				(await import("../report/spoken.ts")).spokenSupply(result),
		},
		typed,
	);
	return 0;
}

function folderOf({ out, json }: SupplyOptions, file: string): string | null {
	if (out !== undefined) return out;
	if (json === true) return null;
	return join("out", scenarioStem(file) ?? "supply");
}

function readShard(
	text: string | undefined,
	problems: Problem[],
): Shard | null {
	if (text === undefined) return null;
	const [, number, of] = /^(\d{1,5})\/(\d{1,5})$/.exec(text) ?? [];
	const shard = { number: Number(number), of: Number(of) };
	if (isShard(shard)) return shard;
	problems.push({
		path: "--shard",
		expected: "which part of how many, such as 2/10",
		received: quoted(text),
	});
	return null;
}

const longestHorizonMin = 364 * 1440;

function checkHorizon(text: string | undefined, problems: Problem[]): void {
	if (text === undefined) return;
	const reading = readQuantity(text, "min");
	if (
		reading.ok &&
		reading.value > 0 &&
		reading.value <= longestHorizonMin &&
		reading.value % 1440 === 0
	)
		return;
	problems.push({
		path: "--horizon",
		expected: 'whole days up to 52 w, such as "8 w"',
		received: quoted(text),
	});
}
