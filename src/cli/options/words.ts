import type { Command, Option } from "commander";
import { nearest } from "../../scenario/reading/nearest.ts";
import type { Problem } from "../../scenario/reading/problem.ts";
import { refuse } from "../terminal/failure.ts";
import { quoted } from "../terminal/quoted.ts";

/** A command line, looked over before it is obeyed. */
export interface Words {
	/** What can be obeyed: the command that was meant, its known options with their values, what else was named. */
	readonly readable: readonly string[];
	readonly problems: Problem[];
}

/**
 * Finds everything that is wrong with the words of a command line, where commander would stop at the first fault. Where
 * the command itself is misspelt its nearest stands in, so that the rest can be looked at too; null where none is near.
 */
export function readWords(program: Command, words: readonly string[]): Words {
	const problems: Problem[] = [];
	const at = words.findIndex((word) => !word.startsWith("-"));
	const command = commandMeant(program, words[at], problems);
	const others = words.filter((_, index) => index !== at);
	const { commands } = program;
	const options = [...(command === null ? commands : [command]).flatMap((one) => one.options), ...program.options];
	const kept = readOptionWords(others, options, command?.name() ?? program.name(), problems);
	return { readable: command === null ? kept : [command.name(), ...kept], problems };
}

function commandMeant(program: Command, typed: string | undefined, problems: Problem[]): Command | null {
	const names = program.commands.map((command) => command.name());
	const named = (name: string | undefined) => program.commands.find((command) => command.name() === name) ?? null;
	const exact = named(typed);
	if (exact !== null) return exact;
	const near = typed === undefined ? undefined : nearest(typed, names);
	const received = typed === undefined ? "nothing" : quoted(typed);
	refuse(problems, "the command", `one of ${names.join(", ")}`, received, near);
	return named(near);
}

/** The words without those that no option and no value of one can be made of. */
function readOptionWords(
	words: readonly string[],
	options: readonly Option[],
	command: string,
	problems: Problem[],
): string[] {
	const known = (flag: string | undefined) =>
		flag === undefined ? undefined : options.find(({ long, short }) => long === flag || short === flag);
	const help = ["--help", "-h"];
	const kept: string[] = [];
	for (let at = 0; at < words.length; at++) {
		const word = words[at] ?? "";
		if (word === "--") return [...kept, ...words.slice(at)];
		if (!word.startsWith("-") || word === "-" || help.includes(word)) {
			kept.push(word);
			continue;
		}
		const cut = word.indexOf("=");
		const flag = cut < 0 ? word : word.slice(0, cut);
		const option = known(flag);
		if (option === undefined) {
			const meant = unknownOption(flag, options, command, problems);
			if (cut < 0 && known(meant)?.required === true) at++; // its value goes with it
		} else if (!option.required) {
			if (cut < 0) kept.push(word);
			else refuse(problems, flag, "no value", quoted(word.slice(cut + 1)));
		} else if (cut >= 0) kept.push(word);
		else {
			const value = words[at + 1];
			if (value === undefined || known(value.split("=")[0]) !== undefined)
				refuse(problems, flag, option.flags.replace(/^.* /, ""), "nothing");
			else {
				kept.push(word, value);
				at++;
			}
		}
	}
	return kept;
}

/** Notes the problem; returns the option that was probably meant. */
function unknownOption(
	flag: string,
	options: readonly Option[],
	command: string,
	problems: Problem[],
): string | undefined {
	const flags = [...options.flatMap(({ long }) => (long === undefined ? [] : [long])), "--help"];
	const near = nearest(flag, flags);
	const all = near === undefined ? ` (${[...new Set(flags)].join(", ")})` : "";
	const path = quoted(flag).slice(1, -1);
	refuse(problems, path, `an option of ${command}${all}`, "one that it does not have", near);
	return near;
}
