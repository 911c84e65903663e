import type { Condition, Phase } from "../../vocabulary/index.ts";
import { Breaches } from "./breaches.ts";
import { Clogging } from "./clogging.ts";
import type { Endangered, Hazard, Move } from "./hazard.ts";
import { Kinks } from "./kinks.ts";
import { Outflow } from "./outflow.ts";

/** Every hazard, a line each. Who depends on one (a round patches the seal) asks for it by its name. */
export const hazards = {
	seal: (dressing: Endangered) => new Breaches(dressing),
	port: (dressing: Endangered) => new Clogging(dressing),
	kinks: (dressing: Endangered) => new Kinks(dressing),
	outflow: (dressing: Endangered) => new Outflow(dressing),
} satisfies Record<string, (dressing: Endangered) => Hazard>;

type Named = { readonly [N in keyof typeof hazards]: ReturnType<(typeof hazards)[N]> };

/** Those of some hazards that wait for a call. */
function waitingFor<C extends keyof Hazard>(all: readonly Hazard[], call: C) {
	return all.filter((hazard): hazard is Hazard & Required<Pick<Hazard, C>> => hazard[call] !== undefined);
}

/** The hazards of one dressing. Each is told only what it waits for, so that one that waits for little costs little. */
export class Hazards {
	readonly named: Named;
	readonly #all: readonly Hazard[];
	/** Those that are to be told of every span and every plan: few, if any. */
	readonly settling;
	readonly planning;
	readonly #entering;
	readonly #moved;

	constructor(dressing: Endangered) {
		const made = Object.entries(hazards).map(([name, make]) => [name, make(dressing)] as const);
		this.named = Object.fromEntries(made) as unknown as Named; // fromEntries forgets the names
		this.#all = made.map(([, hazard]) => hazard);
		const left = dressing.stochastic ? this.#all : [];
		this.#entering = waitingFor(left, "enter");
		this.settling = waitingFor(left, "settle");
		this.planning = waitingFor(left, "plan");
		this.#moved = waitingFor(left, "move");
	}

	begin(ageMin: number): void {
		for (const hazard of this.#all) hazard.begin?.(ageMin);
	}

	enter(phase: Phase, left: Phase | null): void {
		for (const hazard of this.#entering) hazard.enter(phase, left);
	}

	/** A turn in bed or a transfer. */
	move(kind: Move): void {
		for (const hazard of this.#moved) hazard.move(kind);
	}

	dressingOff(): void {
		for (const hazard of this.#all) hazard.dressingOff?.();
	}

	dressingOn(): void {
		for (const hazard of this.#all) hazard.dressingOn?.();
	}

	/** Mends, by call, whatever hazard explains the condition. */
	mend(condition: Condition): void {
		for (const hazard of this.#all) hazard.remedies?.[condition]?.();
	}
}
