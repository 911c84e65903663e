/** A mark with its label: everything between `left` and `right` belongs to it. */
export interface Extent {
	readonly left: number;
	readonly right: number;
}

/** Rows, from 0 at the top, so that no two extents of a row touch; each goes in the first row where it fits. */
export function stackedRows(
	extents: readonly Extent[],
	gapPx: number,
): number[] {
	const ends: number[] = [];
	const order = extents
		.map((_, index) => index)
		.sort((a, b) => leftOf(extents, a) - leftOf(extents, b) || a - b);
	const rows = new Array<number>(extents.length).fill(0);
	for (const index of order) {
		const extent = extents[index];
		if (extent === undefined) continue;
		const free = ends.findIndex((end) => end + gapPx <= extent.left);
		const row = free === -1 ? ends.length : free;
		rows[index] = row;
		ends[row] = extent.right;
	}
	return rows;
}

const leftOf = (extents: readonly Extent[], index: number): number =>
	extents[index]?.left ?? 0;
