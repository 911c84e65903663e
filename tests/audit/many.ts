import { expect } from "vitest";
import type { Catalogue, Fault } from "./check.ts";
import { everRead } from "./pattern.ts";
import { type Kind, type Sample, samplesOf } from "./scenarios.ts";

/** With LONG set: more scenarios, of days of up to 72 h. */
export const isLong = process.env.LONG !== undefined;

/** The same scenarios from run to run. */
const seed = 20_260_302;
const mostNamed = 20;

/** Sound scenarios of a kind: how many in the tests, and how many in the long run. */
export const samples = (kind: Kind, few: number, many: number): Sample[] =>
	samplesOf(kind, isLong ? many : few, seed, kind === "day" ? 72 : 24);

/** Nothing on the papers of any of them is false; a failure names scenario, document, sentence, what it says and what was derived. */
export function expectTrue(all: readonly Sample[], audit: (sample: Sample) => readonly Fault[]): void {
	const faults = all.flatMap((sample) =>
		audit(sample).map(
			({ document, where, said, derived }) =>
				`${sample.kind} ${sample.number} of seed ${seed}, ${document}, ${where}\n  says    ${said}\n  derived ${derived}`,
		),
	);
	const left = faults.length - mostNamed;
	expect(faults.length, `${faults.slice(0, mostNamed).join("\n")}${left > 0 ? `\nand ${left} more` : ""}`).toBe(0);
}

/** Patterns of a catalogue that no paper has ever said: told after the long run, so that the list holds no dead sentences. */
export function tellUnused<Whole, Part>(name: string, catalogue: Catalogue<Whole, Part>): void {
	if (!isLong) return;
	const { whole, part, labels, partLabels } = catalogue;
	const unused = [...whole, ...part, ...labels, ...partLabels]
		.map(({ text }) => text)
		.filter((text) => !everRead.has(text));
	if (unused.length > 0) console.log(`${name}: never said\n  ${[...new Set(unused)].join("\n  ")}`);
}
