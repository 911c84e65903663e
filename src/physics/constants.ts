/** Where a number comes from, printed wherever it is used. */
export type Provenance = "published" | "common practice" | "assumed";

export interface ConstantFact {
	readonly value: number;
	/** The unit the number is kept in; "" for a bare ratio or count. */
	readonly unit: string;
	readonly provenance: Provenance;
	readonly source: string;
	/** What the number means, one phrase for a reader at the bedside. */
	readonly meaning: string;
}

const assumed = (
	value: number,
	unit: string,
	meaning: string,
): ConstantFact => ({
	value,
	unit,
	provenance: "assumed",
	source: "placeholder until a site calibrates it",
	meaning,
});

const practice = (
	value: number,
	unit: string,
	meaning: string,
): ConstantFact => ({
	value,
	unit,
	provenance: "common practice",
	source: "common practice, no source",
	meaning,
});

/** Every number that the model takes for granted. A scenario may override any of them, by name, under `assumptions:`. */
export const constantFacts = {
	"air.ambient": {
		value: 760,
		unit: "mmHg",
		provenance: "published",
		source: "standard atmosphere, 101325 Pa = 760 torr",
		meaning: "pressure of the room",
	},
	"pump.freeFlow": assumed(8, "L/min", "flow of the pump against no suction"),
	"pump.maxDepth": assumed(
		250,
		"mmHg",
		"deepest suction the pump reaches with no flow",
	),
	"pump.drawdown": assumed(
		0.15,
		"",
		"share of the pump's flow that is let work in a drawdown, where the regimen gives none",
	),
	"pump.drawdownLimit": assumed(
		3,
		"min",
		"longest time that a drawdown holds the pump back",
	),
	"line.volume": assumed(0.15, "L", "air in the lines"),
	"foam.capacity": assumed(
		0.34,
		"mL/mL",
		"liquid that foam takes without pooling, per foam volume",
	),
	"foam.suggested": {
		...practice(0.26, "mL/mL", "suggested fill, per foam volume"),
		source:
			"common practice, no source: about 60 mL for a medium dressing with a thin cover layer, about 100 mL with a thick one",
	},
	"foam.retained": assumed(
		0.08,
		"mL/mL",
		"liquid that suction leaves in the foam, per capacity",
	),
	"fill.flow": assumed(60, "mL/min", "flow of solution while filling"),
	"drain.conductance": assumed(
		1,
		"mL/min/mmHg",
		"drain flow per depth through a clear port",
	),
	"drain.limit": assumed(
		6,
		"min",
		"shortest time after which an unfinished drain raises an alarm",
	),
	"drain.factor": assumed(
		2,
		"",
		"multiple of the expected drain time after which an alarm is raised",
	),
	"path.closedLimit": assumed(
		3,
		"min",
		"time a closed suction path stands before an alarm",
	),
	"fill.stallLimit": assumed(
		0.5,
		"min",
		"time a fill stands still before an alarm",
	),
	"leak.sound": assumed(0.0002, "L/min/mmHg", "leak of a sound seal"),
	"leak.limit": assumed(
		1.8,
		"L/min",
		"leak flow above which an alarm is raised",
	),
	"leak.delay": assumed(1, "min", "time the leak flow stands before an alarm"),
	"depth.low": assumed(
		0.8,
		"",
		"share of the set depth below which suction counts as low",
	),
	"depth.delay": assumed(5, "min", "time a low depth stands before an alarm"),
	"absent.limit": assumed(
		20,
		"min",
		"unbroken time off suction before an alarm",
	),
	"output.limit": assumed(
		200,
		"mL",
		"wound output within the window above which an alarm is raised",
	),
	"output.window": assumed(
		60,
		"min",
		"window over which wound output is summed",
	),
	"weep.perLeak": assumed(
		60,
		"mL/min/(L/min/mmHg)",
		"liquid lost at the edge per added leak while vented",
	),
	"breach.dry": assumed(0.004, "/h", "breaches of the seal under suction"),
	"breach.wetScale": assumed(
		57.7,
		"min",
		"Weibull scale of a breach while wet",
	),
	"breach.wetShape": assumed(2, "", "Weibull shape of a breach while wet"),
	"breach.age": assumed(
		0.25,
		"/d",
		"growth of the breach hazard per day of dressing age",
	),
	"breach.overfill": assumed(
		4,
		"",
		"exponent of the breach hazard for a fill above capacity",
	),
	"breach.sizeMedian": assumed(
		0.012,
		"L/min/mmHg",
		"median leak that a breach adds",
	),
	"breach.sizeSigma": assumed(
		0.8,
		"",
		"lognormal sigma of the leak that a breach adds",
	),
	"difficulty.easy": assumed(0.6, "", "breach hazard of an easy seal"),
	"difficulty.ordinary": assumed(1, "", "breach hazard of an ordinary seal"),
	"difficulty.awkward": assumed(1.5, "", "breach hazard of an awkward seal"),
	"turn.held": assumed(
		0.005,
		"",
		"chance that a turn in bed breaches a held dressing",
	),
	"turn.wet": assumed(
		0.1,
		"",
		"chance that a turn in bed breaches a wet dressing",
	),
	"turn.between": assumed(
		0.03,
		"",
		"chance that a turn in bed breaches a dressing neither held nor wet",
	),
	"turn.jitter": assumed(30, "min", "most that a turn comes early or late"),
	"transfer.held": assumed(
		0.02,
		"",
		"chance that a transfer breaches a held dressing",
	),
	"transfer.wet": assumed(
		0.3,
		"",
		"chance that a transfer breaches a wet dressing",
	),
	"transfer.between": assumed(
		0.1,
		"",
		"chance that a transfer breaches a dressing neither held nor wet",
	),
	"debris.perDrain": assumed(
		0.02,
		"",
		"mean share of the port that debris closes at a drain",
	),
	"debris.dwellScale": assumed(8, "min", "dwell over which debris loosens"),
	"debris.perDay": assumed(
		0.03,
		"/d",
		"share of the port that suction alone closes",
	),
	"debris.every": assumed(
		4,
		"h",
		"longest interval at which debris of suction alone is added",
	),
	"clump.chance": assumed(0.01, "", "chance that a drain brings a clump"),
	"clump.mean": assumed(0.3, "", "mean share of the port that a clump closes"),
	"slough.clean": assumed(0.3, "", "debris of a clean wound"),
	"slough.ordinary": assumed(1, "", "debris of an ordinary wound"),
	"slough.heavy": assumed(3, "", "debris of a heavily sloughing wound"),
	"kink.rate": assumed(0.004, "/h", "kinks of a line"),
	"kink.suctionShare": assumed(0.6, "", "share of kinks in the suction line"),
	"exudate.patientCv": assumed(
		0.35,
		"",
		"spread of exudate between patients, coefficient of variation",
	),
	"exudate.blockCv": assumed(
		0.25,
		"",
		"spread of exudate between blocks of a day, coefficient of variation",
	),
	"exudate.correlation": assumed(
		0.7,
		"",
		"correlation of exudate from block to block",
	),
	"exudate.block": assumed(4, "h", "length of a block of constant exudate"),
	"hands.canister": assumed(3, "min", "hands-on time to change a canister"),
	"hands.source": assumed(3, "min", "hands-on time to renew the solution"),
	"hands.kink": assumed(1, "min", "hands-on time to free a kink that was seen"),
	"hands.port": assumed(15, "min", "hands-on time for a new suction port"),
	"hands.patch": assumed(10, "min", "hands-on time to patch the seal"),
	"hands.round": assumed(
		1,
		"min",
		"pump off for a canister changed at a round",
	),
	"hands.change": assumed(30, "min", "length of a dressing change"),
	"port.pumpOff": assumed(
		5,
		"min",
		"last minutes of a new port, with the pump off",
	),
	"round.canisterAbove": assumed(
		0.8,
		"",
		"share of its size at which a round changes a canister",
	),
	"round.leakAbove": assumed(
		0.5,
		"L/min",
		"leak flow at the set depth that a round patches",
	),
	"source.hang": {
		...practice(24, "h", "time that an opened source of solution hangs"),
		source:
			"common practice, no source; local policy and the solution's label come first",
	},
	"off.caution": {
		...practice(
			120,
			"min",
			"time off suction in any 24 h that raises a caution",
		),
		source: "common practice, no source; local policy comes first",
	},
	"notice.canister": assumed(
		0.9,
		"",
		"share of its size at which a canister is noted as nearly full",
	),
} as const satisfies Record<string, ConstantFact>;

export type ConstantName = keyof typeof constantFacts;

/** The numbers themselves, by name, in the units of `constantFacts`. */
export type Constants = { readonly [N in ConstantName]: number };

export const constantNames = Object.keys(
	constantFacts,
) as readonly ConstantName[];

/** The defaults, with any overrides laid over them. */
export function constantsWith(overrides: Partial<Constants> = {}): Constants {
	const values = Object.fromEntries(
		constantNames.map((name) => [name, constantFacts[name].value]),
	);
	return { ...values, ...overrides } as Constants; // fromEntries forgets the names that constantNames lists
}
