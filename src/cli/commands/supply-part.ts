import type { Problem, WardScenario } from "../../scenario/index.ts";
import { type Found, foundFits, partFits, type SupplyPart, wardBlocks } from "../../studies/index.ts";
import { fingerprintOf, keptText, readKept } from "../files/kept-file.ts";
import { isShard, type Shard } from "../options/values.ts";
import { refuse } from "../terminal/failure.ts";
import { fileName, quoted } from "../terminal/quoted.ts";

const format = "slackwater/supply-part@1";

/** What a shard writes. Holds all that `gather` needs, the scenario included. */
interface SupplyPartFile extends Found {
	readonly format: typeof format;
	readonly version: string;
	readonly shard: Shard;
	/** Of scenario, version and number of shards: parts that differ in it are not of one run. */
	readonly fingerprint: string;
	/** The scenario with options and named files written into it. */
	readonly scenario: unknown;
	readonly part: SupplyPart;
}

export const partName = ({ number, of }: Shard): string => `part-${number}-of-${of}.json`;

const shardText = ({ shard: { number, of } }: SupplyPartFile): string => `shard ${number} of ${of}`;

/** The blocks of a shard: as even as whole blocks allow, in order. */
export function shardBlocks({ number, of }: Shard, blocks: number): readonly [first: number, last: number] {
	return [Math.floor(((number - 1) * blocks) / of), Math.floor((number * blocks) / of)];
}

/** The text of the file of a part. */
export function partText(shard: Shard, scenario: unknown, version: string, found: Found, part: SupplyPart): string {
	const fingerprint = fingerprintOf(scenario, version, shard.of);
	return keptText({ format, version, shard, fingerprint, scenario, ...found, part } satisfies SupplyPartFile);
}

/** A part that was read, and where from. */
export interface ReadPart {
	readonly file: string;
	readonly part: SupplyPartFile;
}

/** Reads part files and sees that they make one whole. Everything that is wrong is added to `problems`, by name. */
export function readParts(files: readonly string[], version: string, problems: Problem[]): ReadPart[] {
	const read = files.flatMap((file) => {
		const part = readPart(file, problems);
		return part === null ? [] : [{ file, part }];
	});
	// The run that most parts are of; a stray one is the stranger, wherever it stands.
	const votes = new Map<string, number>();
	for (const { part } of read) votes.set(part.fingerprint, (votes.get(part.fingerprint) ?? 0) + 1);
	const [most] = [...votes].sort((a, b) => b[1] - a[1]);
	const own = read.filter(({ part }) => part.fingerprint === most?.[0]);
	const model = `a part of the same run as ${fileName(own[0]?.file ?? "")}`;
	for (const { file, part } of read) {
		const wrong = (expected: string, received: string) => refuse(problems, fileName(file), expected, received);
		if (part.version !== version)
			wrong(`a part written by version ${version}`, `one of version ${quoted(part.version)}`);
		if (part.fingerprint !== most?.[0])
			wrong(model, `${shardText(part)} of another scenario, seed or number of shards`);
	}
	const byNumber = new Map<number, string>();
	for (const { file, part } of own) {
		const before = byNumber.get(part.shard.number);
		if (before === undefined) byNumber.set(part.shard.number, file);
		else refuse(problems, fileName(file), "each shard once", `${shardText(part)} again (${fileName(before)} has it)`);
	}
	const of = own[0]?.part.shard.of ?? 0;
	for (const missing of gaps(byNumber, of)) refuse(problems, "gather", `all ${of} shards`, `no ${missing} of ${of}`);
	return own;
}

/** The numbers up to `of` that are not there; those that follow each other are one line. */
function gaps(there: ReadonlyMap<number, string>, of: number): string[] {
	const lines: string[] = [];
	let before = 0;
	for (const number of [...there.keys(), of + 1].sort((a, b) => a - b)) {
		if (number === before + 2) lines.push(`shard ${before + 1}`);
		else if (number > before + 2) lines.push(`shards ${before + 1} to ${number - 1}`);
		before = number;
	}
	return lines;
}

/** Looks whether what the parts hold can be the shards of `ward` that they say they are; what cannot be is added to `problems`. */
export function checkParts(ward: WardScenario, parts: readonly ReadPart[], problems: Problem[]): void {
	const [{ file: first, part: model }] = parts;
	const found = foundText(model);
	for (const { file, part } of parts) {
		const [from, to] = shardBlocks(part.shard, wardBlocks(ward));
		if (!foundFits(ward, part) || !partFits(ward, part.part, from, to))
			refuse(problems, fileName(file), `what ${shardText(part)} can come to`, "numbers that do not fit");
		else if (foundText(part) !== found)
			refuse(problems, fileName(file), `the order rules of ${fileName(first)}`, "others");
	}
}

const foundText = ({ rules, orders, plenty }: Found): string => JSON.stringify([rules, orders, plenty]);

function readPart(file: string, problems: Problem[]): SupplyPartFile | null {
	const other = (received: string) => {
		refuse(problems, fileName(file), "a part that supply --shard wrote", received);
		return null;
	};
	const part = readKept<SupplyPartFile>(file, "a part that was", hasForm, other);
	if (part === null) return null;
	const { scenario, version, shard, fingerprint } = part;
	return fingerprint === fingerprintOf(scenario, version, shard.of) ? part : other("a part that was changed since");
}

/** Whether data has the outer form of a part; what its numbers are is looked at when its ward is known. */
const hasForm = (data: Partial<Record<keyof SupplyPartFile, unknown>>): boolean =>
	data.format === format &&
	typeof data.version === "string" &&
	typeof data.fingerprint === "string" &&
	typeof data.scenario === "object" &&
	Array.isArray(data.rules) &&
	isShard(data.shard ?? {});
