import { counted, figureWords, numberWord } from "../../words/index.ts";
import type { ComparisonWords } from "../kit/comparison-chart.ts";
import { currentWords, usualWords } from "../kit/marks.ts";
import type { EfficientSetData, EfficientSetMeasure, EfficientSetPoint } from "./data.ts";

const mostNamed = 12;

const measured = (value: number, { decimals, unit }: EfficientSetMeasure): string => figureWords(value, decimals, unit);

/** The two measures of a point, as they are written. */
export const bothMeasures = ({ x, y }: EfficientSetData, point: EfficientSetPoint): [x: string, y: string] => [
	measured(point.x, x),
	measured(point.y, y),
];

/** Its third with what it is, or ''. */
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
	const marks = [
		["current", currentWords],
		["usual", usualWords],
	] as const;
	const marked = marks.flatMap(([mark, words]) => {
		const point = data.points.find((one) => one[mark] === true);
		if (point === undefined) return [];
		const inSet = point.efficient ? "in the set" : "another regimen is better all round";
		return [`${pointWords(`${words}, ${point.label}`, point)} (${inSet}).`];
	});
	const set =
		efficient.length === 0
			? "None is in the efficient set."
			: `${numberWord(efficient.length)} in the efficient set: ${[...named, ...more].join("; ")}.`;
	return {
		title: data.title,
		legend: "Each mark is a regimen. Which of the named ones is right is the clinician's choice.",
		description: [`${counted(data.points.length, "regimen")}, ${set}`, ...marked].join(" "),
	};
}
