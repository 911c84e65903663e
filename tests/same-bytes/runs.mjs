// What is run: steps of words, standard input and the width of a terminal, with the files that they find in their folder.
import { readdirSync, readFileSync } from "node:fs";
import { acts, asked, scripts } from "./acts.mjs";
import { wrong } from "./wrong.mjs";

const folder = new URL("../../scenarios/", import.meta.url);
const textOf = (name) => readFileSync(new URL(name, folder), "utf8");
const all = readdirSync(folder, { recursive: true, encoding: "utf8" })
	.filter((name) => name.endsWith(".yaml") && /^slackwater:/mu.test(textOf(name)))
	.sort();
const wards = all.filter((name) => /^ward:/mu.test(textOf(name)));
const days = all.filter((name) => /^dressings:/mu.test(textOf(name)));
const drills = days.filter((name) => /^rehearsal:/mu.test(textOf(name)));
const path = (name) => `scenarios/${name}`;

/** Words as in a shell: blanks part them but within double quotes. */
const wordsOf = (line) => [...line.matchAll(/(?:[^\s"]|"[^"]*")+/gu)].map(([word]) => word.replaceAll('"', ""));
/** A name for a folder: the command, and what it was given. */
const named = (line) =>
	line
		.replaceAll("scenarios/", "")
		.replaceAll("/", "+")
		.replace(/(?<=^\S+) /u, "/");
const of = (line, rest = {}) => ({
	name: named(`${line}${rest.as ?? ""}`),
	steps: [{ words: wordsOf(line), ...rest }],
	files: rest.files,
});
const several = (name, lines, files) => ({
	name,
	steps: lines.map((line) => (typeof line === "string" ? { words: wordsOf(line) } : line)),
	files,
});

const helps = [
	"--help",
	"-h",
	"--version",
	"help",
	"",
	...["check", "day", "compare", "sweep", "supply", "gather", "drill", "page"].flatMap((command) => [
		`${command} --help`,
		`help ${command}`,
	]),
].map((line) => ({ ...of(line), name: `help/${line || "no word"}` }));

const checks = [
	...all.flatMap((name) =>
		["", " --full", " --json", " --quiet"].map((options) => of(`check ${path(name)}${options}`)),
	),
	...["", " --json", " --quiet"].map((options) => ({
		...of(`check ${all.map(path).join(" ")}${options}`),
		name: `check/all files${options}`,
	})),
];

const few = "--replications 40";
const short = "scenarios/thigh-short-dwell.yaml";
const twins = "scenarios/two-dressings.yaml";
const dayRuns = [
	...days.flatMap((name) =>
		[
			few,
			`${few} --json`,
			...(drills.includes(name) ? [] : [`${few} --chance off`, `${few} --horizon "48 h"`, `${few} --draw 7`]),
		].map((options) => of(`day ${path(name)} ${options}`)),
	),
	...[
		"--horizon 7d",
		'--horizon "90 min"',
		"--seed tuesday",
		"--workers 2",
		"--quiet",
		"--out here --json",
		"--precision toCanisterMl=20",
		"--draw 0",
	].map((options) => of(`day ${short} ${few} ${options}`)),
	of(`day ${short}`),
	of(`day - ${few}`, { input: textOf("heavy-slough.yaml"), as: " (slough)" }),
	several("day/over another's report", [
		`day ${short} ${few} --out here`,
		`day ${short} ${few} --out here --seed b`,
		`day ${twins} ${few} --out here`,
		`compare scenarios/compare-thigh.yaml ${few} --rests-on off --out here`,
		`day ${twins} ${few} --out here --force`,
	]),
];

/** A comparison for scenarios that have none of their own. */
const ownCompare = (name) => {
	const text = textOf(name);
	if (/^compare:/mu.test(text)) return text;
	return `${text}\ncompare:\n  sooner: { dwell: 4 min, suction: 90 min }\n  later: { dwell: 12 min, suction: 4 h }\n`;
};
const compares = [
	...days.flatMap((name) => {
		const files = { "compared.yaml": ownCompare(name) };
		const shown = drills.includes(name) ? ["--json"] : ["", "--json"];
		return shown.map((options) => ({
			...of(`compare compared.yaml --replications 30 --rests-on off ${options}`, { files }),
			name: named(`compare ${name} ${options}`),
		}));
	}),
	...days
		.filter((name) => /^compare:/mu.test(textOf(name)))
		.map((name) => of(`compare ${path(name)} --replications 12`)),
	...[
		"--json",
		"--rests-on on --between long,short",
		"--between short,again --json",
		"--measures washes,nightCalls,cost",
		"--precision breaches=0.2",
		"--draw 3",
		"--chance off",
		'--horizon "48 h"',
		"--seed b",
		"--workers 2",
		"--quiet",
		"--out here --json",
	].map((options) =>
		of(
			`compare scenarios/compare-thigh.yaml ${few} ${/rests-on|quiet/u.test(options) ? "" : "--rests-on off "}${options}`,
		),
	),
	of(`compare scenarios/compare-thigh.yaml --replications 220 --rests-on off`),
];

const grid = '--dwell "3 min, 8 min"';
const sweeps = [
	...days.map((name) =>
		of(`sweep ${path(name)} --replications 6 ${grid} --start "08:00, 20:00"${drills.includes(name) ? " --json" : ""}`),
	),
	...[
		`${grid} --json`,
		'--dwell "2 min to 20 min by 6 min" --suction "1 h to 4 h by 1 h"',
		'--dwell "2 min to 20 min by 6 min" --suction "1 h, 3 h" --curve suction',
		'--fill "40 mL, 60 mL, 80 mL" --curve fill',
		'--depth "-75 mmHg to -150 mmHg by 25 mmHg" --measures washes,wetMin',
		'--start "06:00, 08:00, 13:30"',
		`${grid} --keep "nightCalls<0.5, canisterLastsShift>=0.9"`,
		`${grid} --efficient meanExudateShare:lower,nurseMin`,
		`${grid} --efficient alarms,nurseMin,instilledMl:lower --chance off`,
		`${grid} --horizon "48 h" --seed b --workers 2 --quiet`,
	].map((options) => of(`sweep ${short} --replications 20 ${options}`)),
	...['--apart "0 min, 30 min, 60 min"', '--apart "0 min, 30 min" --start "07:00, 10:00" --json'].map((options) =>
		of(`sweep ${twins} --replications 12 ${options}`),
	),
	of("sweep scenarios/when-to-begin.yaml --replications 40"),
	of("sweep scenarios/sweep-thigh.yaml --replications 12 --keep nightCalls<0.25"),
];

const supplies = wards.flatMap((name) => {
	const ward = `supply ${path(name)} --replications 12`;
	return [
		...[
			"",
			" --json",
			" --chance off",
			' --horizon "4 w" --seed b',
			" --rules-only",
			" --rules-only --json",
			" --shard 2/3",
			" --shard 1/2 --json",
			" --workers 2 --out here --quiet",
		].map((options) => of(`${ward}${options}`)),
		several(named(`gather parts of ${name}`), [
			`${ward} --rules-only --out parts`,
			...["1/3", "3/3", "2/3"].map((shard) => `${ward} --rules parts/rules.json --shard ${shard} --out parts`),
			"gather parts/part-3-of-3.json parts/part-1-of-3.json parts/part-2-of-3.json --out whole",
			"gather parts/part-3-of-3.json parts/part-1-of-3.json parts/part-2-of-3.json --json",
			"gather parts/part-3-of-3.json parts/part-1-of-3.json parts/part-1-of-3.json parts/rules.json",
			`${ward} --rules parts/rules.json --seed b`,
		]),
	];
});

const drillRuns = [
	...drills.flatMap((name) => {
		const drill = `drill ${path(name)}`;
		return [
			...Object.entries(scripts).map(([as, input]) => of(drill, { input, as: ` (${as})` })),
			of(`${drill} --json`, { input: scripts.looks, as: " (looks)" }),
			of(`${drill} --out here`, { input: scripts.acts, as: " (acts)" }),
			of(`${drill} --seed b --script acts.txt --out here --json`, { files: { "acts.txt": acts } }),
			of(drill, { columns: 70, input: asked, as: " at a terminal" }),
			several(named(`${drill} --link and played`), [
				`${drill} --link`,
				{ words: (said) => ["drill", said.trim()], input: acts },
			]),
		];
	}),
	...days.flatMap((name) => {
		const drill = `drill ${path(name)} --generate --seed tuesday`;
		return [of(drill, { input: acts }), of(`${drill} --json`, { input: scripts.looks })];
	}),
];

const pages = [
	of("page"),
	of("page --out mine.html --quiet"),
	...all.map((name) => of(`page ${path(name)} --out here`)),
	...wards.map((name) => of(`page ${twins} ${path(name)}`)),
	several("page/over another's", [
		`page ${short} --out a.html`,
		`page ${twins} --out a.html`,
		`page ${twins} --out a.html --force`,
	]),
];

const terminals = [
	`check ${short} scenarios/abdomen-fistula.yaml`,
	`day ${short} ${few}`,
	`day ${twins} ${few} --chance off`,
	`day scenarios/abdomen-fistula.yaml ${few}`,
	`compare scenarios/compare-thigh.yaml ${few} --rests-on off`,
	"sweep scenarios/when-to-begin.yaml --replications 10",
	...wards.map((name) => `supply ${path(name)} --replications 4`),
	"page",
	"--help",
	`day ${short} --replicatons 3`,
].flatMap((line) =>
	[50, 100].map((columns) => ({
		...of(line, { columns }),
		name: `at a terminal/${named(line).replace("/", " ")} (${columns} columns)`,
	})),
);

const library = { name: "the library", steps: [{ script: "library.mjs", words: days.map(path) }] };

/** All runs, those of one command beside each other. */
export const runs = () => [
	...helps,
	...checks,
	...dayRuns,
	...compares,
	...sweeps,
	...supplies,
	...drillRuns,
	...pages,
	...terminals,
	...wrong(textOf).map(({ line, ...rest }) => ({
		...of(line, rest),
		name: `wrong/${named(line).replace("/", " ")}${rest.as ?? ""}`,
	})),
	library,
];
