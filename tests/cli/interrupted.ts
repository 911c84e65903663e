import type { ChildProcess } from "node:child_process";
import { seesProcesses, ticksOf } from "../processor-time.ts";

/** Hundredths of a second of processor time after which a command is in the midst of its work: it takes a tenth of it to start. */
const inTheMidst = 400;

export interface Interrupted {
	readonly meanwhile: (child: ChildProcess) => void;
	/** Hundredths of a second of processor time that the process took before the signal, and from it to its end. */
	readonly ticks: { before: number; after: number };
}

/** Sends a signal to a run as soon as it is in the midst of its work, however long a busy machine lets it wait for that. */
export function interrupted(signal: NodeJS.Signals): Interrupted {
	const ticks = { before: 0, after: 0 };
	return {
		ticks,
		meanwhile: (child) => {
			const pid = child.pid ?? 0;
			let sent = false;
			const began = setInterval(() => {
				const now = ticksOf(pid);
				if (now === null) return;
				if (sent) ticks.after = now - ticks.before;
				else if (now >= inTheMidst) {
					ticks.before = now;
					sent = true;
					child.kill(signal);
				}
			}, 10);
			child.on("exit", () => clearInterval(began));
			if (!seesProcesses) setTimeout(() => child.kill(signal), 1500);
		},
	};
}
