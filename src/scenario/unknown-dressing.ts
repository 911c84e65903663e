import { type Found, found } from "./issues.ts";
import { nearest } from "./nearest.ts";
import { type Keys, received } from "./path.ts";

/** The sentence for an id that no dressing has. */
export function unknownDressing(
	keys: Keys,
	id: string,
	ids: readonly (string | undefined)[],
): Found {
	const known = ids.filter((other) => other !== undefined);
	const listed = known.length <= 10 ? `: ${known.join(", ")}` : "";
	return found(
		keys,
		`the id of a dressing${listed}`,
		received(id),
		nearest(id, known),
	);
}
