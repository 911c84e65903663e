import { actFacts, placeFacts, type ScriptStep, type Taking } from "../../rehearsal/index.ts";
import { type HtmlMaker, unbroken } from "../../report/kit/html-element.ts";
import { acts, places } from "../../vocabulary/index.ts";
import { durationWords } from "../../words/index.ts";
import { headed, pressed } from "../kit/controls.ts";
import type { Start } from "../worker/orders.ts";
import { paces } from "./pace.ts";
import type { shiftParts } from "./shift-parts.ts";

/** What can be done in a shift. */
interface Moves {
	/** Times real time; 0 is a pause. */
	setPace(times: number): void;
	take(step: ScriptStep): void;
	end(): void;
}

/** A shift from its beginning: how time passes, what it shows, what can be looked at and done. */
export function shiftStage(html: HtmlMaker, start: Start, parts: ReturnType<typeof shiftParts>, moves: Moves) {
	const heading = html("h2", { tabindex: "-1" }, start.title);
	const paceButtons = paces.map((times) =>
		pressed(html, times === 0 ? "Pause" : `×${times}`, () => moves.setPace(times), {
			"aria-pressed": String(times === 0),
			...(times === start.pace ? { "aria-description": "suggested" } : {}),
		}),
	);
	const paceBar = html(
		"div",
		{ class: "bar", role: "group", "aria-label": "How time passes" },
		pressed(html, "On to the next thing", () => {
			moves.setPace(0);
			moves.take({ do: "next" });
		}),
		pressed(html, "Let 10 min pass", () => moves.take({ do: "wait", minutes: 10 })),
		...paceButtons,
		start.pace === null ? null : html("span", { class: "help" }, `suggested: ×${start.pace}`),
		parts.passed,
	);
	const choices = <N extends Taking["what"]>(
		names: readonly N[],
		facts: { readonly [K in N]: { readonly words: string } },
		step: (name: N) => ScriptStep,
	) =>
		html(
			"ul",
			{ class: "choices" },
			...names.map((name) => {
				const minutes = start.takings.find(({ what }) => what === name)?.minutes ?? 0;
				const label = unbroken(`${facts[name].words}, ${durationWords(minutes)}`);
				const button = pressed(html, label, () => moves.take(step(name)));
				return html("li", {}, button);
			}),
		);
	const looks = choices(places, placeFacts, (place) => ({ do: "look", place }));
	const deeds = choices(acts, actFacts, (act) => ({ do: "act", act }));
	const end = pressed(html, "End the shift and go to the debrief", () => moves.end());
	const legend =
		"The shift so far, as the bedside has shown it: hatched suction hangs below the line, above it stands what has been run in, until the drain begins.";
	const element = html(
		"div",
		{},
		heading,
		html("p", { class: "case-brief" }, start.brief),
		paceBar,
		parts.alarm,
		html(
			"div",
			{ class: "shift" },
			headed(html, "now-heading", "At the bedside", parts.facts),
			headed(html, "told-heading", "What has happened", parts.log),
		),
		html("figure", {}, parts.line, html("figcaption", {}, legend)),
		html(
			"div",
			{ class: "shift" },
			headed(html, "look-heading", "Look", looks),
			headed(html, "act-heading", "Do", deeds),
		),
		html("p", {}, end),
	);
	return {
		element,
		heading,
		showPace: (times: number): void =>
			paceButtons.forEach((button, i) => {
				button.setAttribute("aria-pressed", String(paces[i] === times));
			}),
	};
}
