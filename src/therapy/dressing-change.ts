import type { EventId } from "../engine/index.ts";
import type { Care } from "../scenario/index.ts";
import { type Condition, conditions } from "../vocabulary/index.ts";
import { eventPriority } from "./base/event-priority.ts";
import type { Cycle } from "./cycle.ts";
import type { Hazards } from "./hazards/hazards.ts";
import type { OffSuction } from "./parts/off-suction.ts";
import type { Source } from "./parts/source.ts";
import type { Supply } from "./parts/supply.ts";
import type { Whole } from "./parts/whole.ts";
import type { WoundOutput } from "./parts/wound-output.ts";
import type { Regimens } from "./regimens.ts";

/** What a change touches. */
interface Changed extends Whole {
	readonly cycle: Cycle;
	readonly regimens: Regimens;
	readonly hazards: Hazards;
	readonly wound: WoundOutput;
	readonly source: Source;
	readonly off: OffSuction;
	readonly supply: Supply;
}

/** Alarms of the unit, which stays as it is. */
const ofUnit: readonly Condition[] = ["canister-at-capacity", "source-empty"];

/** Takes the dressing off; everything but the unit starts anew half an hour later. */
export class DressingChange {
	/** Since the therapy began. */
	count = 0;
	readonly #whole: Changed;
	/** Every how many minutes of age the dressing is changed; null: not by age. */
	readonly #everyMin: number | null;
	readonly #eDue: EventId;
	readonly #eEnd: EventId;

	constructor(whole: Changed, { dressingChange }: Care) {
		this.#whole = whole;
		this.#everyMin = dressingChange !== null && "everyMin" in dressingChange ? dressingChange.everyMin : null;
		this.#eDue = whole.event("dressing change is due", eventPriority.scripted, () => this.start());
		this.#eEnd = whole.event("dressing change ends", eventPriority.boundary, () => this.#ends());
	}

	begin(ageMin: number): void {
		this.count = 0;
		this.#plan(ageMin);
	}

	/** As soon as there is a kit; does nothing while one is under way. */
	start(): void {
		if (this.#whole.phase === "change") return;
		this.#whole.need("kit", "dressing-change", () => this.#starts());
	}

	#plan(ageMin: number): void {
		if (this.#everyMin !== null) this.#whole.at(this.#eDue, this.#whole.sim.now + Math.max(0, this.#everyMin - ageMin));
	}

	#starts(): void {
		const { sim, air, liquid, alarms, source, constants } = this.#whole;
		// The new dressing brings a port of its own.
		this.#whole.supply.comesOtherwise("port");
		this.#whole.settle();
		this.#whole.cycle.interrupt();
		sim.cancel(this.#eDue);
		liquid.discard();
		air.depth = 0;
		this.#whole.hazards.dressingOff();
		source.rest();
		this.#whole.wound.dressingOff();
		for (const condition of conditions) if (!ofUnit.includes(condition)) alarms.end(condition, "dressing-change");
		this.count++;
		alarms.nurseMin += constants["hands.change"];
		this.#whole.at(this.#eEnd, sim.now + constants["hands.change"]);
		source.fillOver();
		this.#whole.replan();
	}

	#ends(): void {
		this.#whole.settle();
		this.#plan(0);
		this.#whole.off.end();
		this.#whole.wound.dressingOn();
		this.#whole.hazards.dressingOn();
		this.#whole.regimens.takeOver();
		this.#whole.cycle.begin();
	}
}
