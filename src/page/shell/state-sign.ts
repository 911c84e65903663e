import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { Frames } from "../kit/frames.ts";

/** What stands over a view while it is not of the scenario on the bench. */
const marks = {
	"": "",
	first: "Being worked out.",
	working: "Being worked out: what stands here is of before the change.",
	before: "What stands here is of the last scenario without problems.",
};

export type StateSign = ReturnType<typeof stateSign>;

/** Says what the view in a place shows: what lies on the bench, or what was there before; and when all is drawn. */
export function stateSign(html: HtmlMaker, frames: Frames, place: () => HTMLElement) {
	const { body } = html.document;
	const element = html("p", { class: "sign-of-change" });
	/** How often something was asked for. */
	let asked = 0;
	return {
		element,
		/** Says at once, and for as long as it is so, that what is shown is of before the last change. */
		mark(state: keyof typeof marks): void {
			place().dataset.shows = state;
			place().setAttribute("aria-busy", String(state === "working" || state === "first"));
			element.textContent = marks[state];
		},
		/** Something is asked for, and is not drawn yet. */
		ask(): void {
			asked++;
			body.dataset.settled = "no";
		},
		/** Says that all is drawn when it is, unless something else has been asked for meanwhile; `drawn` is told. */
		settle(drawn: () => void): void {
			const at = asked;
			frames.whenAtRest(() => {
				if (at !== asked) return;
				body.dataset.settled = "yes";
				drawn();
			});
		},
	};
}
