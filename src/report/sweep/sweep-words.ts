import type { SweepAxis, SweepMark, SweepPoint, SweepResult, SweepSettings } from "../../results/index.ts";
import type { AxisName } from "../../vocabulary/index.ts";
import {
	clockWords,
	counted,
	depthWords,
	durationWords,
	inSentence,
	joinedWords,
	measured,
	numberWord,
	periodWords,
	scaleOf,
	sentenceInner,
	volumeWords,
} from "../../words/index.ts";

interface AxisFacts {
	readonly label: string;
	readonly one: string;
	readonly many: string;
	readonly value: (value: number) => string;
	/** What nought is called, where it has words of its own. */
	readonly nought?: string;
}

const [step, steps] = ["step between the dressings", "steps between the dressings"];
const [time, times] = ["time of the first phase", "times of the first phase"];

/** What an axis is called: at the head of a column, as what is varied, several of it; and how its values are written. */
export const axisWords: { readonly [N in AxisName]: AxisFacts } = {
	dwell: { label: "Dwell", one: "dwell", many: "dwells", value: durationWords, nought: "0 min" },
	suction: { label: "Suction period", one: "suction period", many: "suction periods", value: periodWords },
	fill: { label: "Fill", one: "fill", many: "fills", value: volumeWords, nought: "no fill" },
	depth: { label: "Depth", one: "depth", many: "depths", value: depthWords },
	start: { label: "First phase at", one: time, many: times, value: clockWords },
	apart: { label: "Dressings", one: step, many: steps, value: (by) => `${periodWords(by)} apart`, nought: "in step" },
};

/** A value of an axis: '5 min', '3.5 h', '50 mL', '−125 mmHg', '07:30', 'in step'. */
export function axisValueWords(name: AxisName, value: number): string {
	const { value: words, nought } = axisWords[name];
	return value === 0 && nought !== undefined ? nought : words(value);
}

/** The same with its name: 'dwell 5 min', 'first phase at 07:00', 'dressings in step'. */
export const settingWords = (name: AxisName, value: number): string =>
	`${sentenceInner(axisWords[name].label)} ${axisValueWords(name, value)}`;

/** The values of a point in few words: '5 min, 2 h, 50 mL'. */
export const pointWords = (axes: readonly SweepAxis[], point: Pick<SweepPoint, "at">): string =>
	axes.map(({ name }, index) => axisValueWords(name, point.at[index] ?? 0)).join(", ");

/** Points by their values, the first of them where they are many: '1 min, 2 h; 5 min, 2 h; and three more'. */
export function namedPoints(axes: readonly SweepAxis[], points: readonly SweepPoint[], most: number): string {
	const named = points.slice(0, most).map((point) => pointWords(axes, point));
	return [...named, ...(points.length > most ? [`and ${numberWord(points.length - most)} more`] : [])].join("; ");
}

/** '20 regimens'; '4 beginnings' where only the clock is varied. */
export function countedPoints({ axes }: Pick<SweepResult, "axes">, count: number): string {
	const isTimed = axes.length > 0 && axes.every(({ name }) => name === "start" || name === "apart");
	return counted(count, isTimed ? "beginning" : "regimen");
}

/** The regimen of a mark in a line; each dressing's own where they have not all the same. */
export const markWords = ({ regimen, dressings }: SweepMark): string =>
	dressings.length === 0
		? settingsWords(regimen)
		: joinedWords(dressings.map((own) => `${settingsWords(own)} (${own.id})`));

function settingsWords(settings: SweepSettings): string {
	const { depthMmHg, fillMl, dwellMin, suctionMin } = settings;
	const depth = depthWords(depthMmHg);
	if (fillMl === 0 || dwellMin === null || suctionMin === null) return `suction alone at ${depth}`;
	return `${volumeWords(fillMl)} for ${durationWords(dwellMin)} every ${periodWords(suctionMin)}, suction at ${depth}`;
}

export const markNames: { readonly [M in SweepMark["mark"]]: string } = {
	current: "the current regimen",
	usual: "the site's usual regimen",
};

/** The value that a mark has on an axis; null where it has none, or where its dressings have not the same one. */
export function markValue(mark: SweepMark | undefined, name: AxisName): number | null {
	if (mark === undefined || isApart(mark, name)) return null;
	return settingOn(mark.regimen, name);
}

/** Whether the dressings of a mark are not set alike in what an axis varies. */
export const isApart = ({ dressings }: SweepMark, name: AxisName): boolean =>
	new Set(dressings.map((own) => settingOn(own, name))).size > 1;

/** What a mark has on an axis, as it is written in a table: `current` where the axis is none of its settings. */
export function markValueWords(mark: SweepMark, { name, current }: SweepAxis): string {
	if (!isApart(mark, name)) return axisValueWords(name, markValue(mark, name) ?? current);
	const each = mark.dressings.map((own) => {
		const value = settingOn(own, name);
		return `${value === null ? "none" : axisValueWords(name, value)} (${own.id})`;
	});
	return joinedWords(each);
}

function settingOn({ dwellMin, suctionMin, fillMl, depthMmHg }: SweepSettings, name: AxisName): number | null {
	return { dwell: dwellMin, suction: suctionMin, fill: fillMl, depth: depthMmHg, start: null, apart: null }[name];
}

export const markOf = (result: SweepResult, mark: SweepMark["mark"]): SweepMark | undefined =>
	result.marks.find((one) => one.mark === mark);

/** 'night calls under 0.5 a day and canisters changed at most 1 a day'; empty where nothing was asked. */
export function constraintWords(result: SweepResult): string {
	const scale = scaleOf(result);
	const tests = { "<": "under", "<=": "at most", ">": "over", ">=": "at least" } as const;
	const each = result.constraints.map(({ measure, test, limit }) => {
		return `${inSentence(measure)} ${tests[test]} ${measured(limit, measure, scale, 4)}`;
	});
	return joinedWords(each);
}

/** The question that a grid answers. */
export function sweepQuestion(result: SweepResult): string {
	const { scenario, axes, dressing } = result;
	const wound = dressing === "all" && scenario.dressings.length > 1 ? "these wounds" : "this wound";
	const start = axes.find(({ name }) => name === "start");
	const apart = axes.find(({ name }) => name === "apart");
	const settings = axes.filter((axis) => axis !== start && axis !== apart);
	if (settings.length === 0 && axes.length > 0) {
		const clauses = [
			...(start === undefined ? [] : [`begin at another time than ${clockWords(start.current)}`]),
			...(apart === undefined ? [] : ["have the dressings out of step"]),
		];
		return `For ${wound}, what does it buy and cost to ${clauses.join(", or to ")}?`;
	}
	const others = joinedWords(axes.map(({ name }) => axisWords[name].many));
	const current = markOf(result, "current");
	const against = current === undefined ? "" : ` against ${markWords(current)}`;
	return `For ${wound}, what do other ${others === "" ? "settings" : others} buy and cost${against}?`;
}
