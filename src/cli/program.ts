import { Command, CommanderError } from "commander";
import { type ExitStatus, explain } from "./failure.ts";
import type { TypedOptions } from "./options.ts";
import { version } from "./version.ts";

const caution = `
For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's
instructions and local policy come first.
Exit status: 0 done; 2 the input, an option or --out is unusable; 1 it could not finish.`;

/** Runs the program on the words of a command line and returns its exit status. */
export async function run(words: readonly string[]): Promise<ExitStatus> {
	let status: ExitStatus = 0;
	const program = new Command("slackwater")
		.description(
			"Simulates a therapy day of suction, fill, dwell and drain under a foam dressing.",
		)
		.version(version(), "--version", "print the version")
		.helpOption("--help", "print this help")
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater check scenarios/*.yaml\n  slackwater day scenarios/thigh-short-dwell.yaml --out out/thigh`,
		)
		.exitOverride()
		.configureOutput({ writeErr: () => {}, outputError: () => {} });
	const command = (name: string, description: string, examples: string) =>
		program
			.command(name)
			.description(description)
			.helpOption("--help", "print this help")
			.addHelpText("after", `${caution}\n\nExamples:\n${examples}`)
			.exitOverride()
			.configureOutput({ writeErr: () => {}, outputError: () => {} });

	command(
		"check",
		"says whether scenario files are sound: every problem at once",
		"  slackwater check my-ward/*.yaml\n  slackwater check --full thigh.yaml > thigh-full.yaml",
	)
		.argument("<file...>", "scenario files, YAML or JSON")
		.option(
			"--full",
			"print the scenario with every default filled in and where it comes from",
		)
		.option("--json", "print the problems as JSON")
		.option("--quiet", "say nothing of sound files")
		.action(
			async (
				files: string[],
				options: { full?: boolean; json?: boolean; quiet?: boolean },
			) => {
				const { check } = await import("./check-command.ts");
				status = check(files, options);
			},
		);

	command(
		"day",
		"simulates the day and its replications, and writes a report",
		"  slackwater day thigh.yaml\n  slackwater day thigh.yaml --replications 6000 --workers 2 --out out/thigh\n  slackwater day thigh.yaml --chance off --json > day.json",
	)
		.argument("<file>", "scenario file, YAML or JSON")
		.option("--seed <text>", "seed of chance")
		.option("--replications <n>", "how many days to draw")
		.option("--horizon <duration>", 'how long the day is, e.g. "48 h"')
		.option("--chance <on|off>", "whether anything is left to chance")
		.option("--workers <n>", "threads; the result is the same for any number")
		.option("--out <folder>", "folder of the report (default: out/NAME)")
		.option("--force", "overwrite the report of another scenario")
		.option(
			"--json",
			"print the result as JSON; without --out no file is written",
		)
		.option("--quiet", "say nothing but what went wrong")
		.action(async (file: string, options: TypedOptions) => {
			const { day } = await import("./day-command.ts");
			status = await day(file, options);
		});

	try {
		await program.parseAsync(words, { from: "user" });
	} catch (error) {
		if (!(error instanceof CommanderError)) return explain(error);
		if (error.exitCode === 0) return 0;
		if (error.code === "commander.help") {
			process.stderr.write(program.helpInformation());
			return 2;
		}
		process.stderr.write(
			`slackwater: ${error.message.replace(/^error: /, "")}\n`,
		);
		return 2;
	}
	return status;
}
