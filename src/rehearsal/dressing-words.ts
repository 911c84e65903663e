import type { Bedside } from "./bedside.ts";

/** Share of the set depth at which a dressing looks held, and depth below which it looks slack, mmHg; assumed. */
const firmShare = 0.8;
const slackMmHg = 10;

/** How depth shows: held, lower than it should be, or not at all. */
export type DepthShown = "held" | "low" | "none";

export function depthShown(
	depthMmHg: number,
	setDepthMmHg: number,
): DepthShown {
	if (depthMmHg >= firmShare * setDepthMmHg) return "held";
	return depthMmHg >= slackMmHg ? "low" : "none";
}

/** The dressing in a sentence, as it looks through the film from where one stands: what depth and liquid make of it. */
export function dressingWords({ process, now }: Bedside): string {
	if (process.phase === "change")
		return "The old dressing is off and a new one is going on.";
	const level = process.levelAt(now);
	const full = process.capacity;
	const shown = depthShown(process.depthAt(now), process.regimen.depthMmHg);
	const liquid =
		level > full + 1e-6
			? ", and liquid stands under the film"
			: level > full / 4
				? ", and the foam is wet"
				: "";
	switch (shown) {
		case "held":
			return `The foam is drawn in, wrinkled and firm${liquid}.`;
		case "low":
			return `The foam is drawn in only a little and gives under a finger${liquid}.`;
		case "none":
			return `The foam is soft and stands as high as the skin around it${liquid}.`;
	}
}
