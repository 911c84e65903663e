/** Oracle: contrast after WCAG. What it is held against is in contrast.test.ts. */

/** L = 0.2126·R + 0.7152·G + 0.0722·B of linear channels; `knee` is where the curve turns straight. */
export function luminance(colour: string, knee = 0.04045): number {
	const channel = (at: number) => {
		const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
		return share <= knee ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	};
	return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** (L1 + 0.05)/(L2 + 0.05), the lighter above: w3c/wcag, techniques/general/G18.html, commit 028ef7f (read). */
export function contrast(a: string, b: string, knee?: number): number {
	const [x, y] = [luminance(a, knee), luminance(b, knee)];
	return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}
