import type { CompareResult, RegimenResult, RegimenSummary } from "../../results/index.ts";
import {
	canisterWords,
	depthWords,
	drawdownShare,
	durationWords,
	joinedWords,
	periodWords,
	regimenLine,
	sentenceStart,
	sourceWords,
	volumeWords,
} from "../../words/index.ts";

/** The question that a comparison answers, in the settings of its first two regimens. */
export function questionOf(result: CompareResult): string {
	const { regimens, scenario } = result;
	const [a, b] = regimens;
	const wound = scenario.dressings.length > 1 ? "For these wounds" : "For this wound";
	if (a === undefined) return `${wound}, which regimen?`;
	if (b === undefined) return `${wound}, what does ${a.name} give?`;
	const apart = apartOf(a, b, result);
	if (apart.length === 0) return `${wound}, do ${a.name} and ${b.name}, which are set alike, differ at all?`;
	const pairs = apart.flatMap(({ ids, own, other }) => {
		const where = ids.length === scenario.dressings.length ? "" : ` (${joinedWords(ids)})`;
		return phrases(own, other).map(([left, right]) => [`${left}${where}`, `${right}${where}`]);
	});
	if (pairs.length === 0 || pairs.length > mostPhrases)
		return `${wound}, what does ${a.name} buy and cost against ${b.name}?`;
	const isOne = pairs.length === 1 && pairs[0]?.[0]?.startsWith("fills") === false;
	const verb = isOne ? "does" : "do";
	return `${wound}, what ${verb} ${joinedWords(pairs.map(([own]) => own ?? ""))} buy and cost against ${joinedWords(pairs.map(([, other]) => other ?? ""))}?`;
}

/** More than these are no question any more: the names of the regimens stand for them. */
const mostPhrases = 4;

/** What tells how a dressing is set. */
type Settings = Pick<RegimenResult["dressings"][number], "regimens" | "canisterMl" | "sourceMl">;

/** The dressings on which two regimens differ, those together that are set alike under each. */
function apartOf(a: RegimenResult, b: RegimenResult, result: CompareResult) {
	const found = new Map<string, { readonly ids: string[]; readonly own: Settings; readonly other: Settings }>();
	const others = ownSettings(b, result);
	for (const [index, own] of ownSettings(a, result).entries()) {
		const other = others[index];
		if (settingsText(own) === settingsText(other)) continue;
		const key = phrases(own, other).join();
		const known = found.get(key) ?? { ids: [], own, other };
		known.ids.push(own.id);
		found.set(key, known);
	}
	return [...found.values()];
}

const settingsText = ({ regimens, canisterMl, sourceMl }: Settings): string =>
	JSON.stringify([regimens, canisterMl, sourceMl]);

type Phrase = readonly [own: string, other: string];

type Words<Value> = (value: Value) => string;

/** A phrase for either of two values where they are not the same; none where one is not known. */
const told = <Value>(own: Value | null, other: Value | null, words: Words<Value>, again: Words<Value>): Phrase[] =>
	own === null || other === null || own === other ? [] : [[words(own), again(other)]];

/** How the two are told apart, a phrase for each of what differs. */
function phrases(own: Settings, other: Settings): readonly Phrase[] {
	const [a, b] = [own.regimens[0], other.regimens[0]];
	if (a !== undefined && b !== undefined && (a.fillMl === 0) !== (b.fillMl === 0))
		return [[washWords(a, "a"), washWords(b, "a")]];
	return [
		...(a === undefined || b === undefined ? [] : regimenPhrases(a, b)),
		...told(own.canisterMl, other.canisterMl, (ml) => `a ${volumeWords(ml)} canister`, ofVolume),
		...told(own.sourceMl, other.sourceMl, (ml) => `a ${volumeWords(ml)} bag`, ofVolume),
	];
}

const ofVolume = (ml: number): string => `one of ${volumeWords(ml)}`;

function regimenPhrases(a: RegimenSummary, b: RegimenSummary): Phrase[] {
	const sameWash = a.dwellMin === b.dwellMin && a.suctionMin === b.suctionMin;
	const lead = <Value>(left: Value, right: Value, what: string, words: Words<Value>): Phrase[] =>
		told(left, right, (value) => `${what} ${words(value)}`, words);
	const begins = (begin: string): string => `beginning in ${begin}`;
	return [
		...(sameWash ? [] : [[washWords(a, "a"), washWords(b, "")] as const]),
		...lead(a.fillMl, b.fillMl, "fills", (ml) => `of ${volumeWords(ml)}`),
		...lead(a.depthMmHg, b.depthMmHg, "suction", (mmHg) => `at ${depthWords(mmHg)}`),
		...lead(a.drawdown, b.drawdown, "a drawdown", (share) => `of ${drawdownShare(share)}`),
		...told(a.begin, b.begin, begins, begins),
	];
}

/** 'a 5 min dwell every 2 h', '10 min every 3.5 h', 'suction alone'. */
function washWords(regimen: RegimenSummary, article: "a" | ""): string {
	const { fillMl, dwellMin, suctionMin } = regimen;
	if (fillMl === 0 || dwellMin === null || suctionMin === null) return "suction alone";
	const dwell = durationWords(dwellMin);
	const every = `every ${periodWords(suctionMin)}`;
	return article === "a" ? `${/^(8|11|18)\b/.test(dwell) ? "an" : "a"} ${dwell} dwell ${every}` : `${dwell} ${every}`;
}

/** A regimen in one line, or a line for each dressing where they are set differently; canister and bag where the regimens differ in them. */
export function regimenLines(regimen: RegimenResult, result: CompareResult): string[] {
	const sized = sizesDiffer(result);
	const drawdown = commonDrawdown(result);
	const lines = ownSettings(regimen, result).map((dressing) => {
		const { id, canisterMl, sourceMl, canisterHoldsMl, sourceLeftMl } = dressing;
		const line = regimenLine(dressing, result.scenario, drawdown === null);
		if (!sized || canisterMl === null || sourceMl === null || canisterHoldsMl === null || sourceLeftMl === null)
			return { id, line };
		const canister = canisterWords({ canisterMl, canisterHoldsMl });
		return { id, line: `${line}; ${canister}, ${sourceWords({ sourceMl, sourceLeftMl })}` };
	});
	const [first] = lines;
	if (first !== undefined && lines.every(({ line }) => line === first.line)) return [sentenceStart(first.line)];
	return lines.map(({ id, line }) => `${id}: ${line}`);
}

/** How a regimen sets each dressing: all of them together are not set to anything. */
const ownSettings = ({ dressings }: RegimenResult, { scenario }: CompareResult): RegimenResult["dressings"] =>
	dressings.slice(0, scenario.dressings.length);

/** The drawdown of all regimens, which is then told once; null where they differ in it. */
export function commonDrawdown({ regimens }: CompareResult): number | null {
	const all = regimens.flatMap(({ dressings }) => dressings.flatMap((dressing) => dressing.regimens));
	const [first, ...others] = new Set(all.map(({ drawdown }) => drawdown));
	return first === undefined || others.length > 0 ? null : first;
}

/** Whether regimens come with other canisters or bags than each other. */
export function sizesDiffer({ regimens }: CompareResult): boolean {
	const sizes = regimens.map(({ dressings }) =>
		dressings.map((each) => [each.canisterMl, each.canisterHoldsMl, each.sourceMl, each.sourceLeftMl]),
	);
	return new Set(sizes.map((each) => JSON.stringify(each))).size > 1;
}
