/** What the second implementation is given and what it gives back. All times in minutes from the start. */

/** One item of a dressing's therapy plan; it is in force from `fromMin` until a later one takes over. */
export interface SecondRegimen {
	fromMin: number;
	begin: "suction" | "fill";
	/** Positive: −125 mmHg is 125. */
	depthMmHg: number;
	/** 0 is continuous suction. */
	fillMl: number;
	dwellMin: number;
	suctionMin: number;
	/** Share of the pump's flow that is let work while suction is drawn down. */
	drawdown: number;
}

export interface SecondDressing {
	id: string;
	foamVolumeMl: number;
	exudateMlPerDay: number;
	/** Multiplier of debris. */
	slough: number;
	/** Multiplier of the breach hazard. */
	difficulty: number;
	outflow: { totalMlPerDay: number; burstsPerDay: number } | null;
	canisterMl: number;
	sourceMl: number;
	/** What the canister holds at the start. */
	holdsMl: number;
	/** What is left in the source at the start. */
	leftMl: number;
	ageMin: number;
	regimens: SecondRegimen[];
}

export interface SecondHappening {
	atMin: number;
	dressing: string;
	what:
		| "transfer"
		| "turn"
		| "breach"
		| "clog"
		| "kink-fill"
		| "kink-suction"
		| "off"
		| "canister-change"
		| "source-change"
		| "dressing-change"
		| "bleed";
	/** Leak that a breach adds, L/min/mmHg. */
	size?: number;
	/** Share of the port that a clog closes. */
	share?: number;
	/** Length of an `off` or a `bleed`. */
	forMin?: number;
	/** What a bleed brings. */
	volumeMl?: number;
}

interface SecondCare {
	/** Median delay of a call by day and by night. */
	dayMin: number;
	nightMin: number;
	/** Lognormal sigma of that delay. */
	spread: number;
	roundsClockMin: number[];
	turningMin: number | null;
	nurses: number | null;
	changeEveryMin: number | null;
	changeAtMin: number[];
}

export interface SecondInput {
	horizonMin: number;
	/** Minutes after midnight of time 0. */
	startClockMin: number;
	chance: boolean;
	dressings: SecondDressing[];
	care: SecondCare;
	happenings: SecondHappening[];
	/** By the names of the assumptions, in the units in which the constants are kept. */
	constants: Record<string, number>;
}

export type SecondPhase = "suction" | "fill" | "dwell" | "drain" | "change";
export type SecondPauseReason = "off" | "canister" | "round" | "port";

interface SecondTotals {
	fills: number;
	washes: number;
	instilledMl: number;
	exudateMl: number;
	toCanisterMl: number;
	weptMl: number;
	discardedMl: number;
	inDressingMl: number;
	solutionWastedMl: number;
	woundOutputMl: number;
	notReturnedMl: number;
	offSuctionMin: number;
	underSuctionMin: number;
	wetMin: number;
	breaches: number;
	meanExudateShare: number;
	nurseMin: number;
	nightCalls: number;
}

export interface SecondDay {
	id: string;
	phases: { phase: SecondPhase; startMin: number; endMin: number }[];
	pauses: { reason: SecondPauseReason; startMin: number; endMin: number }[];
	notices: { notice: string; atMin: number }[];
	alarms: { condition: string; priority: "medium" | "high"; startMin: number; endMin: number }[];
	canisterChanges: { atMin: number; reason: "at-capacity" | "round" | "scripted" }[];
	sourceChanges: { atMin: number; reason: "empty" | "round" | "expired" | "scripted"; wastedMl: number }[];
	totals: SecondTotals;
}
