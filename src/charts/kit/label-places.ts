/** A mark with its label: everything between `left` and `right` belongs to it. */
export interface Extent {
	readonly left: number;
	readonly right: number;
}

/** Rows, from 0 at the top, so that no two extents of a row touch; each goes in the first row where it fits. */
export function stackedRows(extents: readonly Extent[], gapPx: number): number[] {
	const ends: number[] = [];
	const rows: number[] = [];
	for (const [index, { left, right }] of [...extents.entries()].sort(([, a], [, b]) => a.left - b.left)) {
		const free = ends.findIndex((end) => end + gapPx <= left);
		rows[index] = free === -1 ? ends.length : free;
		ends[rows[index]] = right;
	}
	return rows;
}

export const rowCount = (rows: readonly number[]): number => Math.max(-1, ...rows) + 1;

/** A label of a width around a point, moved as far as it must be to keep within its room. */
export function centred(at: number, widthPx: number, room: Extent): Extent & { readonly middle: number } {
	const half = widthPx / 2;
	const middle = Math.max(room.left + half, Math.min(at, room.right - half));
	return { middle, left: middle - half, right: middle + half };
}

export interface Box extends Extent {
	readonly top: number;
	readonly bottom: number;
}

export interface PlacedLabel {
	readonly x: number;
	readonly y: number;
	readonly anchor: "start" | "middle" | "end";
}

const touches = (a: Box, b: Box): boolean =>
	a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/**
 * A place for each label beside its point, `clearPx` from it, where it touches no mark, no label placed already and no edge:
 * right, left, above, below, then the corners. Null for a label that finds none. Greedy, in the order given.
 */
export function placedLabels(
	labels: readonly { readonly [length in "x" | "y" | "widthPx" | "clearPx"]: number }[],
	taken: readonly Box[],
	frame: Box,
	sizePx: number,
): (PlacedLabel | null)[] {
	const boxes = [...taken];
	return labels.map(({ x, y, widthPx, clearPx }) => {
		const up = y - clearPx - sizePx * 0.2;
		const down = y + clearPx + sizePx * 0.9;
		const level = y + sizePx * 0.35;
		const side = clearPx * 0.8;
		const candidates: PlacedLabel[] = [
			{ x: x + clearPx, y: level, anchor: "start" },
			{ x: x - clearPx, y: level, anchor: "end" },
			{ x, y: up, anchor: "middle" },
			{ x, y: down, anchor: "middle" },
			{ x: x + side, y: up, anchor: "start" },
			{ x: x + side, y: down, anchor: "start" },
			{ x: x - side, y: up, anchor: "end" },
			{ x: x - side, y: down, anchor: "end" },
		];
		for (const candidate of candidates) {
			const start = candidate.x - { start: 0, middle: widthPx / 2, end: widthPx }[candidate.anchor];
			const [left, right] = [start - 2, start + widthPx + 2];
			const box = { left, right, top: candidate.y - sizePx, bottom: candidate.y + sizePx * 0.3 };
			const inside = left >= frame.left && right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom;
			if (!inside || boxes.some((other) => touches(box, other))) continue;
			boxes.push(box);
			return candidate;
		}
		return null;
	});
}
