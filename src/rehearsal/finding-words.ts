import type { Bedside } from "./bedside.ts";
import type { Place } from "./places.ts";

/** What a look finds, in sentences: the words of its number, with what can be read there. */
export function findingWords(
	place: Place,
	code: number,
	{ process, now }: Bedside,
): string {
	const [first, blood] = [(code & 1) > 0, (code & 2) > 0];
	const words: string[] = [];
	switch (place) {
		case "dressing":
			if (process.phase === "change")
				return "There is no dressing on the wound at the moment.";
			words.push(
				first
					? "A corner of the film has come up, and the foam under it lies open."
					: "The film lies flat all round as far as the eye can tell.",
				blood
					? "The foam is red with fresh blood."
					: "What shows in the foam is wound fluid.",
			);
			break;
		case "suction-line":
			words.push(
				first
					? "The suction line is bent flat where the patient lies on it: a kink."
					: "The suction line runs freely from end to end.",
			);
			if (blood) words.push("There is fresh blood in it.");
			break;
		case "fill-line":
			words.push(
				first
					? "The fill line is bent sharply at the bed rail: a kink."
					: "The fill line runs freely from end to end.",
			);
			break;
		case "canister":
			words.push(
				`It holds about ${Math.round(process.canisterAt(now))} of ${process.canister.size} mL${first ? " and is at capacity" : ""}.`,
			);
			if (blood) words.push("There is fresh blood in it.");
			break;
		case "source":
			words.push(
				first
					? "The source hangs empty."
					: `It holds about ${Math.round(Math.max(0, process.sourceAt(now)))} mL.`,
			);
			break;
		case "port":
			words.push(
				first
					? "Debris sits in the mouth of the port: it is clogged."
					: "The port is clear.",
			);
			break;
		case "edge":
			words.push(
				first
					? process.phase === "fill" || process.phase === "dwell"
						? "The skin beside the film is wet: it leaks there."
						: "There is a hiss at one place along the edge: it leaks there."
					: code === 0
						? "Nothing is to be heard or felt along the edge."
						: "Nothing is to be heard, as no air is drawn now, and the skin is dry: that says little.",
			);
			break;
		case "unit":
			words.push(
				first ? "The therapy unit is switched off." : "The therapy unit is on.",
			);
			break;
	}
	return words.join(" ");
}
