import { type Observer, unobserved } from "../../therapy/index.ts";
import { type Condition, conditions, type Phase } from "../../vocabulary/index.ts";

/** An alarm that stands. */
export interface StandingAlarm {
	readonly condition: Condition;
	readonly sinceMin: number;
	/** The phase in which it was raised. */
	readonly raisedIn: Phase;
}

/**
 * An observer that keeps which alarms stand and since when the phase runs, and hands everything on to `recorder`.
 * `raised` is told of every alarm and answers with the phase of that moment.
 */
export function bedsideObserver(recorder: Observer, raised: (condition: Condition, atMin: number) => Phase) {
	const shows = {
		/** In the order of `conditions`. */
		standing: conditions.map((): StandingAlarm | null => null),
		phaseSince: 0,
		reset(): void {
			shows.standing.fill(null);
			shows.phaseSince = 0;
		},
	};
	const observer: Observer = {
		...unobserved,
		alarmStarts(_, condition, sinceMin) {
			const raisedIn = raised(condition, sinceMin);
			shows.standing[conditions.indexOf(condition)] = { condition, sinceMin, raisedIn };
		},
		alarmEnds(dressing, condition, start, end, ending) {
			shows.standing[conditions.indexOf(condition)] = null;
			recorder.alarmEnds(dressing, condition, start, end, ending);
		},
		span: (dressing, process, start, end) => recorder.span(dressing, process, start, end),
		phase(dressing, phase, start, end) {
			shows.phaseSince = end;
			recorder.phase(dressing, phase, start, end);
		},
		pause(dressing, reason, start, end) {
			if (end > start) recorder.pause(dressing, reason, start, end);
		},
		notice: (dressing, notice, at) => recorder.notice(dressing, notice, at),
		canisterChange: (...change) => recorder.canisterChange(...change),
		sourceChange: (...change) => recorder.sourceChange(...change),
		offSuction: (dressing, start, end) => recorder.offSuction(dressing, start, end),
	};
	return { shows, observer };
}
