import { Command, CommanderError } from "commander";
import { manual } from "../rehearsal/manual.ts";
import { type Problem, UnusableInput } from "../scenario/problem.ts";
import type { CheckOptions } from "./check-command.ts";
import type { TypedCompareOptions } from "./compare-command.ts";
import { declareStores } from "./declare-stores.ts";
import type { DrillOptions } from "./drill-command.ts";
import { type ExitStatus, explain } from "./failure.ts";
import type { TypedOptions } from "./options.ts";
import type { PageOptions } from "./page-command.ts";
import type { TypedSweepOptions } from "./sweep-options.ts";
import { version } from "./version.ts";
import { readWords } from "./words.ts";

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
	const program = declare(
		async (files, options) => {
			const { check } = await import("./check-command.ts");
			status = check(files, options, problems);
		},
		async (files, options) => {
			const { day } = await import("./day-command.ts");
			status = await day(files, options, problems);
		},
		async (files, options) => {
			const { compare } = await import("./compare-command.ts");
			status = await compare(files, options, problems);
		},
		async (files, options) => {
			const { sweep } = await import("./sweep-command.ts");
			status = await sweep(files, options, problems);
		},
		async (files, options) => {
			const { drill } = await import("./drill-command.ts");
			status = await drill(files, options, problems);
		},
		async (files, options) => {
			const { page } = await import("./page-command.ts");
			status = await page(files, options, problems);
		},
	);
	declareStores(program, caution, {
		supply: async (files, options) => {
			const { supply } = await import("./supply-command.ts");
			status = await supply(files, options, problems);
		},
		gather: async (files, options) => {
			const { gather } = await import("./supply-command.ts");
			status = await gather(files, options, problems);
		},
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
	words.every((word) => word.startsWith("-")) &&
	words.some((word) => ["--help", "-h", "--version"].includes(word));

/** Lets commander read words in which nothing is left for it to complain of; having printed help or version it throws, which is no fault. */
async function parse(
	program: Command,
	words: readonly string[],
): Promise<void> {
	try {
		await program.parseAsync(words, { from: "user" });
	} catch (error) {
		if (!(error instanceof CommanderError) || error.exitCode !== 0) throw error;
	}
}

type Action<O> = (files: readonly string[], options: O) => Promise<void>;

function declare(
	check: Action<CheckOptions>,
	day: Action<TypedOptions>,
	compare: Action<TypedCompareOptions>,
	sweep: Action<TypedSweepOptions>,
	drill: Action<DrillOptions>,
	page: Action<PageOptions>,
): Command {
	const program = new Command("slackwater")
		.description(
			"Simulates a therapy day of suction, fill, dwell and drain under a foam dressing.",
		)
		.usage("<command> [options]")
		.version(version(), "--version", "print the version")
		.helpOption("-h, --help", "print this help")
		.helpCommand(false)
		.configureHelp({
			subcommandTerm: (command) => `${command.name()} ${command.usage()}`,
		})
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater check scenarios/*.yaml\n  slackwater day scenarios/thigh-short-dwell.yaml --out out/thigh`,
		)
		.exitOverride();
	// Operands are declared as if they could be left out or come in excess: the command says what is wrong with them, with all else.
	const command = (name: string, operands: string, description: string) =>
		program
			.command(name)
			.usage(`[options] ${operands}`)
			.description(description)
			.helpOption("-h, --help", "print this help")
			.allowExcessArguments()
			.exitOverride();

	const checking = command(
		"check",
		"<file...>",
		"says whether scenario files are sound: every problem at once",
	)
		.argument("[file...]", "scenario files, YAML or JSON; - is standard input")
		.option(
			"--full",
			"print the scenario with every default filled in and where it comes from",
		)
		.option("--json", "print the problems as JSON")
		.option("--quiet", "say nothing of sound files")
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater check my-ward/*.yaml\n  slackwater check --full thigh.yaml > thigh-full.yaml`,
		);
	checking.action(() => check(checking.args, checking.opts<CheckOptions>()));

	/** What every command that runs a scenario takes. */
	const running = (name: string, description: string) =>
		command(name, "<file>", description)
			.argument("[file]", "scenario file, YAML or JSON; - is standard input")
			.option("--seed <text>", "seed of chance")
			.option("--replications <n>", "how many days to draw")
			.option("--horizon <duration>", 'how long the day is, e.g. "48 h"')
			.option("--chance <on|off>", "whether anything is left to chance")
			.option("--workers <n>", "threads; the result is the same for any number")
			.option("--out <folder>", "folder of the report (default: in out/)")
			.option("--force", "overwrite the report of another scenario")
			.option(
				"--json",
				"print the result as JSON; without --out no file is written",
			)
			.option("--quiet", "say nothing but what went wrong");

	const daying = running(
		"day",
		"simulates the day and its replications, and writes a report",
	)
		.option(
			"--precision <list>",
			"run until the means of totals have these half-widths, e.g. toCanisterMl=5",
		)
		.option(
			"--draw <n>",
			"draw this replication, counted from 0, instead of the typical one",
		)
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater day thigh.yaml\n  slackwater day thigh.yaml --replications 6000 --workers 2 --out out/thigh\n  slackwater day thigh.yaml --chance off --json > day.json`,
		);
	daying.action(() => day(daying.args, daying.opts<TypedOptions>()));

	const comparing = running(
		"compare",
		"sets the regimens of a scenario against each other, on the same random numbers",
	)
		.option("--between <names>", "only these regimens, in this order")
		.option("--measures <list>", "what to show, in this order")
		.option(
			"--precision <list>",
			"run until differences have these half-widths, e.g. nightCalls=0.05",
		)
		.option(
			"--rests-on <on|off>",
			"whether every assumption is halved and doubled too (default: on)",
		)
		.option(
			"--draw <n>",
			"draw this replication, counted from 0, instead of the typical one",
		)
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater compare thigh.yaml\n  slackwater compare thigh.yaml --between short,long --measures washes,nightCalls,cost\n  slackwater compare thigh.yaml --precision breaches=0.01 --json`,
		);
	comparing.action(() =>
		compare(comparing.args, comparing.opts<TypedCompareOptions>()),
	);

	const sweeping = running(
		"sweep",
		"runs a grid of regimens on the same random numbers, and maps what each gives",
	)
		.option(
			"--dwell <values>",
			'e.g. "2 min, 5 min" or "2 min to 20 min by 2 min"',
		)
		.option(
			"--suction <values>",
			'suction periods, e.g. "2 h to 4 h by 30 min"',
		)
		.option("--fill <values>", 'e.g. "40 mL, 60 mL"')
		.option("--depth <values>", 'e.g. "-75 mmHg to -150 mmHg by 25 mmHg"')
		.option(
			"--start <values>",
			'clock times of the first phase, e.g. "06:00, 08:00"',
		)
		.option("--apart <values>", "how far dressings are out of step")
		.option("--measures <list>", "what to map, in this order")
		.option(
			"--keep <list>",
			'what a regimen must keep, e.g. "nightCalls<0.5, canisterLastsShift>=0.9"',
		)
		.option(
			"--efficient <list>",
			"two or three measures whose best trade-offs are sought",
		)
		.option("--curve <axis>", "the axis whose response is drawn as a curve")
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater sweep thigh.yaml --dwell "2 min to 20 min by 2 min" --suction "1 h to 5 h by 30 min"\n  slackwater sweep thigh.yaml --keep "nightCalls<0.5" --efficient meanExudateShare:lower,nurseMin`,
		);
	sweeping.action(() =>
		sweep(sweeping.args, sweeping.opts<TypedSweepOptions>()),
	);
	const drilling = command(
		"drill",
		"<file>",
		"rehearses a shift in which something hidden is wrong, and debriefs",
	)
		.argument("[file]", "scenario file with a rehearsal: part, or #case=…")
		.option(
			"--script <file>",
			"play a list of acts instead of asking; - is standard input",
		)
		.option("--seed <text>", "seed: when causes come, or what is drawn")
		.option("--generate", "draw new causes for this dressing from the seed")
		.option(
			"--link",
			"print the case as a link's fragment, not readable at a glance; it is no secret",
		)
		.option("--out <folder>", "write report.html and debrief.json there")
		.option("--force", "overwrite the report of another scenario")
		.option("--json", "print the debrief as JSON and nothing else")
		.option("--quiet", "say nothing but what went wrong")
		.addHelpText(
			"after",
			`
Without --script it asks at a terminal, and reads the acts from a pipe. The same seed and acts give the same debrief.

${manual}
${caution}

Examples:
  slackwater drill scenarios/rehearse-02.yaml
  printf 'next\\nlook suction-line\\n' | slackwater drill scenarios/rehearse-02.yaml
  slackwater drill scenarios/rehearse-02.yaml --script acts.txt --out out/drill
  slackwater drill scenarios/thigh-short-dwell.yaml --generate --seed tuesday --json < acts.txt`,
		);
	drilling.action(() => drill(drilling.args, drilling.opts<DrillOptions>()));
	const paging = command(
		"page",
		"[file...]",
		"writes the workbench: days, comparisons, stores and rehearsals in one HTML file that needs no network",
	)
		.argument(
			"[file...]",
			"scenario files of a day and of a ward that it opens with, in any order (default: those of the demo)",
		)
		.option(
			"--out <file>",
			"the file, or the folder it goes to (default: out/workbench.html)",
		)
		.option("--force", "overwrite another file of that name")
		.option("--quiet", "say nothing but what went wrong")
		.addHelpText(
			"after",
			`${caution}\n\nExamples:\n  slackwater page\n  slackwater page thigh.yaml --out ward/workbench.html\n  slackwater page scenarios/ward/hospital.yaml`,
		);
	paging.action(() => page(paging.args, paging.opts<PageOptions>()));
	return program;
}
