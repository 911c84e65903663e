import type { DressingProcess } from "../../therapy/index.ts";
import type { Act, CauseName, TroubleEnd } from "../../vocabulary/index.ts";

/** A cause in its course: when it came, and when and how it went. */
export interface Trouble {
	readonly cause: CauseName;
	onsetMin: number | null;
	endMin: number | null;
	endedBy: TroubleEnd | null;
}

/** The dressing of a shift with all that hangs on it: what looks go by, causes befall and hands work on. */
export interface Bed {
	readonly now: number;
	readonly process: DressingProcess;
	/** In order of appearance: the hidden causes first. */
	readonly troubles: readonly Trouble[];
	/** Switched off, by the trainee or by somebody else. */
	readonly stopped: boolean;
	switchOff(off: boolean): void;
	/** Whether a cause of this kind is there now. */
	present(cause: CauseName): boolean;
	/** When the act was last done; -Infinity: never. */
	doneMin(act: Act): number;
}

/** The pump draws through an open path: air that leaks in can be heard. */
export function drawsAir({ process, stopped }: Bed): boolean {
	const { phase } = process;
	if (phase === "fill" || phase === "dwell" || phase === "change" || stopped) return false;
	return process.isOpen && !process.alarms.stands("canister-at-capacity");
}
