import { Command, CommanderError } from "commander";
import { type Problem, UnusableInput } from "../scenario/reading/problem.ts";
import { type CommandEntry, commandList } from "./command-list.ts";
import { version } from "./files/own.ts";
import { declared, type Typed } from "./options/options.ts";
import { readWords } from "./options/words.ts";
import { type ExitStatus, explain } from "./terminal/failure.ts";

const caution = `
For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's
instructions and local policy come first.

Exit status:
  0    done
  1    it could not finish: a full disk, a fault of the program
  2    the input, an option or --out is unusable; every problem is listed, nothing is written
  130  interrupted (Ctrl-C); no half-written report is left`;

/** Runs the program on the words of a command line and returns its exit status. */
export async function run(words: readonly string[]): Promise<ExitStatus> {
	let status: ExitStatus = 0;
	let problems: Problem[] = [];
	const program = declare(async ({ run: obey }, command) => {
		status = await obey(command.args, command.opts<Typed>(), problems);
	});
	if (words.length === 0) {
		process.stderr.write(program.helpInformation());
		return 2;
	}
	try {
		const spoken = words[0] === "help" ? [...words.slice(1), "--help"] : words;
		if (asksTheProgram(spoken)) await parse(program, spoken);
		else {
			const read = readWords(program, spoken);
			problems = read.problems;
			const [command] = read.readable;
			const known = program.commands.some((one) => one.name() === command);
			if (known) await parse(program, read.readable);
			else throw new UnusableInput(problems);
		}
	} catch (error) {
		return explain(error);
	}
	return status;
}

/** Help and version of the program itself: no command is named. */
const asksTheProgram = (words: readonly string[]) =>
	words.every((word) => word.startsWith("-")) && words.some((word) => ["--help", "-h", "--version"].includes(word));

/** Lets commander read words in which nothing is left for it to complain of; having printed help or version it throws, which is no fault. */
async function parse(program: Command, words: readonly string[]): Promise<void> {
	try {
		await program.parseAsync(words, { from: "user" });
	} catch (error) {
		if (!(error instanceof CommanderError) || error.exitCode !== 0) throw error;
	}
}

const helpAfter = (examples: readonly string[], about = "") =>
	`${about}${caution}\n\nExamples:\n${examples.map((example) => `  ${example}`).join("\n")}`;

function declare(obey: (entry: CommandEntry, command: Command) => Promise<void>): Command {
	const program = new Command("slackwater")
		.description("Simulates a therapy day of suction, fill, dwell and drain under a foam dressing.")
		.usage("<command> [options]")
		.version(version(), "--version", "print the version")
		.helpOption("-h, --help", "print this help")
		.helpCommand(false)
		.configureHelp({ subcommandTerm: (command) => `${command.name()} ${command.usage()}` })
		.addHelpText(
			"after",
			helpAfter([
				"slackwater check scenarios/*.yaml",
				"slackwater day scenarios/thigh-short-dwell.yaml --out out/thigh",
			]),
		)
		.exitOverride();
	for (const entry of commandList) {
		// Operands are declared as if they could be left out or come in excess: the command says what is wrong with them, with all else.
		const command = program
			.command(entry.name)
			.usage(`[options] ${entry.operands}`)
			.description(entry.description)
			.helpOption("-h, --help", "print this help")
			.allowExcessArguments()
			.exitOverride()
			.argument(...entry.argument);
		for (const one of entry.options) {
			const [name, ownFlags, ownWords] = typeof one === "string" ? [one, null, null] : one;
			const [flags, words] = declared(name);
			command.option(ownFlags ?? flags, ownWords ?? words);
		}
		command.addHelpText("after", helpAfter(entry.examples, entry.about));
		command.action(() => obey(entry, command));
	}
	return program;
}
