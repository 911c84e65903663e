import { Recorder } from "../../studies/index.ts";
import type { DressingProcess } from "../../therapy/index.ts";
import type { Condition, Ending, Phase } from "../../vocabulary/index.ts";

/**
 * What could be read at the bedside since the shift began, columns of equal length: depth as the unit shows it, to whole
 * mmHg, positive; solution run in since the fill began, until the drain begins, whole mL.
 */
type ShownCurve = Record<"atMin" | "depthMmHg" | "filledMl", number[]>;

/** The display is read this often, min: by the clock, so that what nobody can see leaves no trace in when it was read. */
const everyMin = 0.25;

/** Keeps the day of a rehearsal, and beside it what of it showed. */
export class ShiftRecorder extends Recorder {
	/** Alarms that have ended, in that order. */
	readonly ended: { readonly condition: Condition; readonly startMin: number; readonly endMin: number | null }[] = [];
	readonly #shown: ShownCurve = { atMin: [], depthMmHg: [], filledMl: [] };
	/** How often the clock has been read in the shift, and the phase in which the display was read last. */
	#readings = 0;
	#phase: Phase | null = null;

	override span(dressing: number, process: DressingProcess, start: number, end: number): void {
		super.span(dressing, process, start, end);
		if (process.phase !== this.#phase) {
			// A phase that begins can be seen: the display is read on both sides of it.
			this.#phase = process.phase;
			note(this.#shown, start, process);
		}
		while (this.#readings * everyMin < end) note(this.#shown, this.#readings++ * everyMin, process);
	}

	override alarmEnds(dressing: number, condition: Condition, startMin: number, endMin: number, endedBy: Ending): void {
		super.alarmEnds(dressing, condition, startMin, endMin, endedBy);
		this.ended.push({ condition, startMin, endMin });
	}

	/** What showed until now, the span that still runs included. */
	shown(process: DressingProcess): ShownCurve {
		const curve = structuredClone(this.#shown);
		const { now } = process.sim;
		for (let i = this.#readings; i * everyMin < now; i++) note(curve, i * everyMin, process);
		note(curve, now, process);
		return curve;
	}
}

/** Reads the display at a time of the present span; a third reading in a row that says the same replaces the second. */
function note(curve: ShownCurve, at: number, process: DressingProcess): void {
	const { atMin, depthMmHg } = curve;
	const depth = Math.round(process.depthAt(at));
	// Once the drain has begun nobody can tell what is left of it.
	const filled = process.phase === "fill" || process.phase === "dwell" ? filledMl(process, at) : 0;
	const last = atMin.length - 1;
	const same = (i: number) => depthMmHg[i] === depth && curve.filledMl[i] === filled;
	if (last > 0 && same(last) && same(last - 1)) {
		atMin[last] = at;
		return;
	}
	atMin.push(at);
	depthMmHg.push(depth);
	curve.filledMl.push(filled);
}

/** Solution run in since the last fill began, at a time of the present span, whole mL: as the unit counts it. */
export function filledMl(process: DressingProcess, at: number): number {
	const { filled, source } = process.liquid;
	return Math.floor(filled + source - Math.max(0, process.sourceAt(at)) + 1e-6);
}
