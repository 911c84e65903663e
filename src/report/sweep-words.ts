import type {
	SweepAxis,
	SweepAxisName,
	SweepMark,
	SweepPoint,
	SweepResult,
	SweepSettings,
} from "../analysis/sweep-result.ts";
import {
	counted,
	depthWords,
	durationWords,
	volumeWords,
} from "../charts/index.ts";
import { joinedWords } from "./joined-words.ts";
import { periodWords } from "./period-words.ts";

/** What an axis is called: at the head of a column, as what is varied, several of it. */
export const axisWords: {
	readonly [N in SweepAxisName]: {
		readonly label: string;
		readonly one: string;
		readonly many: string;
	};
} = {
	dwell: { label: "Dwell", one: "dwell", many: "dwells" },
	suction: {
		label: "Suction period",
		one: "suction period",
		many: "suction periods",
	},
	fill: { label: "Fill", one: "fill", many: "fills" },
	depth: { label: "Depth", one: "depth", many: "depths" },
	start: {
		label: "First phase at",
		one: "time of the first phase",
		many: "times of the first phase",
	},
	apart: {
		label: "Dressings",
		one: "step between the dressings",
		many: "steps between the dressings",
	},
};

const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** '07:30': minutes after midnight. */
export const clockWords = (clockMin: number): string =>
	`${twoDigits(Math.floor(clockMin / 60) % 24)}:${twoDigits(Math.round(clockMin) % 60)}`;

/** A value of an axis: '5 min', '3.5 h', '50 mL', '−125 mmHg', '07:30', 'in step'. */
export function axisValueWords(name: SweepAxisName, value: number): string {
	switch (name) {
		case "dwell":
			return value === 0 ? "0 min" : durationWords(value);
		case "suction":
			return periodWords(value);
		case "fill":
			return value === 0 ? "no fill" : volumeWords(value);
		case "depth":
			return depthWords(value);
		case "start":
			return clockWords(value);
		case "apart":
			return value === 0 ? "in step" : `${periodWords(value)} apart`;
	}
}

/** The same with its name: 'dwell 5 min', 'first phase at 07:00', 'dressings in step'. */
export const settingWords = (name: SweepAxisName, value: number): string => {
	const { label } = axisWords[name];
	return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${axisValueWords(name, value)}`;
};

/** The values of a point in few words: '5 min, 2 h, 50 mL'. */
export const pointWords = (
	axes: readonly SweepAxis[],
	point: Pick<SweepPoint, "at">,
): string =>
	axes
		.map(({ name }, index) => axisValueWords(name, point.at[index] ?? 0))
		.join(", ");

/** '20 regimens'; '4 beginnings' where only the clock is varied. */
export const countedPoints = (
	{ axes }: Pick<SweepResult, "axes">,
	count: number,
): string =>
	counted(
		count,
		axes.length > 0 &&
			axes.every(({ name }) => name === "start" || name === "apart")
			? "beginning"
			: "regimen",
	);

/** The regimen of a mark in a line; each dressing's own where they have not all the same. */
export const markWords = ({ regimen, dressings }: SweepMark): string =>
	dressings.length === 0
		? settingsWords(regimen)
		: joinedWords(dressings.map((own) => `${settingsWords(own)} (${own.id})`));

function settingsWords(settings: SweepSettings): string {
	const { depthMmHg, fillMl, dwellMin, suctionMin } = settings;
	const depth = depthWords(depthMmHg);
	if (fillMl === 0 || dwellMin === null || suctionMin === null)
		return `suction alone at ${depth}`;
	return `${volumeWords(fillMl)} for ${durationWords(dwellMin)} every ${periodWords(suctionMin)}, suction at ${depth}`;
}

export const markNames: { readonly [M in SweepMark["mark"]]: string } = {
	current: "the current regimen",
	usual: "the site's usual regimen",
};

/** The value that a mark has on an axis; null where it has none, or where its dressings have not the same one. */
export function markValue(
	mark: SweepMark | undefined,
	name: SweepAxisName,
): number | null {
	if (mark === undefined || isApart(mark, name)) return null;
	return settingOn(mark.regimen, name);
}

/** Whether the dressings of a mark are not set alike in what an axis varies. */
export const isApart = (
	{ dressings }: SweepMark,
	name: SweepAxisName,
): boolean => new Set(dressings.map((own) => settingOn(own, name))).size > 1;

/** What a mark has on an axis, as it is written in a table: `current` where the axis is none of its settings. */
export function markValueWords(
	mark: SweepMark,
	{ name, current }: SweepAxis,
): string {
	return isApart(mark, name)
		? joinedWords(
				mark.dressings.map((own) => {
					const value = settingOn(own, name);
					return `${value === null ? "none" : axisValueWords(name, value)} (${own.id})`;
				}),
			)
		: axisValueWords(name, markValue(mark, name) ?? current);
}

function settingOn(
	settings: SweepSettings,
	name: SweepAxisName,
): number | null {
	switch (name) {
		case "dwell":
			return settings.dwellMin;
		case "suction":
			return settings.suctionMin;
		case "fill":
			return settings.fillMl;
		case "depth":
			return settings.depthMmHg;
		default:
			return null;
	}
}

export const markOf = (
	result: SweepResult,
	mark: SweepMark["mark"],
): SweepMark | undefined => result.marks.find((one) => one.mark === mark);
