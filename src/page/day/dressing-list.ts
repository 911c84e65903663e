import { sparkline } from "../../charts/index.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { TracedDayResult } from "../../results/index.ts";
import { durationWords } from "../../words/index.ts";
import { options, pressed } from "../kit/controls.ts";

/** The dressings of a scenario, each with its day at the height of a row, to choose from; and which of its regimens is turned. */
export function dressingList(html: HtmlMaker, chosen: () => void) {
	let [dressing, regimen] = [0, 0];
	const buttons = html("ul", { class: "dressings" });
	const regimens = html("div", { class: "which" });

	function showButtons(day: TracedDayResult): void {
		const { dressings, horizonMin } = day.scenario;
		buttons.hidden = dressings.length < 2;
		if (dressings.length < 2) return;
		const held = buttons.contains(html.document.activeElement);
		buttons.replaceChildren(
			...dressings.map(({ id }, place) => {
				const choose = () => {
					[dressing, regimen] = [place, 0];
					showButtons(day);
					showRegimens(day);
					chosen();
				};
				const button = pressed(html, "", choose, { "aria-pressed": String(place === dressing) });
				button.append(html("span", {}, id));
				const traced = day.dressings[place];
				if (traced !== undefined)
					button.append(
						sparkline({ day: traced, horizonMin }, html.document, { idPrefix: `spark-${place}`, styled: false }),
					);
				return html("li", {}, button);
			}),
		);
		if (held) buttons.querySelector<HTMLElement>("[aria-pressed=true]")?.focus();
	}

	function showRegimens(day: TracedDayResult): void {
		const all = day.scenario.dressings[dressing]?.regimens ?? [];
		regimens.hidden = all.length < 2;
		if (all.length < 2) return;
		const from = (min: number) => (min === 0 ? "from the start" : `from ${durationWords(min)} on`);
		const starts = all.map(({ fromMin }, place) => [String(place), from(fromMin)] as const);
		const select = html("select", { id: "which-regimen" }, ...options(html, starts));
		select.value = String(regimen);
		select.addEventListener("change", () => {
			regimen = Number(select.value);
			chosen();
		});
		const label = html("label", { for: select.id }, "The sliders turn the regimen");
		regimens.replaceChildren(label, select);
	}

	return {
		element: html("div", {}, buttons, regimens),
		/** Place of the dressing that is shown. */
		dressing: () => dressing,
		/** Place of the regimen that the sliders turn. */
		regimen: () => regimen,
		clear(): void {
			buttons.replaceChildren();
			regimens.replaceChildren();
		},
		/** `anew`: the list itself may have changed. */
		show(day: TracedDayResult, anew: boolean): void {
			const { dressings } = day.scenario;
			if (dressing >= dressings.length) dressing = 0;
			if (regimen >= (dressings[dressing]?.regimens.length ?? 0)) regimen = 0;
			if (!anew) return;
			showButtons(day);
			showRegimens(day);
		},
	};
}
