// An indicator light flashes at 1.4–2.8 Hz (high; a project's compliance table, quoted; IEC 60073 has the same as its
// normal flash: IEEE P1621 draft of 15 December 2002, 4.4.2–3, quoted), or at 0.4–0.8 Hz (medium; from memory).
const flashes = { high: [1.4, 2.8], medium: [0.4, 0.8] } as const;

/** Oracle: how often a second what a style sheet moves comes round again, by the priority that a light of that pace would have. */
export function pacesOf(styles: string): { hertz: number; like: string }[] {
	const seconds = [...styles.matchAll(/(?:animation|transition)(?:-duration)?\s*:[^;}]*?(\d*\.?\d+)(m?s)\b/gu)].map(
		([, length, unit]) => Number(length) / (unit === "ms" ? 1000 : 1),
	);
	return seconds.map((length) => {
		// There and back again, as a light that goes on and off.
		const paces = [1 / length, 1 / (2 * length)];
		const like = Object.entries(flashes).find(([, [low, high]]) =>
			paces.some((hertz) => hertz >= low && hertz <= high),
		);
		return { hertz: 1 / length, like: like?.[0] ?? "none" };
	});
}
