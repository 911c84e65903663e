import type {
	DesignMapCell,
	DesignMapData,
	DesignMapPanel,
} from "./design-map.ts";
import { figureWords, measureHeading } from "./figures.ts";
import { numberWord } from "./quantity.ts";
import { currentWords, usualWords } from "./regimen-mark.ts";

const mostNamed = 8;

/** Title, how to read, and what a reader would see in the maps. */
export function designMapWords(data: DesignMapData): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const named = data.maps.slice(0, mostNamed).map((map) => mapWords(data, map));
	const more =
		data.maps.length > mostNamed
			? ` And ${numberWord(data.maps.length - mostNamed)} more maps.`
			: "";
	return {
		title: data.title,
		legend:
			"Each cell is a regimen. The stronger its shade, the larger the number; each measure has its own scale.",
		description:
			data.maps.length === 0
				? "No measure differs between the regimens that were run."
				: `${data.x.label} across, ${data.y.label} upwards. ${named.join(" ")}${more}`,
	};
}

function mapWords(data: DesignMapData, map: DesignMapPanel): string {
	const heading = measureHeading(map.measure, map.unit);
	const name = map.facet === "" ? heading : `${heading} (${map.facet})`;
	const valued = map.cells.filter(
		(cell): cell is DesignMapCell & { value: number } => cell.value !== null,
	);
	const [first] = valued;
	if (first === undefined) return `${name}: no values.`;
	const least = valued.reduce((a, b) => (b.value < a.value ? b : a), first);
	const most = valued.reduce((a, b) => (b.value > a.value ? b : a), first);
	const at = (cell: DesignMapCell): string =>
		`${data.x.values[cell.x] ?? "?"} and ${data.y.values[cell.y] ?? "?"}`;
	const number = (value: number): string =>
		figureWords(value, map.decimals, "");
	const marked = [
		[data.currentName ?? currentWords, valued.find((cell) => cell.current)],
		[data.usualName ?? usualWords, valued.find((cell) => cell.usual)],
	] as const;
	const marks = marked.flatMap(([words, cell]) =>
		cell === undefined ? [] : [`${words} ${number(cell.value)}`],
	);
	const range =
		least.value === most.value
			? `${number(least.value)} everywhere`
			: `from ${number(least.value)} at ${at(least)} to ${number(most.value)} at ${at(most)}`;
	return `${name}: ${[range, ...marks].join("; ")}.`;
}
