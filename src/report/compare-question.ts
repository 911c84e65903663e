import type {
	CompareResult,
	RegimenResult,
	RegimenSummary,
} from "../analysis/compare-result.ts";
import { depthWords, durationWords, volumeWords } from "../charts/index.ts";
import { drawdownShare } from "./drawdown-words.ts";
import { joinedWords } from "./joined-words.ts";
import { periodWords } from "./period-words.ts";
import { ownSettings } from "./regimen-lines.ts";

/** The question that a comparison answers, in the settings of its first two regimens. */
export function questionOf(result: CompareResult): string {
	const { regimens, scenario } = result;
	const [a, b] = regimens;
	const wound =
		scenario.dressings.length > 1 ? "For these wounds" : "For this wound";
	if (a === undefined) return `${wound}, which regimen?`;
	if (b === undefined) return `${wound}, what does ${a.name} give?`;
	const apart = apartOf(a, b, result);
	if (apart.length === 0)
		return `${wound}, do ${a.name} and ${b.name}, which are set alike, differ at all?`;
	const pairs = apart.flatMap(({ ids, own, other }) => {
		const where =
			ids.length === scenario.dressings.length ? "" : ` (${joinedWords(ids)})`;
		return phrases(own, other).map(([left, right]) => [
			`${left}${where}`,
			`${right}${where}`,
		]);
	});
	if (pairs.length === 0 || pairs.length > mostPhrases)
		return `${wound}, what does ${a.name} buy and cost against ${b.name}?`;
	const isOne =
		pairs.length === 1 && pairs[0]?.[0]?.startsWith("fills") === false;
	const verb = isOne ? "does" : "do";
	return `${wound}, what ${verb} ${joinedWords(pairs.map(([own]) => own ?? ""))} buy and cost against ${joinedWords(pairs.map(([, other]) => other ?? ""))}?`;
}

/** More than these are no question any more: the names of the regimens stand for them. */
const mostPhrases = 4;

/** Dressings that a first regimen sets in one way and a second in another. */
interface Apart {
	readonly ids: string[];
	readonly own: Settings;
	readonly other: Settings;
}

/** The dressings on which two regimens differ, those together that are set alike under each. */
function apartOf(
	a: RegimenResult,
	b: RegimenResult,
	result: CompareResult,
): readonly Apart[] {
	const found = new Map<string, Apart>();
	const others = ownSettings(b, result);
	for (const [index, left] of ownSettings(a, result).entries()) {
		const right = others[index];
		if (right === undefined) continue;
		const [own, other] = [settingsOf(left), settingsOf(right)];
		if (JSON.stringify(own) === JSON.stringify(other)) continue;
		const key = phrases(own, other).join();
		const known = found.get(key);
		if (known === undefined) found.set(key, { ids: [left.id], own, other });
		else known.ids.push(left.id);
	}
	return [...found.values()];
}

interface Settings {
	readonly regimens: readonly RegimenSummary[];
	readonly canisterMl: number | null;
	readonly sourceMl: number | null;
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
	if (
		own.canisterMl !== null &&
		other.canisterMl !== null &&
		own.canisterMl !== other.canisterMl
	)
		pairs.push([
			`a ${volumeWords(own.canisterMl)} canister`,
			`one of ${volumeWords(other.canisterMl)}`,
		]);
	if (
		own.sourceMl !== null &&
		other.sourceMl !== null &&
		own.sourceMl !== other.sourceMl
	)
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
