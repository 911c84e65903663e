import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { compareView } from "../../../src/page/compare/compare-view.ts";
import { Frames } from "../../../src/page/kit/frames.ts";
import { htmlMaker } from "../../../src/report/kit/html-element.ts";
import { unlikeComparison } from "../../report/compare/unlike-dressings.ts";

test("under its sliders a regimen says how it sets each dressing, and whose settings the sliders show", async () => {
	const { window } = new JSDOM("", { pretendToBeVisual: true });
	const frames = new Frames(window as unknown as Window); // jsdom's window is one in all that is used of it
	const nothing = () => {};
	const view = compareView(htmlMaker(window.document), frames, {
		drag: nothing,
		drop: nothing,
		chosen: nothing,
		begin: nothing,
		tryRestsOn: nothing,
	});
	window.document.body.append(view.element);
	view.between(["flank-less", "alike"]);
	view.show({ result: unlikeComparison(["flank-less", "alike"]), days: [] }, true);
	await new Promise<void>((done) => frames.whenAtRest(done));
	const [first, second] = [...view.element.querySelectorAll(".side")].map((side) =>
		[...side.querySelectorAll(".facts p")].map((line) => (line.textContent ?? "").replaceAll("\u00A0", " ")),
	);
	expect(first).toEqual([
		"calf: 25 mL for 5 min, then 2 h of suction at −125 mmHg; canister 500 mL, solution 500 mL.",
		"flank: 120 mL for 10 min, then 3 h 30 min of suction at −150 mmHg; from Wed 4 March 14:00 continuous suction at −100 mmHg, no fill; canister 1000 mL, solution 1000 mL.",
		"The sliders stand where they are set for flank.",
	]);
	expect(second).toEqual([]);
	window.close();
});
