import type { DemandCause, PieceKind } from "../../vocabulary/index.ts";

/** Where a dressing takes its pieces from. Without stores nothing is ever lacking. */
export interface Stores {
	/** Takes a piece and returns its size in mL (0 where size means nothing); null where none is there: then `late` is called with the size when one has come. */
	take(kind: PieceKind, cause: DemandCause, late: (sizeMl: number) => void): number | null;
	has(kind: PieceKind): boolean;
	/** What was waited for is no longer needed. */
	withdraw(kind: PieceKind): void;
}
