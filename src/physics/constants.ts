/** Where a number comes from, printed wherever it is used. */
export const provenances = ["published", "common practice", "assumed"] as const;
export type Provenance = (typeof provenances)[number];

export interface ConstantFact {
	readonly value: number;
	/** The unit the number is kept in; "" for a bare ratio or count. */
	readonly unit: string;
	readonly provenance: Provenance;
	readonly source: string;
	/** What the number means, one phrase for a reader at the bedside. */
	readonly meaning: string;
	/** What it may be: no value that would divide by zero, never end, or be no probability. */
	readonly range: Range;
}

/** Bounds as they stand in a file and in a sentence, each with its unit. */
export type Range = `from ${string} to ${string}` | `above ${string} and up to ${string}`;

/** Of a probability, and of a share of a whole. */
const share = "from 0 to 1";
const spread = "from 0 to 3";
const upToADay = "from 0.1 min to 1 d";

/** Makes the facts of one origin. */
const from =
	(provenance: Provenance, source: string) =>
	(value: number, unit: string, meaning: string, range: Range = share): ConstantFact => {
		return { value, unit, provenance, source, meaning, range };
	};

const assumed = from("assumed", "placeholder until a site calibrates it");
const standard = from("published", "standard atmosphere, 101325 Pa = 760 torr");
const practice = from("common practice", "common practice, no source");

/** Every number that the model takes for granted. A scenario may override any of them, by name, under `assumptions:`. */
export const constantFacts = {
	"air.ambient": standard(760, "mmHg", "pressure of the room", "from 300 mmHg to 1000 mmHg"),
	"pump.freeFlow": assumed(8, "L/min", "flow of the pump against no suction", "from 0.1 L/min to 1000 L/min"),
	"pump.maxDepth": assumed(250, "mmHg", "deepest suction the pump reaches with no flow", "from 10 mmHg to 700 mmHg"),
	"pump.drawdown": assumed(
		0.15,
		"",
		"share of the pump's flow that is let work in a drawdown, where the regimen gives none",
		"from 0.1 % to 100 %",
	),
	"pump.drawdownLimit": assumed(3, "min", "longest time that a drawdown holds the pump back", "from 0 min to 60 min"),
	"line.volume": assumed(0.15, "L", "air in the lines", "from 0.001 L to 10 L"),
	"foam.capacity": assumed(0.34, "mL/mL", "liquid that foam takes without pooling, per foam volume", "from 0.01 to 1"),
	"foam.suggested": {
		...practice(0.26, "mL/mL", "suggested fill, per foam volume", "from 0.001 to 10"),
		source:
			"common practice, no source: about 60 mL for a medium dressing with a thin cover layer, about 100 mL with a thick one",
	},
	"foam.retained": assumed(0.08, "mL/mL", "liquid that suction leaves in the foam, per capacity", "from 0 to 0.99"),
	"fill.flow": assumed(60, "mL/min", "flow of solution while filling", "from 0.1 mL/min to 10000 mL/min"),
	"drain.conductance": assumed(
		1,
		"mL/min/mmHg",
		"drain flow per depth through a clear port",
		"from 0.001 mL/min/mmHg to 1000 mL/min/mmHg",
	),
	"drain.limit": assumed(6, "min", "shortest time after which an unfinished drain raises an alarm", upToADay),
	"drain.factor": assumed(2, "", "multiple of the expected drain time after which an alarm is raised", "from 1 to 100"),
	"path.closedLimit": assumed(3, "min", "time a closed suction path stands before an alarm", "from 0.01 min to 1 d"),
	"fill.stallLimit": assumed(0.5, "min", "time a fill stands still before an alarm", "from 0.01 min to 1 d"),
	"leak.sound": assumed(0.0002, "L/min/mmHg", "leak of a sound seal", "from 0 L/min/mmHg to 0.1 L/min/mmHg"),
	"leak.limit": assumed(1.8, "L/min", "leak flow above which an alarm is raised", "from 0.001 L/min to 1000 L/min"),
	"leak.delay": assumed(1, "min", "time the leak flow stands before an alarm", "from 0.01 min to 1 d"),
	"depth.low": assumed(0.8, "", "share of the set depth below which suction counts as low", "from 0.01 to 0.99"),
	"depth.delay": assumed(5, "min", "time a low depth stands before an alarm", "from 0.01 min to 1 d"),
	"absent.limit": assumed(20, "min", "unbroken time off suction before an alarm", "from 0.1 min to 7 d"),
	"output.limit": assumed(
		200,
		"mL",
		"wound output within the window above which an alarm is raised",
		"from 1 mL to 20 L",
	),
	"output.window": assumed(60, "min", "window over which wound output is summed", "from 1 min to 1 d"),
	"weep.perLeak": assumed(
		60,
		"mL/min/(L/min/mmHg)",
		"liquid lost at the edge per added leak while vented",
		"from 0 mL/min/(L/min/mmHg) to 100000 mL/min/(L/min/mmHg)",
	),
	"breach.dry": assumed(0.004, "/h", "breaches of the seal under suction", "from 0 /h to 10 /h"),
	"breach.wetScale": assumed(57.7, "min", "Weibull scale of a breach while wet", "from 1 min to 10000000 min"),
	"breach.wetShape": assumed(2, "", "Weibull shape of a breach while wet", "from 0.2 to 20"),
	"breach.age": assumed(0.25, "/d", "growth of the breach hazard per day of dressing age", "from 0 /d to 10 /d"),
	"breach.overfill": assumed(4, "", "exponent of the breach hazard for a fill above capacity", "from 0 to 10"),
	"breach.sizeMedian": assumed(
		0.012,
		"L/min/mmHg",
		"median leak that a breach adds",
		"from 0.000001 L/min/mmHg to 10 L/min/mmHg",
	),
	"breach.sizeSigma": assumed(0.8, "", "lognormal sigma of the leak that a breach adds", spread),
	"difficulty.easy": assumed(0.6, "", "breach hazard of an easy seal", "from 0 to 100"),
	"difficulty.ordinary": assumed(1, "", "breach hazard of an ordinary seal", "from 0 to 100"),
	"difficulty.awkward": assumed(1.5, "", "breach hazard of an awkward seal", "from 0 to 100"),
	"turn.held": assumed(0.005, "", "chance that a turn in bed breaches a held dressing"),
	"turn.wet": assumed(0.1, "", "chance that a turn in bed breaches a wet dressing"),
	"turn.between": assumed(0.03, "", "chance that a turn in bed breaches a dressing neither held nor wet"),
	"turn.jitter": assumed(30, "min", "most that a turn comes early or late", "from 0 min to 1 d"),
	"transfer.held": assumed(0.02, "", "chance that a transfer breaches a held dressing"),
	"transfer.wet": assumed(0.3, "", "chance that a transfer breaches a wet dressing"),
	"transfer.between": assumed(0.1, "", "chance that a transfer breaches a dressing neither held nor wet"),
	"debris.perDrain": assumed(0.02, "", "mean share of the port that debris closes at a drain"),
	"debris.dwellScale": assumed(8, "min", "dwell over which debris loosens", upToADay),
	"debris.perDay": assumed(0.03, "/d", "share of the port that suction alone closes", "from 0 /d to 10 /d"),
	"debris.every": assumed(4, "h", "longest interval at which debris of suction alone is added", "from 10 min to 28 d"),
	"clump.chance": assumed(0.01, "", "chance that a drain brings a clump"),
	"clump.mean": assumed(0.3, "", "mean share of the port that a clump closes"),
	"slough.clean": assumed(0.3, "", "debris of a clean wound", "from 0 to 100"),
	"slough.ordinary": assumed(1, "", "debris of an ordinary wound", "from 0 to 100"),
	"slough.heavy": assumed(3, "", "debris of a heavily sloughing wound", "from 0 to 100"),
	"kink.rate": assumed(0.004, "/h", "kinks of a line", "from 0 /h to 10 /h"),
	"kink.suctionShare": assumed(0.6, "", "share of kinks in the suction line"),
	"exudate.patientCv": assumed(0.35, "", "spread of exudate between patients, coefficient of variation", spread),
	"exudate.blockCv": assumed(0.25, "", "spread of exudate between blocks of a day, coefficient of variation", spread),
	"exudate.correlation": assumed(0.7, "", "correlation of exudate from block to block"),
	"exudate.block": assumed(4, "h", "length of a block of constant exudate", "from 10 min to 28 d"),
	"hands.canister": assumed(3, "min", "hands-on time to change a canister", "from 0.01 min to 1 d"),
	"hands.source": assumed(3, "min", "hands-on time to renew the solution", "from 0.01 min to 1 d"),
	"hands.kink": assumed(1, "min", "hands-on time to free a kink that was seen", "from 0.01 min to 1 d"),
	"hands.port": assumed(15, "min", "hands-on time for a new suction port", "from 0.01 min to 1 d"),
	"hands.patch": assumed(10, "min", "hands-on time to patch the seal", "from 0.01 min to 1 d"),
	"hands.round": assumed(1, "min", "pump off for a canister changed at a round", "from 0.01 min to 1 d"),
	"hands.change": assumed(30, "min", "length of a dressing change", "from 0.01 min to 1 d"),
	"port.pumpOff": assumed(5, "min", "last minutes of a new port, with the pump off", "from 0 min to 1 d"),
	"round.canisterAbove": assumed(0.8, "", "share of its size at which a round changes a canister"),
	"round.leakAbove": assumed(
		0.5,
		"L/min",
		"leak flow at the set depth that a round patches",
		"from 0 L/min to 1000 L/min",
	),
	"source.hang": {
		...practice(24, "h", "time that an opened source of solution hangs", "from 30 min to 28 d"),
		source: "common practice, no source; local policy and the solution's label come first",
	},
	"off.caution": {
		...practice(120, "min", "time off suction in any 24 h that raises a caution", "from 0 min to 1 d"),
		source: "common practice, no source; local policy comes first",
	},
	"notice.canister": assumed(0.9, "", "share of its size at which a canister is noted as nearly full"),
} as const satisfies Record<string, ConstantFact>;
export type ConstantName = keyof typeof constantFacts;

/** The numbers themselves, by name, in the units of `constantFacts`. */
export type Constants = { readonly [N in ConstantName]: number };

export const constantNames = Object.keys(constantFacts) as readonly ConstantName[];

/** The defaults, with any overrides laid over them. */
export function constantsWith(overrides: Partial<Constants> = {}): Constants {
	const values = Object.fromEntries(constantNames.map((name) => [name, constantFacts[name].value]));
	return { ...values, ...overrides } as Constants; // fromEntries forgets the names that constantNames lists
}
