/** What a random stream is drawn for. The place in this list is part of a stream's name: the list only grows at its end. */
export const purposes = [
	"exudate.patient",
	"exudate.blocks",
	"outflow.times",
	"outflow.volumes",
	"breach.dry",
	"breach.dry.size",
	"breach.wet",
	"breach.wet.size",
	"turn.jitter",
	"turn.outcome",
	"turn.size",
	"transfer.outcome",
	"transfer.size",
	"debris.drain",
	"debris.clump",
	"kink.times",
	"kink.line",
	"response.canister-at-capacity",
	"response.suction-path-obstructed",
	"response.fill-path-obstructed",
	"response.seal-leak",
	"response.depth-not-held",
	"response.source-empty",
	"ward.arrivals",
	"ward.kind",
	"ward.length",
	"ward.age",
	"stores.lead",
] as const;

export type Purpose = (typeof purposes)[number];

/** The number of a purpose, for the name of its stream. */
export function purposeNumber(purpose: Purpose): number {
	return purposes.indexOf(purpose);
}
