import { caseLink } from "../../rehearsal/index.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { headed, labelled, linkField, pressed } from "../kit/controls.ts";
import type { Handed } from "../worker/orders.ts";

const ownSeed = "tuesday";

/** Where a case comes from: the bench, a seed, a file, or a link. */
export function caseChooser(
	html: HtmlMaker,
	of: {
		/** Text of the scenario on the bench. */
		text(): string;
		/** The page's own address, to which a case is added. */
		address(): string;
		begin(handed: Handed): void;
	},
) {
	const seed = html("input", { type: "text", id: "case-seed", value: ownSeed, autocomplete: "off" });
	seed.addEventListener("keydown", ({ key }) => {
		if (key === "Enter") of.begin(drawn());
	});
	const file = html("input", { type: "file", id: "case-file", accept: ".yaml,.yml,.json" });
	file.addEventListener("change", () => {
		const [chosen] = file.files ?? [];
		file.value = "";
		void chosen?.text().then((text) => of.begin({ text, seed: null, drawn: false }));
	});
	const drawn = (): Handed => ({ text: of.text(), seed: seed.value.trim() || ownSeed, drawn: true });
	const asWritten = (): Handed => ({ text: of.text(), seed: null, drawn: false });

	const says = html("p", { class: "wrong", role: "alert" });
	const link = linkField(html, "Link to the case", 3);
	const ways = (words: string, handed: () => Handed) => {
		const begin = pressed(html, words, () => of.begin(handed()));
		const hand = pressed(html, "Make a link to it", () => {
			const given = handed();
			link.show(`${of.address()}${caseLink({ ...given, seed: given.seed ?? "" })}`);
		});
		return html("div", { class: "bar" }, begin, hand);
	};
	const paragraph = (words: string) => html("p", {}, words);
	const own = headed(
		html,
		"own-case",
		"The case on the bench",
		paragraph("The scenario on the bench hides something. Whoever has read its file knows what."),
		ways("Rehearse it", asWritten),
	);
	const noSecret =
		"The answer of a case cannot be read from a link at a glance. It is no secret: whoever has this page can find it.";
	const element = html(
		"div",
		{ class: "chooser" },
		html("h2", {}, "Rehearse a shift"),
		paragraph(
			"A shift at one bedside in which something may be wrong. You see what a bedside shows; every look and every act takes its minutes, and the day goes on. Afterwards the debrief says what was hidden, and what an orderly search would have been.",
		),
		says,
		own,
		headed(
			html,
			"drawn-case",
			"A drawn case",
			paragraph(
				"Causes are drawn from a seed, as often as the model brings them, for the first dressing on the bench. The same seed gives the same case.",
			),
			labelled(html, "field", "Seed", seed),
			ways("Draw it and begin", drawn),
		),
		headed(
			html,
			"file-case",
			"A case from a file",
			paragraph(
				"Choose a scenario file with a rehearsal: part, or drop one here. A link with #case= in it opens by itself.",
			),
			labelled(html, "field", "File", file),
		),
		link.element,
		html("p", { class: "help" }, noSecret),
	);
	return {
		element,
		/** Whether the scenario on the bench is a case itself. */
		show(isCase: boolean): void {
			own.hidden = !isCase;
			link.hide();
		},
		/** Says why a case could not be begun. */
		refuse(words: string): void {
			says.textContent = words;
		},
	};
}
