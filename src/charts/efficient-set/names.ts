import { textBlock, textWidth, widestText } from "../kit/fitted-text.ts";
import { type Box, placedLabels } from "../kit/label-places.ts";
import { group, type Shape, text } from "../kit/shape.ts";
import { smallLetters, smallPx } from "../theme/letters.ts";
import { bothMeasures, type EfficientSetData, type EfficientSetPoint, thirdWords } from "./data.ts";

interface Place {
	readonly point: EfficientSetPoint;
	readonly x: number;
	readonly y: number;
}

const fontPx = 12;
const mostListed = 40;

/** Names beside the points of the set where all find room; else numbers there, and a list of what they stand for below. */
export function namedPoints(
	data: EfficientSetData,
	efficient: readonly Place[],
	drawn: {
		readonly marks: readonly { readonly x: number; readonly y: number; readonly halfPx: number }[];
		readonly frame: Box;
		readonly listTopPx: number;
		readonly widthPx: number;
	},
) {
	const taken = [...drawn.marks, ...efficient.map(({ x, y }) => ({ x, y, halfPx: 5 }))].map(({ x, y, halfPx }) => ({
		left: x - halfPx,
		right: x + halfPx,
		top: y - halfPx,
		bottom: y + halfPx,
	}));
	const places = together(efficient);
	/** Null where words of some length find no room; numbers that find none are left out. */
	const labels = (words: readonly string[]): Shape[] | null => {
		const wanted = places.map(({ x, y, points }, index) => ({
			x,
			y,
			widthPx: textWidth(words[index] ?? "", fontPx),
			clearPx: points.some((one) => one.current || one.usual) ? 15 : 11,
		}));
		const placed = placedLabels(wanted, taken, drawn.frame, fontPx);
		if (placed.includes(null) && words.some((one) => one.length > 8)) return null;
		return placed.flatMap((place, index) => {
			if (place === null) return [];
			const { x, y, anchor } = place;
			const at = { class: "halo", x, y, "text-anchor": anchor, style: `font-size:${fontPx}px` };
			return [text(at, words[index] ?? "")];
		});
	};
	const nameOf = (point: EfficientSetPoint): string => {
		const third = thirdWords(data, point);
		return third === "" ? point.label : `${point.label} (${third})`;
	};
	const named = labels(places.map((place) => place.points.map(nameOf).join("; ")));
	if (named !== null) return { group: group(...named), heightPx: 0 };
	let number = 0;
	const numbers = places.map((place) => place.points.map(() => ++number).join(", "));
	const lines = places
		.flatMap((place) => place.points)
		.slice(0, mostListed)
		.map((point, index) => `${index + 1}: ${nameOf(point)}: ${bothMeasures(data, point).join(", ")}`);
	if (number > mostListed) lines.push(`and ${number - mostListed} more`);
	const headWords = `In the list: regimen, ${data.x.label}, ${data.y.label}`;
	const heading = textBlock(headWords, smallLetters, drawn.widthPx - 4, 2);
	const headPx = heading.heightPx + 2;
	const list = columnsOf(lines, drawn.listTopPx + headPx, drawn.widthPx);
	const head = heading.at({ class: "small muted", x: 0, y: drawn.listTopPx + 14 });
	const all = group(...(labels(numbers) ?? []), ...head, ...list.texts);
	return { group: all, heightPx: headPx + list.heightPx };
}

/** A list in as many columns as there is room for, read downwards. */
function columnsOf(lines: readonly string[], topPx: number, widthPx: number) {
	const widest = widestText(lines, smallPx) + 24;
	const columns = Math.max(1, Math.floor((widthPx + 24) / widest));
	const perColumn = Math.ceil(lines.length / columns);
	let heightPx = 0;
	const texts = Array.from({ length: columns }, (_, column) => {
		let y = topPx + 14;
		return lines.slice(column * perColumn, (column + 1) * perColumn).flatMap((line) => {
			const block = textBlock(line, smallLetters, widthPx - 4, 2);
			const shapes = block.at({ class: "small", x: column * widest, y });
			y += block.heightPx + 2;
			heightPx = Math.max(heightPx, y - topPx);
			return shapes;
		});
	});
	return { texts: texts.flat(), heightPx };
}

/** Points that fall on the same px share one name. */
function together(places: readonly Place[]) {
	const groups: { x: number; y: number; points: EfficientSetPoint[] }[] = [];
	for (const place of places) {
		const same = groups.find((group) => Math.abs(group.x - place.x) < 2 && Math.abs(group.y - place.y) < 2);
		if (same === undefined) groups.push({ x: place.x, y: place.y, points: [place.point] });
		else same.points.push(place.point);
	}
	return groups;
}
