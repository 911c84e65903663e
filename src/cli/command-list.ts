import { manual } from "../rehearsal/places/takings.ts";
import type { Problem } from "../scenario/reading/problem.ts";
import { axisNames } from "../vocabulary/index.ts";
import type { OptionName, Typed } from "./options/options.ts";
import type { ExitStatus } from "./terminal/failure.ts";

/** A command as its help tells of it, and what it does. */
export interface CommandEntry {
	readonly name: string;
	readonly operands: string;
	readonly description: string;
	readonly argument: readonly [name: string, words: string];
	/** In the order of the help; with words of its own where those of the option do not fit. */
	readonly options: readonly (OptionName | readonly [name: OptionName, flags: string | null, words: string])[];
	readonly about?: string;
	readonly examples: readonly string[];
	/** `problems` are those of the command line. */
	readonly run: (files: readonly string[], typed: Typed, problems: Problem[]) => Promise<ExitStatus>;
}

/** Of every command that runs a scenario. */
const running: CommandEntry["options"] = [
	...(["seed", "replications", "horizon", "chance", "workers"] as const),
	...(["out", "force", "json", "quiet"] as const),
];
/** Of those that tell of a ward. */
const gathering: CommandEntry["options"] = [
	["out", null, "folder of the report (default: out/NAME)"],
	...(["force", "json", "quiet"] as const),
];
const oneScenario = ["[file]", "scenario file, YAML or JSON; - is standard input"] as const;

export const commandList: readonly CommandEntry[] = [
	{
		name: "check",
		operands: "<file...>",
		description: "says whether scenario files are sound: every problem at once",
		argument: ["[file...]", "scenario files, YAML or JSON; - is standard input"],
		options: ["full", ["json", null, "print the problems as JSON"], ["quiet", null, "say nothing of sound files"]],
		examples: ["slackwater check my-ward/*.yaml", "slackwater check --full thigh.yaml > thigh-full.yaml"],
		run: async (...words) => (await import("./commands/check.ts")).check(...words),
	},
	{
		name: "day",
		operands: "<file>",
		description: "simulates the day and its replications, and writes a report",
		argument: oneScenario,
		options: [...running, "precision", "draw"],
		examples: [
			"slackwater day thigh.yaml",
			"slackwater day thigh.yaml --replications 6000 --workers 2 --out out/thigh",
			"slackwater day thigh.yaml --chance off --json > day.json",
		],
		run: async (...words) => (await import("./commands/day.ts")).day(...words),
	},
	{
		name: "compare",
		operands: "<file>",
		description: "sets the regimens of a scenario against each other, on the same random numbers",
		argument: oneScenario,
		options: [...running, "between", "measures", "precisionOfDifferences", "restsOn", "draw"],
		examples: [
			"slackwater compare thigh.yaml",
			"slackwater compare thigh.yaml --between short,long --measures washes,nightCalls,cost",
			"slackwater compare thigh.yaml --precision breaches=0.01 --json",
		],
		run: async (...words) => (await import("./commands/compare.ts")).compare(...words),
	},
	{
		name: "sweep",
		operands: "<file>",
		description: "runs a grid of regimens on the same random numbers, and maps what each gives",
		argument: oneScenario,
		options: [...running, ...axisNames, ["measures", null, "what to map, in this order"], "keep", "efficient", "curve"],
		examples: [
			'slackwater sweep thigh.yaml --dwell "2 min to 20 min by 2 min" --suction "1 h to 5 h by 30 min"',
			'slackwater sweep thigh.yaml --keep "nightCalls<0.5" --efficient meanExudateShare:lower,nurseMin',
		],
		run: async (...words) => (await import("./commands/sweep.ts")).sweep(...words),
	},
	{
		name: "drill",
		operands: "<file>",
		description: "rehearses a shift in which something hidden is wrong, and debriefs",
		argument: ["[file]", "scenario file with a rehearsal: part, or #case=…"],
		options: [
			"script",
			["seed", null, "seed: when causes come, or what is drawn"],
			"generate",
			"link",
			["out", null, "write report.html and debrief.json there"],
			"force",
			["json", null, "print the debrief as JSON and nothing else"],
			"quiet",
		],
		about: `
Without --script it asks at a terminal, and reads the acts from a pipe. The same seed and acts give the same debrief.

${manual}
`,
		examples: [
			"slackwater drill scenarios/rehearse-02.yaml",
			"printf 'next\\nlook suction-line\\n' | slackwater drill scenarios/rehearse-02.yaml",
			"slackwater drill scenarios/rehearse-02.yaml --script acts.txt --out out/drill",
			"slackwater drill scenarios/thigh-short-dwell.yaml --generate --seed tuesday --json < acts.txt",
		],
		run: async (...words) => (await import("./commands/drill.ts")).drill(...words),
	},
	{
		name: "page",
		operands: "[file...]",
		description:
			"writes the workbench: days, comparisons, stores and rehearsals in one HTML file that needs no network",
		argument: [
			"[file...]",
			"scenario files of a day and of a ward that it opens with, in any order (default: those of the demo)",
		],
		options: [
			["out", "--out <file>", "the file, or the folder it goes to (default: out/workbench.html)"],
			["force", null, "overwrite another file of that name"],
			"quiet",
		],
		examples: [
			"slackwater page",
			"slackwater page thigh.yaml --out ward/workbench.html",
			"slackwater page scenarios/ward/hospital.yaml",
		],
		run: async (...words) => (await import("./commands/page.ts")).page(...words),
	},
	{
		name: "supply",
		operands: "<file>",
		description: "simulates a ward over weeks: demand, stock, orders, cost",
		argument: ["[file]", "scenario file of a ward; - is standard input"],
		options: [
			...gathering,
			"seed",
			["replications", null, "how often the weeks are simulated"],
			...(["weeks", "chance", "workers", "shard", "rulesOnly", "rules"] as const),
		],
		examples: [
			"slackwater supply scenarios/ward/hospital.yaml",
			"slackwater supply ward.yaml --rules-only --out out/ward",
			"slackwater supply ward.yaml --rules out/ward/rules.json --shard 2/10 --out out/ward",
		],
		run: async (...words) => (await import("./commands/supply.ts")).supply(...words),
	},
	{
		name: "gather",
		operands: "<part...>",
		description: "puts the parts of a run together that was made on many machines",
		argument: ["[part...]", "parts that supply --shard wrote, in any order"],
		options: gathering,
		examples: ["slackwater gather out/ward/part-*.json --out out/ward-whole"],
		run: async (...words) => (await import("./commands/gather.ts")).gather(...words),
	},
];
