import { never } from "../base/clock.ts";
import type { Whole } from "./whole.ts";

/** Counts the minutes of a drain in which it should get on; when they are more than it should need, the alarm of an obstructed path is raised. */
export class DrainClock {
	readonly #whole: Whole;
	#limitMin = 0;
	#countedMin = 0;
	#since = never;

	constructor(whole: Whole) {
		this.#whole = whole;
	}

	/** The pump starts: the clock starts anew, with max(6, 2·(1 + (L − Lret)/(G0·p_set))) min. */
	pumpStarts(): void {
		const { alarms, air, liquid, constants: k } = this.#whole;
		alarms.drain.rewind();
		this.#countedMin = 0;
		this.#since = never;
		const expected = 1 + (liquid.level - liquid.retained) / (k["drain.conductance"] * air.setDepth);
		this.#limitMin = Math.max(k["drain.limit"], k["drain.factor"] * expected);
	}

	/** Whether the minutes from now on count. */
	count(counting: boolean): void {
		const { now } = this.#whole.sim;
		const { drain } = this.#whole.alarms;
		if (this.#since >= 0 && !counting) {
			this.#countedMin += now - this.#since;
			this.#since = never;
			drain.rewind();
		}
		if (counting && this.#since < 0) {
			this.#since = now;
			drain.watch(true, Math.max(0, this.#limitMin - this.#countedMin));
		}
	}
}
