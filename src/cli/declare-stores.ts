import type { Command } from "commander";
import type { SupplyOptions } from "./supply-command.ts";

type Action = (
	files: readonly string[],
	options: SupplyOptions,
) => Promise<void>;

/** Declares the commands of the stores: a ward over weeks, and the parts of such a run. */
export function declareStores(
	program: Command,
	caution: string,
	actions: { readonly supply: Action; readonly gather: Action },
): void {
	const command = (name: string, operands: string, description: string) =>
		program
			.command(name)
			.usage(`[options] ${operands}`)
			.description(description)
			.helpOption("-h, --help", "print this help")
			.allowExcessArguments()
			.exitOverride()
			.option("--out <folder>", "folder of the report (default: out/NAME)")
			.option("--force", "overwrite the report of another scenario")
			.option(
				"--json",
				"print the result as JSON; without --out no file is written",
			)
			.option("--quiet", "say nothing but what went wrong");

	const supplying = command(
		"supply",
		"<file>",
		"simulates a ward over weeks: demand, stock, orders, cost",
	)
		.argument("[file]", "scenario file of a ward; - is standard input")
		.option("--seed <text>", "seed of chance")
		.option("--replications <n>", "how often the weeks are simulated")
		.option("--horizon <duration>", 'how many whole days, e.g. "8 w"')
		.option("--chance <on|off>", "whether anything is left to chance")
		.option("--workers <n>", "threads; the result is the same for any number")
		.option(
			"--shard <k/n>",
			"simulate only the k-th of n parts, and write it for gather",
		)
		.option(
			"--rules-only",
			"find the order rules, over all replications, and write them as rules.json for the shards",
		)
		.option(
			"--rules <file>",
			"order rules that --rules-only wrote; without it every shard finds them anew",
		)
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater supply scenarios/ward/hospital.yaml\n  slackwater supply ward.yaml --rules-only --out out/ward\n  slackwater supply ward.yaml --rules out/ward/rules.json --shard 2/10 --out out/ward`,
		);
	supplying.action(() =>
		actions.supply(supplying.args, supplying.opts<SupplyOptions>()),
	);

	const gathering = command(
		"gather",
		"<part...>",
		"puts the parts of a run together that was made on many machines",
	)
		.argument("[part...]", "parts that supply --shard wrote, in any order")
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater gather out/ward/part-*.json --out out/ward-whole`,
		);
	gathering.action(() =>
		actions.gather(gathering.args, gathering.opts<SupplyOptions>()),
	);
}
