import { readFileSync } from "node:fs";
import {
	type Found,
	foundFits,
	partFits,
	type SupplyPart,
	wardBlocks,
} from "../analysis/index.ts";
import type { Problem, WardScenario } from "../scenario/index.ts";
import { digest, shortDigest } from "./digest.ts";
import { reasonOf } from "./failure.ts";
import { fileName, quoted } from "./quoted.ts";

/** A shard: the `number`-th of `of`, from 1. */
export interface Shard {
	readonly number: number;
	readonly of: number;
}

/** What a shard writes: format `slackwater/supply-part@1`. Holds all that `gather` needs, the scenario included. */
export interface SupplyPartFile extends Found {
	readonly format: "slackwater/supply-part@1";
	readonly version: string;
	readonly shard: Shard;
	/** Of scenario, version and number of shards: parts that differ in it are not of one run. */
	readonly fingerprint: string;
	/** The scenario with options and named files written into it. */
	readonly scenario: unknown;
	readonly part: SupplyPart;
}

export const partName = ({ number, of }: Shard): string =>
	`part-${number}-of-${of}.json`;

/** The blocks of a shard: as even as whole blocks allow, in order. */
export function shardBlocks(
	{ number, of }: Shard,
	blocks: number,
): readonly [first: number, last: number] {
	return [
		Math.floor(((number - 1) * blocks) / of),
		Math.floor((number * blocks) / of),
	];
}

export function fingerprintOf(
	scenario: unknown,
	version: string,
	of: number,
): string {
	return shortDigest(JSON.stringify([scenario, version, of]));
}

/** A part file's text: closed with a checksum of all that stands before it, so that what was damaged on its way is noticed. */
export function partText(part: SupplyPartFile): string {
	return `${JSON.stringify({ ...part, checksum: checksumOf(part) })}\n`;
}

const checksumOf = (part: unknown) => digest(JSON.stringify(part));

/** A part that was read, and where from. */
export interface ReadPart {
	readonly file: string;
	readonly part: SupplyPartFile;
}

/** Reads part files and sees that they make one whole. Everything that is wrong is added to `problems`, by name. */
export function readParts(
	files: readonly string[],
	version: string,
	problems: Problem[],
): ReadPart[] {
	const read = files.flatMap((file) => {
		const part = readPart(file, problems);
		return part === null ? [] : [{ file, part }];
	});
	// The run that most parts are of; a stray one is the stranger, wherever it stands.
	const votes = new Map<string, number>();
	for (const { part } of read)
		votes.set(part.fingerprint, (votes.get(part.fingerprint) ?? 0) + 1);
	const [most] = [...votes].sort((a, b) => b[1] - a[1]);
	const own = read.filter(({ part }) => part.fingerprint === most?.[0]);
	for (const { file, part } of read) {
		if (part.version !== version)
			problems.push({
				path: fileName(file),
				expected: `a part written by version ${version}`,
				received: `one of version ${quoted(part.version)}`,
			});
		if (part.fingerprint !== most?.[0])
			problems.push({
				path: fileName(file),
				expected: `a part of the same run as ${fileName(own[0]?.file ?? "")}`,
				received: `shard ${part.shard.number} of ${part.shard.of} of another scenario, seed or number of shards`,
			});
	}
	const byNumber = new Map<number, string>();
	for (const { file, part } of own) {
		const before = byNumber.get(part.shard.number);
		if (before === undefined) byNumber.set(part.shard.number, file);
		else
			problems.push({
				path: fileName(file),
				expected: "each shard once",
				received: `shard ${part.shard.number} of ${part.shard.of} again (${fileName(before)} has it)`,
			});
	}
	const of = own[0]?.part.shard.of ?? 0;
	for (const missing of gaps(byNumber, of))
		problems.push({
			path: "gather",
			expected: `all ${of} shards`,
			received: `no ${missing} of ${of}`,
		});
	return own;
}

/** The numbers up to `of` that are not there; those that follow each other are one line. */
function gaps(there: ReadonlyMap<number, string>, of: number): string[] {
	const lines: string[] = [];
	let before = 0;
	for (const number of [...there.keys(), of + 1].sort((a, b) => a - b)) {
		if (number === before + 2) lines.push(`shard ${before + 1}`);
		else if (number > before + 2)
			lines.push(`shards ${before + 1} to ${number - 1}`);
		before = number;
	}
	return lines;
}

/** Looks whether what the parts hold can be the shards of `ward` that they say they are; what cannot be is added to `problems`. */
export function checkParts(
	ward: WardScenario,
	parts: readonly ReadPart[],
	problems: Problem[],
): void {
	const [{ file: first, part: model }] = parts;
	const found = foundText(model);
	for (const { file, part } of parts) {
		const { shard } = part;
		const [from, to] = shardBlocks(shard, wardBlocks(ward));
		if (!foundFits(ward, part) || !partFits(ward, part.part, from, to))
			problems.push({
				path: fileName(file),
				expected: `what shard ${shard.number} of ${shard.of} can come to`,
				received: "numbers that do not fit",
			});
		else if (foundText(part) !== found)
			problems.push({
				path: fileName(file),
				expected: `the order rules of ${fileName(first)}`,
				received: "others",
			});
	}
}

const foundText = ({ rules, orders, plenty }: Found): string =>
	JSON.stringify([rules, orders, plenty]);

function readPart(file: string, problems: Problem[]): SupplyPartFile | null {
	const refuse = (received: string) => {
		problems.push({
			path: fileName(file),
			expected: "a part that supply --shard wrote",
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
	try {
		const data: unknown = JSON.parse(text);
		if (!isPart(data)) return refuse("something else");
		const { checksum, ...part } = data;
		const { scenario, version, shard } = part;
		return checksum === checksumOf(part) &&
			part.fingerprint === fingerprintOf(scenario, version, shard.of)
			? part
			: refuse("a part that was changed since");
	} catch {
		return refuse("no JSON"); // or too deep to be gone through
	}
}

/** Whether data has the outer form of a part; what its numbers are is looked at when its ward is known. */
function isPart(
	data: unknown,
): data is SupplyPartFile & { readonly checksum: unknown } {
	const part = data as Partial<Record<keyof SupplyPartFile, unknown>> | null;
	const { number, of } = (part?.shard ?? {}) as Partial<Shard>;
	return (
		part?.format === "slackwater/supply-part@1" &&
		typeof part.version === "string" &&
		typeof part.fingerprint === "string" &&
		typeof part.scenario === "object" &&
		Array.isArray(part.rules) &&
		isShard({ number, of })
	);
}

/** Shards of a run, at the most. */
const mostShards = 99_999;

export function isShard(data: {
	readonly number?: unknown;
	readonly of?: unknown;
}): data is Shard {
	const { number, of } = data;
	return (
		Number.isInteger(number) &&
		Number.isInteger(of) &&
		Number(number) >= 1 &&
		Number(number) <= Number(of) &&
		Number(of) <= mostShards
	);
}
