/**
 * What goes first at equal times; smaller first, then in the order of scheduling.
 *
 * Boundaries of the physics come before anything that people or chance do, so that what happens at an instant meets
 * the dressing as it is at that instant; repairs come before rounds, so that a nurse does not mend what has just been
 * mended; alarm timers come before calls and before the start of a fill, so that an alarm due now withholds it.
 */
export const eventPriority = {
	/** A day ends, and the stores open, before anything happens at that instant. */
	opening: 0,
	/** Nothing more is used on a patient who leaves at that instant. */
	leaving: 5,
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
	arrival: 114,
	observer: 120,
} as const;
