import type { ConstantName, Constants } from "../../physics/constants.ts";
import type { DressingProcess } from "../../therapy/index.ts";
import { type Act, type Condition, conditions, type Place } from "../../vocabulary/index.ts";
import type { Bed } from "./bed.ts";

/** What is known of something that a trainee can do. Which causes it mends is said where the causes are. */
export interface ActFact {
	/** What doing it means, as it stands in a list of what can be done. */
	readonly words: string;
	/** What is said when it is done, whether it mended anything or not. */
	readonly done: string;
	/** Hands-on time: a constant of the model, or minutes that are assumed. */
	readonly takes: ConstantName | number;
	/** Where one looks before one does it: at one place at least of each group. */
	readonly lookFirst: readonly (readonly Place[])[];
	/** What its beginning does. */
	begin?(bed: Bed): void;
	/** Its last minutes, for which the pump stands still. */
	readonly last?: { minutes(constants: Constants): number; begin(process: DressingProcess): void };
	/** What its end does. */
	finish?(bed: Bed): void;
}

export const actFacts: { readonly [A in Act]: ActFact } = {
	"free-suction-line": {
		words: "straighten the suction line and lay it free",
		done: "The suction line lies free from end to end.",
		takes: "hands.kink",
		lookFirst: [["suction-line"]],
		finish({ process }) {
			const { alarms, lineKinked, port } = process;
			// Debris in the port keeps the alarm standing.
			if (port.debris === 0 && (alarms.stands("suction-path-obstructed") || lineKinked))
				process.mendByCall("suction-path-obstructed", true);
			else if (lineKinked) {
				process.kinks.free("suction");
			}
		},
	},
	"free-fill-line": {
		words: "straighten the fill line and lay it free",
		done: "The fill line lies free from end to end.",
		takes: "hands.kink",
		lookFirst: [["fill-line"]],
		finish: ({ process }) => process.mendByCall("fill-path-obstructed", true),
	},
	"change-canister": {
		words: "change the canister",
		done: "A new canister is in place.",
		takes: "hands.canister",
		lookFirst: [["canister"]],
		last: {
			minutes: (k) => Math.min(k["hands.round"], k["hands.canister"]),
			begin(process) {
				process.settle();
				process.pause("round");
				process.replan();
			},
		},
		finish: ({ process: { alarms, canister } }) =>
			canister.change(alarms.stands("canister-at-capacity") ? "at-capacity" : "round", canister.size),
	},
	"change-source": {
		words: "hang a new source of solution",
		done: "A new source hangs.",
		takes: "hands.source",
		lookFirst: [["source"]],
		finish: ({ process: { source } }) => source.renew(source.isEmpty ? "empty" : "round"),
	},
	"new-port": {
		words: "set a new port with a new line beside the old one",
		done: "A new port with a new line is on, beside the old one.",
		takes: "hands.port",
		lookFirst: [["suction-line"], ["port"]],
		last: { minutes: (k) => Math.min(k["port.pumpOff"], k["hands.port"]), begin: (process) => process.portWork(true) },
		finish({ process }) {
			process.portWork(false);
			process.mendByCall("suction-path-obstructed", false);
		},
	},
	"patch-edge": {
		words: "dry the edge and patch it with film",
		done: "The edge is dry and patched all round.",
		takes: "hands.patch",
		lookFirst: [["edge", "dressing"]],
		finish: ({ process }) => process.seal.patch("call"),
	},
	pause: {
		words: "stop the therapy",
		done: "The therapy is stopped.",
		takes: 0.5,
		lookFirst: [],
		finish: (bed) => bed.switchOff(true),
	},
	resume: {
		words: "start the therapy again, and clear what no longer has a cause",
		done: "The therapy runs.",
		takes: 0.5,
		lookFirst: [],
		finish(bed) {
			bed.switchOff(false);
			clearUnexplained(bed.process);
		},
	},
	"new-dressing": {
		words: "take the dressing off and put a new one on",
		done: "A new dressing is on.",
		takes: "hands.change",
		lookFirst: [["suction-line"], ["port"], ["edge"], ["dressing"]],
		begin: ({ process }) => process.change.start(),
	},
	"call-help": { words: "call for help", done: "Help has been called and is on its way.", takes: 1, lookFirst: [] },
};

const leaks = ({ air, constants }: DressingProcess) => air.leak > constants["leak.sound"];

/** What keeps an alarm standing that a hand can clear; the others end by themselves, or with what raised them. */
const explained: { readonly [C in Condition]?: (process: DressingProcess) => boolean } = {
	"suction-path-obstructed": (process) => process.lineKinked || process.port.debris > 0,
	"fill-path-obstructed": (process) => process.kinks.fill,
	"seal-leak": leaks,
	"depth-not-held": leaks,
};

/** Alarms whose causes are all gone end. */
function clearUnexplained(process: DressingProcess): void {
	for (const condition of conditions) {
		const stays = explained[condition];
		if (stays === undefined || stays(process) || !process.alarms.stands(condition)) continue;
		process.settle();
		process.alarms.end(condition, "call");
		process.replan();
	}
}
