/** A rectangle that is taken. */
export interface Box {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

export interface PlacedLabel {
	readonly x: number;
	/** Base line. */
	readonly y: number;
	readonly anchor: "start" | "middle" | "end";
}

const touches = (a: Box, b: Box): boolean =>
	a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/**
 * A place for each label beside its point, where it touches neither a mark nor a label that is placed already nor the edge:
 * right, left, above, below, then the corners. Null for a label that finds none. Greedy, in the order given.
 */
export function placedLabels(
	labels: readonly {
		readonly x: number;
		readonly y: number;
		readonly widthPx: number;
		/** From the point to the label. */
		readonly clearPx: number;
	}[],
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
			const left =
				candidate.anchor === "start"
					? candidate.x
					: candidate.anchor === "end"
						? candidate.x - widthPx
						: candidate.x - widthPx / 2;
			const box = {
				left: left - 2,
				right: left + widthPx + 2,
				top: candidate.y - sizePx,
				bottom: candidate.y + sizePx * 0.3,
			};
			const inside =
				box.left >= frame.left &&
				box.right <= frame.right &&
				box.top >= frame.top &&
				box.bottom <= frame.bottom;
			if (!inside || boxes.some((other) => touches(box, other))) continue;
			boxes.push(box);
			return candidate;
		}
		return null;
	});
}
