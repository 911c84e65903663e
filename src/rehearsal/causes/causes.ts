import type { CauseName } from "../../vocabulary/index.ts";
import { bleeding } from "./bleeding.ts";
import { canisterFull } from "./canister-full.ts";
import type { Cause } from "./cause.ts";
import { dressingDislodged } from "./dressing-dislodged.ts";
import { fillLineKinked } from "./fill-line-kinked.ts";
import { leftOff } from "./left-off.ts";
import { portClogged } from "./port-clogged.ts";
import { sealBreach } from "./seal-breach.ts";
import { sourceEmpty } from "./source-empty.ts";
import { suctionLineKinked } from "./suction-line-kinked.ts";

/** Every kind of cause, a line each, in the order in which chances are drawn and likelihoods that are equal are listed. */
export const causes: readonly Cause[] = [
	fillLineKinked,
	suctionLineKinked,
	portClogged,
	canisterFull,
	sourceEmpty,
	sealBreach,
	dressingDislodged,
	leftOff,
	bleeding,
];

export function causeOf(name: CauseName): Cause {
	const cause = causes.find((one) => one.name === name);
	if (cause === undefined) throw new RangeError(`no cause is called ${name}`);
	return cause;
}
