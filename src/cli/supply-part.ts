import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { RuleResult, SupplyPart } from "../analysis/index.ts";
import type { Problem } from "../scenario/index.ts";
import { reasonOf } from "./failure.ts";
import { fileName } from "./quoted.ts";

/** A shard: the `number`-th of `of`, from 1. */
export interface Shard {
	readonly number: number;
	readonly of: number;
}

/** What a shard writes: format `slackwater/supply-part@1`. Holds all that `gather` needs, the scenario included. */
export interface SupplyPartFile {
	readonly format: "slackwater/supply-part@1";
	readonly version: string;
	readonly shard: Shard;
	/** Of scenario, version and number of shards: parts that differ in it are not of one run. */
	readonly fingerprint: string;
	/** The scenario with options and named files written into it. */
	readonly scenario: unknown;
	readonly rules: readonly (RuleResult | null)[];
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
	return createHash("sha256")
		.update(JSON.stringify([scenario, version, of]))
		.digest("hex")
		.slice(0, 16);
}

/** Reads part files and sees that they make one whole. Everything that is wrong is added to `problems`, by name. */
export function readParts(
	files: readonly string[],
	version: string,
	problems: Problem[],
): SupplyPartFile[] {
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
				received: `one of version ${part.version}`,
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
	for (let number = 1; number <= of; number++)
		if (!byNumber.has(number))
			problems.push({
				path: "gather",
				expected: `all ${of} shards`,
				received: `no shard ${number} of ${of}`,
			});
	return own.map(({ part }) => part);
}

function readPart(file: string, problems: Problem[]): SupplyPartFile | null {
	const refuse = (received: string) => {
		problems.push({
			path: fileName(file),
			expected: "a part that supply --shard wrote",
			received,
		});
		return null;
	};
	try {
		const data: unknown = JSON.parse(readFileSync(file, "utf8"));
		const part = data as Partial<SupplyPartFile> | null; // looked at before it is trusted
		const { shard } = part ?? {};
		if (
			part?.format !== "slackwater/supply-part@1" ||
			!Number.isInteger(shard?.number) ||
			!Number.isInteger(shard?.of) ||
			!Array.isArray(part.rules) ||
			!Array.isArray(part.part?.tallies) ||
			!Array.isArray(part.part.sums)
		)
			return refuse("something else");
		const whole = part as SupplyPartFile; // as far as was looked
		const { scenario, version, fingerprint } = whole;
		if (fingerprint !== fingerprintOf(scenario, version, whole.shard.of))
			return refuse("a part that was changed since");
		return whole;
	} catch (error) {
		return refuse(
			error instanceof SyntaxError ? "no JSON" : `nothing: ${reasonOf(error)}`,
		);
	}
}
