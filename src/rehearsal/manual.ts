import { constantsWith } from "../physics/constants.ts";
import { type Act, acts, actWords } from "./acts.ts";
import { takings } from "./minutes.ts";
import { type Place, places, placeWords } from "./places.ts";

const minutesOf = new Map(
	takings(constantsWith()).map(({ what, minutes }) => [what, minutes]),
);

const row = (verb: string, name: Place | Act, words: string) =>
	`  ${`${verb} ${name}`.padEnd(23)} ${String(minutesOf.get(name) ?? "").padStart(4)} min  ${words}`;

/** What can be typed, or written in a script, one thing a line. */
export const manual: string = [
	"Looks and acts, one a line (# begins a remark), with their minutes unless the scenario says otherwise:",
	...places.map((place) => row("look", place, placeWords[place])),
	...acts.map((act) => row("act", act, actWords[act])),
	"  wait 10                           lets ten minutes pass",
	"  next                              lets time pass until something can be seen or heard",
	"  end                               ends the rehearsal, for the debrief",
].join("\n");
