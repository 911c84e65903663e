import { type DressingParts, dressingParts } from "../../../src/report/day/dressing/dressing-parts.ts";
import type { DayResult, DressingProjection } from "../../../src/results/index.ts";

/** The parts of the first dressing of a result, its projection changed where a test says so. */
export function firstParts(
	result: DayResult,
	change: (projection: DressingProjection) => Partial<DressingProjection> = () => ({}),
): DressingParts {
	const [parts] = dressingParts(result);
	if (parts === undefined) throw new Error("a result without a dressing");
	return { ...parts, projection: { ...parts.projection, ...change(parts.projection) } };
}
