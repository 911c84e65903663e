/** What a dressing takes from the stores, in the order in which it is listed everywhere. */
export const pieceKinds = ["canister", "solution", "kit", "port", "line"] as const;
export type PieceKind = (typeof pieceKinds)[number];

/** Why a piece is taken. */
export const demandCauses = [
	"start",
	"at-capacity",
	"round",
	"scripted",
	"empty",
	"expired",
	"dressing-change",
	"clogged",
] as const;
export type DemandCause = (typeof demandCauses)[number];
