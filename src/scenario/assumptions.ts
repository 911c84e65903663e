import type * as z from "zod";
import {
	type ConstantName,
	constantFacts,
	constantNames,
} from "../physics/index.ts";
import { drawdownBounds } from "./drawdown.ts";
import { record } from "./leaf.ts";
import { type QuantityRule, quantity } from "./quantity.ts";

/** Bounds beyond "not negative": what would divide by zero, never end, or be no probability. */
const bounds: Partial<
	Record<ConstantName, Pick<QuantityRule, "from" | "to" | "above">>
> = {
	"air.ambient": { from: "300 mmHg", to: "1000 mmHg" },
	"pump.freeFlow": { from: "0.1 L/min", to: "1000 L/min" },
	"pump.maxDepth": { from: "10 mmHg", to: "700 mmHg" },
	"pump.drawdown": drawdownBounds,
	"pump.drawdownLimit": { from: "0 min", to: "60 min" },
	"line.volume": { from: "0.001 L", to: "10 L" },
	"foam.capacity": { from: "0.01", to: "1" },
	"foam.suggested": { from: "0.001", to: "10" },
	"foam.retained": { from: "0", to: "0.99" },
	"fill.flow": { from: "0.1 mL/min", to: "10000 mL/min" },
	"drain.conductance": { from: "0.001 mL/min/mmHg", to: "1000 mL/min/mmHg" },
	"drain.limit": { from: "0.1 min", to: "1 d" },
	"drain.factor": { from: "1", to: "100" },
	"path.closedLimit": { from: "0.01 min", to: "1 d" },
	"fill.stallLimit": { from: "0.01 min", to: "1 d" },
	"leak.sound": { from: "0 L/min/mmHg", to: "0.1 L/min/mmHg" },
	"leak.limit": { from: "0.001 L/min", to: "1000 L/min" },
	"leak.delay": { from: "0.01 min", to: "1 d" },
	"depth.low": { from: "0.01", to: "0.99" },
	"depth.delay": { from: "0.01 min", to: "1 d" },
	"absent.limit": { from: "0.1 min", to: "7 d" },
	"output.limit": { from: "1 mL", to: "20 L" },
	"output.window": { from: "1 min", to: "1 d" },
	"weep.perLeak": {
		from: "0 mL/min/(L/min/mmHg)",
		to: "100000 mL/min/(L/min/mmHg)",
	},
	"breach.dry": { from: "0 /h", to: "10 /h" },
	"breach.wetScale": { from: "1 min", to: "10000000 min" },
	"breach.wetShape": { from: "0.2", to: "20" },
	"breach.age": { from: "0 /d", to: "10 /d" },
	"breach.overfill": { from: "0", to: "10" },
	"breach.sizeMedian": { from: "0.000001 L/min/mmHg", to: "10 L/min/mmHg" },
	"breach.sizeSigma": { from: "0", to: "3" },
	"difficulty.easy": { from: "0", to: "100" },
	"difficulty.ordinary": { from: "0", to: "100" },
	"difficulty.awkward": { from: "0", to: "100" },
	"turn.jitter": { from: "0 min", to: "1 d" },
	"debris.dwellScale": { from: "0.1 min", to: "1 d" },
	"debris.perDay": { from: "0 /d", to: "10 /d" },
	"debris.every": { from: "10 min", to: "28 d" },
	"slough.clean": { from: "0", to: "100" },
	"slough.ordinary": { from: "0", to: "100" },
	"slough.heavy": { from: "0", to: "100" },
	"kink.rate": { from: "0 /h", to: "10 /h" },
	"exudate.patientCv": { from: "0", to: "3" },
	"exudate.blockCv": { from: "0", to: "3" },
	"exudate.block": { from: "10 min", to: "28 d" },
	"hands.round": { from: "0.01 min", to: "1 d" },
	"hands.canister": { from: "0.01 min", to: "1 d" },
	"hands.source": { from: "0.01 min", to: "1 d" },
	"hands.kink": { from: "0.01 min", to: "1 d" },
	"hands.port": { from: "0.01 min", to: "1 d" },
	"hands.patch": { from: "0.01 min", to: "1 d" },
	"hands.change": { from: "0.01 min", to: "1 d" },
	"port.pumpOff": { from: "0 min", to: "1 d" },
	"round.leakAbove": { from: "0 L/min", to: "1000 L/min" },
	"source.hang": { from: "30 min", to: "28 d" },
	"off.caution": { from: "0 min", to: "1 d" },
};

/** A constant without bounds of its own is a probability or a share. */
const share = { from: "0", to: "1" };

/** How a constant is written and what it may be. */
export function assumptionRule(name: ConstantName): QuantityRule {
	const { unit, meaning, value } = constantFacts[name];
	return {
		unit,
		what: meaning,
		example: written(value, unit),
		...(bounds[name] ?? share),
		description: `${meaning}; ${written(value, unit)} unless given`,
	};
}

/** A value with its unit as it stands in a file. */
export const written = (value: number, unit: string) =>
	unit === "" ? String(value) : `${value} ${unit}`;

const shape = Object.fromEntries(
	constantNames.map((name) => [
		name,
		quantity(assumptionRule(name)).optional(),
	]),
);

/** Overrides of constants by name, in the unit of the constant or one of its kind. */
export const assumptions = record(
	"assumptions",
	shape as { [N in ConstantName]: z.ZodOptional<ReturnType<typeof quantity>> },
); // fromEntries forgets the names
