import { type EventId, exponential, type Substream } from "../../../src/engine/index.ts";
import { type ConstantFact, type ConstantName, constantFacts, constantNames } from "../../../src/physics/constants.ts";
import { eventPriority } from "../../../src/therapy/base/event-priority.ts";
import { type Purpose, purposes } from "../../../src/therapy/base/purposes.ts";
import type { Endangered, Hazard } from "../../../src/therapy/hazards/hazard.ts";
import { hazards } from "../../../src/therapy/hazards/hazards.ts";
import { type Condition, type ConditionFact, conditionFacts, conditions } from "../../../src/vocabulary/conditions.ts";

// The types of the lists know the program's own entries, and these pass for such.
const names = {
	rate: "clip.rate" as ConstantName,
	hands: "hands.clip" as ConstantName,
	condition: "clip-loose" as Condition,
	purpose: "clip.times" as Purpose,
};

/**
 * A hazard that the program does not have: the clip that holds the tubing works loose, after an exponential time, and
 * the dressing is off suction until somebody fastens it again. This class is the one file that it would be.
 */
export class LooseClip implements Hazard {
	/** How often one has come loose: for the test. */
	static times = 0;
	readonly remedies = { [names.condition]: () => this.#fasten() };
	readonly #dressing: Endangered;
	readonly #times: Substream;
	readonly #eLoose: EventId;
	#isLoose = false;

	constructor(dressing: Endangered) {
		this.#dressing = dressing;
		this.#times = dressing.substream(names.purpose);
		this.#eLoose = dressing.event("clip works loose", eventPriority.kink, () => this.#loosens());
	}

	begin(): void {
		this.#isLoose = false;
		if (this.#dressing.stochastic) this.#next();
	}

	dressingOff(): void {
		if (this.#isLoose) this.#fasten();
	}

	#next(): void {
		const { sim, constants } = this.#dressing;
		this.#dressing.at(this.#eLoose, sim.now + (60 / constants[names.rate]) * exponential(this.#times));
	}

	#loosens(): void {
		this.#next();
		if (this.#isLoose || this.#dressing.phase === "change") return;
		LooseClip.times++;
		this.#isLoose = true;
		this.#dressing.switchOff(true);
		this.#dressing.alarms.raise(names.condition);
	}

	#fasten(): void {
		this.#isLoose = false;
		this.#dressing.alarms.end(names.condition, "call");
		this.#dressing.switchOff(false);
	}
}

// The lists are to be read, not written, for all but this test.
const add = (list: object, entries: object): void => void Object.assign(list, entries);
const push = (list: readonly string[], ...entries: readonly string[]): void => void (list as string[]).push(...entries);

const assumed = (value: number, unit: string, meaning: string): ConstantFact => ({
	value,
	unit,
	provenance: "assumed",
	source: "made up for a test",
	meaning,
	range: constantFacts["kink.rate"].range,
});

/** The lines that it would be in the lists below it. To be imported before what reads the lists. */
add(constantFacts, {
	"clip.rate": assumed(0.1, "/h", "clips that work loose"),
	"hands.clip": assumed(2, "min", "hands-on time to fasten a clip"),
});
push(constantNames, "clip.rate", "hands.clip");
add(conditionFacts, {
	"clip-loose": { priority: "medium", hands: names.hands, withholdsFill: true } satisfies ConditionFact,
});
push(conditions, "clip-loose");
push(purposes, "clip.times", "response.clip-loose");
add(hazards, { clip: (dressing: Endangered) => new LooseClip(dressing) });

// What it is called for people. Loaded last: words are made of the lists.
const { conditionWords } = await import("../../../src/words/code-words.ts");
add(conditionWords, { "clip-loose": "clip loose" });
const { measureWords } = await import("../../../src/words/measure-words.ts");
const ofAlarm = { label: "Alarms: clip loose", sentence: "alarms for clip loose" };
add(measureWords, { "alarms.clip-loose": { ...measureWords["alarms.seal-leak"], ...ofAlarm } });
