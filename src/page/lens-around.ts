import type { Clock, WaterLineData } from "../charts/index.ts";

/** Half the width of the lens around the cursor, min. */
const halfMin = 20;

/** What the lens of a chart enlarges while the cursor stands at `atMin`; null: what the chart thinks best. */
export const lensAround = (
	atMin: number | null,
	clock: Clock,
): Pick<WaterLineData, "lens"> =>
	atMin === null
		? {}
		: {
				lens: {
					heading: "Around the cursor, enlarged",
					fromMin: Math.max(0, atMin - halfMin),
					toMin: Math.min(clock.horizonMin, atMin + halfMin),
				},
			};
