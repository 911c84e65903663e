import type {
	CompareResult,
	RegimenResult,
	RegimenSummary,
} from "../analysis/compare-result.ts";
import { depthWords, durationWords, volumeWords } from "../charts/index.ts";
import { drawdownShare } from "./drawdown-words.ts";
import { joinedWords } from "./joined-words.ts";
import { periodWords } from "./period-words.ts";

/** The question that a comparison answers, in the settings of its first two regimens. */
export function questionOf(result: CompareResult): string {
	const { regimens, scenario } = result;
	const [a, b] = regimens;
	const wound =
		scenario.dressings.length > 1 ? "For these wounds" : "For this wound";
	if (a === undefined) return `${wound}, which regimen?`;
	if (b === undefined) return `${wound}, what does ${a.name} give?`;
	const part = partOf(a, b);
	if (part === null)
		return `${wound}, do ${a.name} and ${b.name}, which are set alike, differ at all?`;
	const pairs = phrases(...part);
	if (pairs.length === 0)
		return `${wound}, what does ${a.name} buy and cost against ${b.name}?`;
	const verb = pairs.length > 1 ? "do" : "does";
	return `${wound}, what ${verb} ${joinedWords(pairs.map(([own]) => own))} buy and cost against ${joinedWords(pairs.map(([, other]) => other))}?`;
}

/** The first dressing on which two regimens differ, as each sets it; null where they are set alike. */
function partOf(
	a: RegimenResult,
	b: RegimenResult,
): readonly [Settings, Settings] | null {
	for (const [index, left] of a.dressings.entries()) {
		const right = b.dressings[index];
		if (right === undefined) continue;
		const [own, other] = [settingsOf(left), settingsOf(right)];
		if (JSON.stringify(own) !== JSON.stringify(other)) return [own, other];
	}
	return null;
}

interface Settings {
	readonly regimens: readonly RegimenSummary[];
	readonly canisterMl: number;
	readonly sourceMl: number;
}

const settingsOf = (
	dressing: RegimenResult["dressings"][number],
): Settings => ({
	regimens: dressing.regimens,
	canisterMl: dressing.canisterMl,
	sourceMl: dressing.sourceMl,
});

/** How the two are told apart, a phrase for each of what differs. */
function phrases(own: Settings, other: Settings): readonly [string, string][] {
	const [a, b] = [own.regimens[0], other.regimens[0]];
	const pairs: [string, string][] = [];
	if (a !== undefined && b !== undefined) {
		if ((a.fillMl === 0) !== (b.fillMl === 0))
			return [[washWords(a, "a"), washWords(b, "a")]];
		if (a.dwellMin !== b.dwellMin || a.suctionMin !== b.suctionMin)
			pairs.push([washWords(a, "a"), washWords(b, "")]);
		if (a.fillMl !== b.fillMl)
			pairs.push([
				`fills of ${volumeWords(a.fillMl)}`,
				`of ${volumeWords(b.fillMl)}`,
			]);
		if (a.depthMmHg !== b.depthMmHg)
			pairs.push([
				`suction at ${depthWords(a.depthMmHg)}`,
				`at ${depthWords(b.depthMmHg)}`,
			]);
		if (a.drawdown !== b.drawdown)
			pairs.push([
				`a drawdown of ${drawdownShare(a.drawdown)}`,
				`of ${drawdownShare(b.drawdown)}`,
			]);
		if (a.begin !== b.begin)
			pairs.push([`beginning in ${a.begin}`, `beginning in ${b.begin}`]);
	}
	if (own.canisterMl !== other.canisterMl)
		pairs.push([
			`a ${volumeWords(own.canisterMl)} canister`,
			`one of ${volumeWords(other.canisterMl)}`,
		]);
	if (own.sourceMl !== other.sourceMl)
		pairs.push([
			`a ${volumeWords(own.sourceMl)} bag`,
			`one of ${volumeWords(other.sourceMl)}`,
		]);
	return pairs;
}

/** 'a 5 min dwell every 2 h', '10 min every 3.5 h', 'suction alone'. */
function washWords(regimen: RegimenSummary, article: "a" | ""): string {
	const { fillMl, dwellMin, suctionMin } = regimen;
	if (fillMl === 0 || dwellMin === null || suctionMin === null)
		return "suction alone";
	const dwell = durationWords(dwellMin);
	const every = `every ${periodWords(suctionMin)}`;
	return article === "a"
		? `${/^(8|11|18)\b/.test(dwell) ? "an" : "a"} ${dwell} dwell ${every}`
		: `${dwell} ${every}`;
}
