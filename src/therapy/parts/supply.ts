import type { Dressing } from "../../scenario/index.ts";
import type { DemandCause, PieceKind } from "../../vocabulary/index.ts";
import type { Stores } from "../base/stores.ts";

/** What one dressing takes from the stores, if there are any. While a piece is waited for, the therapy is off. */
export class Supply {
	readonly #stores: Stores | null;
	readonly #spec: Dressing;
	readonly #switchOff: (off: boolean) => void;
	/** Kinds of pieces that are waited for. */
	readonly #lacking = new Set<PieceKind>();

	constructor(stores: Stores | null, spec: Dressing, switchOff: (off: boolean) => void) {
		this.#stores = stores;
		this.#spec = spec;
		this.#switchOff = switchOff;
	}

	reset(): void {
		this.#lacking.clear();
	}

	/** Nothing is waited for any longer. */
	stop(): void {
		for (const kind of this.#lacking) this.#stores?.withdraw(kind);
		this.#lacking.clear();
	}

	need(kind: PieceKind, cause: DemandCause, work: (sizeMl: number) => void): void {
		if (this.#stores === null) {
			work(kind === "solution" ? this.#spec.sourceMl : this.#spec.canisterMl);
			return;
		}
		if (this.#lacking.has(kind)) return;
		const sizeMl = this.#stores.take(kind, cause, (late) => {
			this.#lacking.delete(kind);
			work(late);
			this.#switchOff(false);
		});
		if (sizeMl !== null) {
			work(sizeMl);
			return;
		}
		this.#lacking.add(kind);
		this.#switchOff(true);
	}

	has(kind: PieceKind): boolean {
		return this.#stores === null || (!this.#lacking.has(kind) && this.#stores.has(kind));
	}

	/** A piece that was waited for has come with something else. */
	comesOtherwise(kind: PieceKind): void {
		if (!this.#lacking.delete(kind)) return;
		this.#stores?.withdraw(kind);
		this.#switchOff(false);
	}
}
