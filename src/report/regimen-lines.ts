import type {
	CompareResult,
	RegimenResult,
} from "../analysis/compare-result.ts";
import { canisterWords, regimenLine, sourceWords } from "./dressing-words.ts";
import { sentenceStart } from "./sentence.ts";

/** A regimen in one line, or a line for each dressing where they are set differently; canister and bag where the regimens differ in them. */
export function regimenLines(
	regimen: RegimenResult,
	result: CompareResult,
): string[] {
	const sized = sizesDiffer(result);
	const drawdown = commonDrawdown(result);
	const lines = ownSettings(regimen, result).map((dressing) => {
		const { canisterMl, sourceMl, canisterHoldsMl, sourceLeftMl } = dressing;
		const sizes =
			sized &&
			canisterMl !== null &&
			sourceMl !== null &&
			canisterHoldsMl !== null &&
			sourceLeftMl !== null
				? `; ${canisterWords({ canisterMl, canisterHoldsMl })}, ${sourceWords({ sourceMl, sourceLeftMl })}`
				: "";
		return {
			id: dressing.id,
			line: `${regimenLine(dressing, result.scenario, drawdown === null)}${sizes}`,
		};
	});
	const [first] = lines;
	if (first === undefined) return [];
	if (lines.every(({ line }) => line === first.line))
		return [sentenceStart(first.line)];
	return lines.map(({ id, line }) => `${id}: ${line}`);
}

/** How a regimen sets each dressing: all of them together are not set to anything. */
export const ownSettings = (
	{ dressings }: RegimenResult,
	{ scenario }: CompareResult,
): RegimenResult["dressings"] => dressings.slice(0, scenario.dressings.length);

/** The drawdown of all regimens, which is then told once; null where they differ in it. */
export function commonDrawdown({ regimens }: CompareResult): number | null {
	const [first, ...others] = new Set(
		regimens.flatMap(({ dressings }) =>
			dressings.flatMap((dressing) =>
				dressing.regimens.map(({ drawdown }) => drawdown),
			),
		),
	);
	return first === undefined || others.length > 0 ? null : first;
}

/** Whether regimens come with other canisters or bags than each other. */
export const sizesDiffer = ({ regimens }: CompareResult): boolean =>
	new Set(
		regimens.map(({ dressings }) =>
			JSON.stringify(
				dressings.map((each) => [
					each.canisterMl,
					each.canisterHoldsMl,
					each.sourceMl,
					each.sourceLeftMl,
				]),
			),
		),
	).size > 1;
