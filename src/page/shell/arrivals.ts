import { isCaseLink, readCaseLink } from "../../rehearsal/index.ts";
import { isWard } from "../../scenario/index.ts";
import { type Sheet, sheetOf } from "../editor/history.ts";
import { isScenarioLink, readScenarioLink } from "../editor/scenario-link.ts";
import { type OpenedFile, placedWords, placingOf } from "../editor/ward-files.ts";
import type { Handed } from "../worker/orders.ts";
import type { Room } from "./room.ts";
import type { ViewName } from "./views.ts";

/** What comes to the page from outside, files and links, and where it is put. */
export function arrivals(of: {
	readonly day: Room;
	readonly stores: Room;
	view(): ViewName;
	turn(view: ViewName): void;
	begin(handed: Handed): void;
	say(words: string): void;
}) {
	function layDay(text: string): void {
		of.day.bench.lay(text);
		if (of.view() === "Stores") of.turn("Day");
	}

	function layWard({ text, beside }: Sheet): void {
		of.stores.bench.lay(text, beside);
		if (of.view() !== "Stores") of.turn("Stores");
	}

	return {
		/** Puts files that were opened together where they belong; while cases are looked at, the first is a case. */
		open(files: readonly OpenedFile[]): void {
			const [first] = files;
			if (first !== undefined && of.view() === "Rehearse") {
				of.begin({ text: first.text, seed: null, drawn: false });
				return;
			}
			const placing = placingOf(files, of.view() === "Stores", of.stores.bench.sheet);
			if (placing === null) return;
			const { unused } = placing;
			if (placing.kind === "day") layDay(placing.text);
			else layWard(placing.sheet);
			const aside = unused.length === 0 ? "" : ` Left aside: ${unused.join(", ")}.`;
			of.say(`${placedWords(placing)} Undo brings back what was there.${aside}`);
		},
		/** Follows a link to a case or a scenario. */
		async follow(fragment: string): Promise<void> {
			if (isCaseLink(fragment)) {
				const handed = readCaseLink(fragment);
				if (handed === null) of.say("The link to a case was cut or altered on its way.");
				else of.begin(handed);
				return;
			}
			if (!isScenarioLink(fragment)) return;
			const text = await readScenarioLink(fragment);
			if (text === null) {
				of.say("The link to a scenario was cut or altered on its way.");
				return;
			}
			if (text === (isWard(text) ? of.stores : of.day).whole()) return;
			if (isWard(text)) layWard(sheetOf(text));
			else layDay(text);
			of.say("The scenario of the link lies on the bench. Undo brings back what was there.");
		},
	};
}
