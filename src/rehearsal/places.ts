/** Where a trainee can look. */
export const places = [
	"dressing",
	"suction-line",
	"fill-line",
	"canister",
	"source",
	"port",
	"edge",
	"unit",
] as const;

export type Place = (typeof places)[number];

/** What looking there means, as it stands in a list of what can be done. */
export const placeWords: { readonly [P in Place]: string } = {
	dressing: "look at the dressing, lights on",
	"suction-line": "follow the suction line from the dressing to the canister",
	"fill-line": "follow the fill line from the source to the dressing",
	canister: "look at the canister",
	source: "look at the source of solution",
	port: "look closely at the port and what is under it",
	edge: "listen and feel along the edge of the film",
	unit: "look whether the therapy unit runs",
};

export const isPlace = (text: string): text is Place =>
	places.some((place) => place === text);
