import type { EfficientSetData, EfficientSetPoint } from "./efficient-set.ts";
import { thirdWords } from "./efficient-set-names.ts";
import { figureWords } from "./figures.ts";
import { counted, numberWord } from "./quantity.ts";
import { currentWords, usualWords } from "./regimen-mark.ts";

const mostNamed = 12;

/** Title, how to read, and what a reader would see among the points. */
export function efficientSetWords(data: EfficientSetData): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const efficient = data.points.filter((point) => point.efficient);
	const pointWords = (name: string, point: EfficientSetPoint): string => {
		const third = thirdWords(data, point);
		const both = `${data.x.label} ${figureWords(point.x, data.x.decimals, data.x.unit)}, ${data.y.label} ${figureWords(point.y, data.y.decimals, data.y.unit)}`;
		return `${name}: ${both}${third === "" ? "" : `, ${third}`}`;
	};
	const named = efficient
		.slice(0, mostNamed)
		.map((point) => pointWords(point.label, point));
	const more =
		efficient.length > mostNamed
			? [`${numberWord(efficient.length - mostNamed)} more`]
			: [];
	const marks = [
		["current", currentWords],
		["usual", usualWords],
	] as const;
	const marked = marks.flatMap(([mark, words]) => {
		const point = data.points.find((one) => one[mark] === true);
		if (point === undefined) return [];
		const inSet = point.efficient
			? "in the set"
			: "another regimen is better all round";
		return [`${pointWords(`${words}, ${point.label}`, point)} (${inSet}).`];
	});
	const set =
		efficient.length === 0
			? "None is in the efficient set."
			: `${numberWord(efficient.length)} in the efficient set: ${[...named, ...more].join("; ")}.`;
	return {
		title: data.title,
		legend:
			"Each mark is a regimen. Which of the named ones is right is the clinician's choice.",
		description: [
			`${counted(data.points.length, "regimen")}, ${set}`,
			...marked,
		].join(" "),
	};
}
