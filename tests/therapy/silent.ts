import type { Observer } from "../../src/therapy/index.ts";

/** Takes note of nothing. */
export const silent: Observer = {
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
