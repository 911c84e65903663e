/** What is counted of a dressing's day, in the order in which its values are kept. */
export const totalNames = [
	/** Fills started. */
	"fills",
	/** Drains finished. */
	"washes",
	"instilledMl",
	"exudateMl",
	"toCanisterMl",
	"weptMl",
	"discardedMl",
	"inDressingMl",
	"solutionWastedMl",
	/** Exudate in what reached the canister. */
	"woundOutputMl",
	/** Solution instilled less solution that reached the canister. */
	"notReturnedMl",
	"offSuctionMin",
	"underSuctionMin",
	"wetMin",
	"breaches",
	"meanExudateShare",
	/** Canisters changed, sources renewed, kits and ports used, beyond those of the start. */
	"canisterChanges",
	"sourceChanges",
	"dressingChanges",
	"portsReplaced",
	"alarms",
	/** Alarms that called a nurse between 19:00 and 07:00. */
	"nightCalls",
	/** Hands-on minutes of nurses. */
	"nurseMin",
] as const;
export type TotalName = (typeof totalNames)[number];

export type Unit = "mL" | "min" | "" | "share" | "currency";

interface TotalFact {
	/** `` for a count. */
	readonly unit: Unit;
	/** Which is better for patient and ward. What a wash and what dilution are worth is for the clinician: null, neither. */
	readonly better: "lower" | "higher" | null;
	/** Width of the bins of its histogram: counts are exact. */
	readonly bin: number;
}

const count = (better: TotalFact["better"]): TotalFact => ({ unit: "", better, bin: 1 });
const volume = (better: TotalFact["better"]): TotalFact => ({ unit: "mL", better, bin: 1 });
const time = (better: TotalFact["better"]): TotalFact => ({ unit: "min", better, bin: 0.1 });

/** Every total in the order in which it is read: liquid, washing, suction, what failed, what care did. */
export const totalFacts: { readonly [N in TotalName]: TotalFact } = {
	fills: count(null),
	washes: count(null),
	instilledMl: volume(null),
	exudateMl: volume(null),
	toCanisterMl: volume(null),
	woundOutputMl: volume(null),
	notReturnedMl: volume("lower"),
	weptMl: volume("lower"),
	discardedMl: volume(null),
	inDressingMl: volume(null),
	solutionWastedMl: volume("lower"),
	underSuctionMin: time("higher"),
	wetMin: time(null),
	offSuctionMin: time("lower"),
	meanExudateShare: { unit: "share", better: null, bin: 0.001 },
	breaches: count("lower"),
	alarms: count("lower"),
	nightCalls: count("lower"),
	nurseMin: time("lower"),
	canisterChanges: count("lower"),
	sourceChanges: count("lower"),
	dressingChanges: count("lower"),
	portsReplaced: count("lower"),
};

export const totalsAsRead = Object.keys(totalFacts) as readonly TotalName[]; // keys forgets the names it lists

export const isTotalName = (name: string): name is TotalName => Object.hasOwn(totalFacts, name);
