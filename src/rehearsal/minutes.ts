import {
	type ConstantName,
	type Constants,
	constantFacts,
	type Provenance,
} from "../physics/constants.ts";
import { type Act, acts } from "./acts.ts";
import { type Place, places } from "./places.ts";

/** Minutes that a look or an act takes while the day goes on, and where the number comes from. */
export interface Taking {
	readonly what: Place | Act;
	readonly minutes: number;
	readonly provenance: Provenance;
	readonly source: string;
}

const assumed = (minutes: number) => ({
	minutes,
	provenance: "assumed" as const,
	source: "placeholder until a site calibrates it",
});

const looking: { readonly [P in Place]: ReturnType<typeof assumed> } = {
	dressing: assumed(1),
	"suction-line": assumed(1),
	"fill-line": assumed(1),
	canister: assumed(0.5),
	source: assumed(0.5),
	port: assumed(2),
	edge: assumed(3),
	unit: assumed(0.5),
};

/** Acts whose hands-on time is a constant of the model take that; the others are given here. */
const acting: { readonly [A in Act]: ConstantName | number } = {
	"free-suction-line": "hands.kink",
	"free-fill-line": "hands.kink",
	"change-canister": "hands.canister",
	"change-source": "hands.source",
	"new-port": "hands.port",
	"patch-edge": "hands.patch",
	pause: 0.5,
	resume: 0.5,
	"new-dressing": "hands.change",
	"call-help": 1,
};

export const lookMinutes = (place: Place): number => looking[place].minutes;

export function actMinutes(act: Act, constants: Constants): number {
	const from = acting[act];
	return typeof from === "number" ? from : constants[from];
}

/** Every look and act with its minutes and their provenance. */
export function takings(constants: Constants): Taking[] {
	return [
		...places.map((what) => ({ what, ...looking[what] })),
		...acts.map((what) => {
			const from = acting[what];
			if (typeof from === "number") return { what, ...assumed(from) };
			const { provenance, source, value } = constantFacts[from];
			const minutes = constants[from];
			return {
				what,
				minutes,
				provenance,
				source: minutes === value ? source : "set by the scenario",
			};
		}),
	];
}
