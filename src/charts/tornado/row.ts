import { figureWords } from "../../words/index.ts";
import { textBlock, widestText } from "../kit/fitted-text.ts";
import { group, levelLine, rect, type Shape, shape, text } from "../kit/shape.ts";
import { type Scale, valueScale } from "../kit/value-axis.ts";
import { smallLetters, smallPx, textLetters } from "../theme/letters.ts";
import type { TornadoRow } from "./data.ts";

/** Two bars, one for half and one for twice. */
const barsPx = 36;

/** A scale of zero, the base and every end, with room at both sides for '½' and '2×' with their numbers. */
export function tornadoScale(
	base: number,
	rows: readonly TornadoRow[],
	decimals: number,
	[left, right]: readonly [number, number],
): Scale {
	const ends = rows.flatMap((row) => [row.half, row.twice]).filter((value) => value !== null);
	const widest = widestText(
		ends.map((value) => `${signs.twice} ${figureWords(value, decimals, "")}`),
		smallPx,
	);
	return valueScale([0, base, ...ends], 5, { fromZero: false }).range([left + widest + 12, right - widest - 12]);
}

/** What is assumed, its bars beside it, and 'turns' at the end; on a narrow page (`labelPx` null) the words stand over the bars. */
export function tornadoRow(
	row: TornadoRow,
	base: number,
	decimals: number,
	x: Scale,
	{ topPx, widthPx, labelPx }: { readonly topPx: number; readonly widthPx: number; readonly labelPx: number | null },
) {
	const isNarrow = labelPx === null;
	const room = labelPx ?? widthPx - 4;
	const turnsInWords = row.turns && isNarrow;
	const label = textBlock(row.label, textLetters, room, 4);
	const value = textBlock(turnsInWords ? `${row.value}; the verdict turns` : row.value, smallLetters, room, 2);
	const textPx = label.heightPx + value.heightPx;
	const barTopPx = isNarrow ? topPx + textPx + 6 : topPx + 2;
	const whole = group(
		levelLine("rule", 0, widthPx, topPx),
		...label.at({ x: 0, y: topPx + 16 }),
		...value.at({ class: turnsInWords ? "small strong" : "small muted", x: 0, y: topPx + 15 + label.heightPx }),
		tornadoBars(row, base, x, barTopPx, decimals),
		row.turns && !isNarrow
			? text({ class: "strong", x: widthPx - 2, y: topPx + 23, "text-anchor": "end" }, "turns")
			: null,
	);
	const bottomPx = isNarrow ? barTopPx + barsPx : topPx + Math.max(barsPx + 4, textPx + 10);
	return { group: whole, barTopPx, bottomPx };
}

/** The settings of an assumption, and by which sign each is told from the other. */
const signs = { half: "½", twice: "2×" } as const;

type Setting = keyof typeof signs;

const thickPx = 11;

/** Half is an outline, twice is full. */
const bar = (setting: Setting, x: number, y: number, widthPx: number): Shape => {
	const width = Math.max(1.5, widthPx);
	if (setting === "twice") return rect("found", { x, y, width, height: thickPx });
	const inner = { x, y: y + 0.75, width, height: thickPx - 1.5 };
	return shape("rect", { class: "found-edge hollow", ...inner, style: "stroke-width:1.5" });
};

/** For the key. */
export const tornadoSample =
	(setting: Setting) =>
	(x: number, y: number): Shape =>
		bar(setting, x - 10, y - 6, 20);

/** Both bars of an assumption under each other, each from the base to where its setting leads, sign and number at its end. */
function tornadoBars(row: TornadoRow, base: number, x: Scale, topPx: number, decimals: number): Shape {
	const bars = group();
	const from = x(base);
	const [first = 0, last = 0] = x.range();
	const side = from > (first + last) / 2 ? -1 : 1;
	const label = (className: string, at: number, direction: number, y: number, words: string): Shape => {
		const anchor = direction > 0 ? "start" : "end";
		return text({ class: className, x: at + 5 * direction, y: y + 10, "text-anchor": anchor }, words);
	};
	for (const [setting, y] of [["half", topPx + 3] as const, ["twice", topPx + 20] as const]) {
		const value = row[setting];
		if (value === null || !Number.isFinite(value)) {
			bars.append(label("small muted halo", from, side, y, `${signs[setting]} cannot be run`));
			continue;
		}
		const to = x(value);
		const words = `${signs[setting]} ${figureWords(value, decimals, "")}`;
		bars.append(
			bar(setting, Math.min(from, to), y, Math.abs(to - from)),
			to >= from ? label("small halo", Math.max(to, from + 2), 1, y, words) : label("small halo", to, -1, y, words),
		);
	}
	return bars;
}
