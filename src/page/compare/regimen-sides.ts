import { regimenLines } from "../../report/compare/regimen-words.ts";
import { type HtmlMaker, unbroken } from "../../report/kit/html-element.ts";
import type { CompareResult } from "../../results/index.ts";
import { joinedWords } from "../../words/index.ts";
import { type SettingName, settingSliders } from "../day/sliders.ts";
import { labelled, options } from "../kit/controls.ts";
import type { Between } from "../worker/orders.ts";

type Regimen = CompareResult["regimens"][number];

/** What the reader does with the two regimens that are compared. */
export interface SideTurns {
	drag(regimen: string, setting: SettingName, written: string): void;
	drop(): void;
	/** Another pair was chosen. */
	chosen(): void;
}

/** The two regimens that are looked at: which of all, sliders that turn each, and how each sets dressings that differ. */
export function regimenSides(html: HtmlMaker, turns: SideTurns) {
	let pair: Between = ["", ""];
	const side = (place: 0 | 1, id: string, label: string, which: string) => {
		const select = html("select", { id });
		select.addEventListener("change", () => {
			pair = place === 0 ? [select.value, pair[1]] : [pair[0], select.value];
			turns.chosen();
		});
		const drag = (setting: SettingName, written: string) => turns.drag(pair[place], setting, written);
		const sliders = settingSliders(html, id, `Settings of the ${which} regimen`, drag, () => turns.drop());
		const settings = html("div", { class: "facts" });
		const head = labelled(html, "which", label, select);
		return { select, sliders, settings, element: html("div", { class: "side" }, head, sliders.element, settings) };
	};
	const sides = [side(0, "regimen-a", "This regimen", "first"), side(1, "regimen-b", "against", "second")] as const;

	return {
		element: html("div", { class: "sides" }, ...sides.map(({ element }) => element)),
		pair: () => pair,
		/** Chooses among those that there are, two or more; the pair of before stays as far as it is there. */
		among(names: readonly string[]): Between {
			const [first, second] = pair;
			const a = names.includes(first) ? first : (names[0] ?? "");
			const b = names.includes(second) && second !== a ? second : (names.find((name) => name !== a) ?? "");
			pair = [a, b];
			sides.forEach(({ select }, place) => {
				const others = names.filter((name) => name !== pair[1 - place]);
				select.replaceChildren(...options(html, others));
				select.value = pair[place] ?? "";
			});
			return pair;
		},
		/** Puts the sliders where the regimens stand. */
		show({ regimens, scenario }: CompareResult): void {
			const mostMl = Math.max(...scenario.dressings.map(({ capacityMl }) => capacityMl));
			sides.forEach(({ sliders }, place) => {
				sliders.show(regimens.find(({ name }) => name === pair[place])?.regimen ?? null, mostMl);
			});
		},
		/** Where a regimen sets dressings differently, how it sets each, and whose settings its sliders show. */
		describe(result: CompareResult, regimens: readonly (Regimen | undefined)[]): void {
			sides.forEach(({ settings }, place) => {
				const regimen = regimens[place];
				const isOne = regimen === undefined || regimen.regimenOf.length === result.scenario.dressings.length;
				const where = isOne ? "" : `The sliders stand where they are set for ${joinedWords(regimen.regimenOf)}`;
				const lines = isOne ? [] : [...regimenLines(regimen, result), where];
				settings.replaceChildren(...lines.map((line) => html("p", {}, unbroken(`${line}.`))));
			});
		},
	};
}
