import type { Observer } from "./observer.ts";

/** For runs that nobody watches: takes note of nothing. */
export const unobserved: Observer = {
	span() {},
	phase() {},
	pause() {},
	notice() {},
	alarmStarts() {},
	alarmEnds() {},
	canisterChange() {},
	sourceChange() {},
	offSuction() {},
	breach() {},
};
