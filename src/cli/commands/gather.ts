import { checkWard, type Problem, UnusableInput } from "../../scenario/index.ts";
import { SupplyGathering, supplyResult } from "../../studies/index.ts";
import { version } from "../files/own.ts";
import { folderFor } from "../files/report-folder.ts";
import { placedIn } from "../files/scenario-files.ts";
import type { Typed } from "../options/options.ts";
import { type ExitStatus, refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { delivery } from "./deliver.ts";
import { checkParts, readParts } from "./supply-part.ts";

/**
 * Puts the parts of a run that was made on many machines together, in any order: the bytes are those of one run.
 * Throws UnusableInput with every part that is missing, repeated, foreign or unreadable.
 */
export async function gather(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	if (files.length === 0) refuse(problems, "gather", "the parts that supply --shard wrote", "nothing");
	const parts = readParts(files, version(), problems);
	const [first] = parts;
	const checked = first === undefined ? null : checkWard(JSON.stringify(first.part.scenario));
	problems.push(...placedIn(fileName(first?.file ?? ""), checked?.problems ?? []));
	const ward = checked?.ward ?? null;
	if (ward !== null) checkParts(ward, parts, problems);
	const folder = await folderFor("supply", typed, "gathered", ward?.title ?? null, problems);
	if (ward === null || first === undefined || problems.length > 0) throw new UnusableInput(problems);
	const gathered = new SupplyGathering(ward);
	for (const { part } of parts) gathered.add(part.part);
	return delivery(folder, typed, false)({ kind: "supply", result: supplyResult(gathered, first.part, version()) });
}
