import { type Constants, constantFacts, constantsWith } from "../../physics/constants.ts";
import { type Act, acts, type Place, places } from "../../vocabulary/index.ts";
import { actFacts } from "./acts.ts";
import { placeFacts } from "./places.ts";

/** Where a number comes from that nobody has measured. */
export const placeholder = { provenance: "assumed", source: "placeholder until a site calibrates it" } as const;

export function actMinutes(act: Act, constants: Constants): number {
	const { takes } = actFacts[act];
	return typeof takes === "number" ? takes : constants[takes];
}

export type Taking = Readonly<ReturnType<typeof takings>[number]>;

/** Every look and act with the minutes that it takes while the day goes on, and where the number comes from. */
export function takings(constants: Constants) {
	return [
		...places.map((what) => ({ what, minutes: placeFacts[what].minutes, ...placeholder })),
		...acts.map((what) => {
			const { takes } = actFacts[what];
			const minutes = actMinutes(what, constants);
			if (typeof takes === "number") return { what, minutes, ...placeholder };
			const { provenance, source, value } = constantFacts[takes];
			return { what, minutes, provenance, source: minutes === value ? source : "set by the scenario" };
		}),
	];
}

const minutesOf = new Map(takings(constantsWith()).map(({ what, minutes }) => [what, minutes]));

const row = (verb: string, name: Place | Act, { words }: { readonly words: string }) =>
	`  ${`${verb} ${name}`.padEnd(23)} ${String(minutesOf.get(name) ?? "").padStart(4)} min  ${words}`;

/** What can be typed, or written in a script, one thing a line. */
export const manual: string = [
	"Looks and acts, one a line (# begins a remark), with their minutes unless the scenario says otherwise:",
	...places.map((place) => row("look", place, placeFacts[place])),
	...acts.map((act) => row("act", act, actFacts[act])),
	"  wait 10                           lets ten minutes pass",
	"  next                              lets time pass until something can be seen or heard",
	"  end                               ends the rehearsal, for the debrief",
].join("\n");
