/**
 * What goes first at equal times; smaller first, then in the order of scheduling.
 *
 * Boundaries of the physics come before anything that people or chance do, so that what happens at an instant meets
 * the dressing as it is at that instant; repairs come before rounds, so that a nurse does not mend what has just been
 * mended; alarm timers come before calls and before the start of a fill, so that an alarm due now withholds it.
 */
export const order = {
	/** The stores open before anything is taken from them. */
	opening: 0,
	boundary: 10,
	repair: 20,
	round: 30,
	expiry: 31,
	delivery: 32,
	exudateBlock: 40,
	scripted: 50,
	stores: 55,
	kink: 60,
	burst: 60,
	debris: 61,
	turn: 70,
	seal: 80,
	alarmTimer: 90,
	call: 100,
	fillStart: 110,
	/** A patient leaves the unit before the next one asks for it. */
	leaving: 112,
	arrival: 114,
	observer: 120,
} as const;
