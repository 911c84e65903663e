import { counted, figureWords, numberWord } from "../../words/index.ts";
import type { ComparisonWords } from "../kit/comparison-chart.ts";
import { markWords } from "../kit/marks.ts";

export interface EfficientSetData {
	readonly title: string;
	readonly x: EfficientSetMeasure;
	readonly y: EfficientSetMeasure;
	/** A third measure, written beside the points of the set. */
	readonly third?: EfficientSetMeasure;
	readonly points: readonly EfficientSetPoint[];
	/** What the crossed-out points break: 'night calls under 0.5'. */
	readonly constraints?: string;
}

export interface EfficientSetMeasure {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	readonly decimals: number;
	readonly better: "lower" | "higher";
}

export interface EfficientSetPoint {
	/** The regimen in few words: '5 min, 2 h'. */
	readonly label: string;
	readonly x: number;
	readonly y: number;
	readonly third?: number;
	/** In the set: no other point betters it in one measure without being worse in another. */
	readonly efficient: boolean;
	readonly current?: boolean;
	readonly usual?: boolean;
	/** Breaks a constraint. */
	readonly broken?: boolean;
}

const mostNamed = 12;

const measured = (value: number, { decimals, unit }: EfficientSetMeasure): string => figureWords(value, decimals, unit);

/** The two measures of a point, as they are written. */
export const bothMeasures = ({ x, y }: EfficientSetData, point: EfficientSetPoint) =>
	[measured(point.x, x), measured(point.y, y)] as const;

export const thirdWords = ({ third }: EfficientSetData, point: EfficientSetPoint): string =>
	third === undefined || point.third === undefined ? "" : `${third.label} ${measured(point.third, third)}`;

/** Title, how to read, and what a reader would see among the points. */
export function efficientSetWords(data: EfficientSetData): ComparisonWords {
	const efficient = data.points.filter((point) => point.efficient);
	const pointWords = (name: string, point: EfficientSetPoint): string => {
		const third = thirdWords(data, point);
		const [x, y] = bothMeasures(data, point);
		return `${name}: ${data.x.label} ${x}, ${data.y.label} ${y}${third === "" ? "" : `, ${third}`}`;
	};
	const named = efficient.slice(0, mostNamed).map((point) => pointWords(point.label, point));
	const more = efficient.length > mostNamed ? [`${numberWord(efficient.length - mostNamed)} more`] : [];
	const marked = (["current", "usual"] as const).flatMap((mark) => {
		const point = data.points.find((one) => one[mark] === true);
		if (point === undefined) return [];
		const inSet = point.efficient ? "in the set" : "another regimen is better all round";
		return [`${pointWords(`${markWords[mark]}, ${point.label}`, point)} (${inSet}).`];
	});
	const all = `${numberWord(efficient.length)} in the efficient set: ${[...named, ...more].join("; ")}.`;
	const set = efficient.length === 0 ? "None is in the efficient set." : all;
	return {
		title: data.title,
		legend: "Each mark is a regimen. Which of the named ones is right is the clinician's choice.",
		description: [`${counted(data.points.length, "regimen")}, ${set}`, ...marked].join(" "),
	};
}
