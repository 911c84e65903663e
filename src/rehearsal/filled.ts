import type { DressingProcess } from "../therapy/index.ts";

/** Solution run in since the last fill began, at a time of the present span, whole mL: as the unit counts it. */
export function filledMl(process: DressingProcess, at: number): number {
	const { filled, source } = process.liquid;
	return Math.floor(filled + source - Math.max(0, process.sourceAt(at)) + 1e-6);
}
