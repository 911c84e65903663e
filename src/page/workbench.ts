import { htmlMaker } from "../report/kit/html-element.ts";
import { dayRoom } from "./day-room.ts";
import { Frames } from "./kit/frames.ts";
import { rehearseRoom } from "./rehearse/rehearse-room.ts";
import { arrivals } from "./shell/arrivals.ts";
import { keepOf } from "./shell/keep.ts";
import { openDropped } from "./shell/open-files.ts";
import { ownData } from "./shell/own-data.ts";
import { pageFrame } from "./shell/page-frame.ts";
import type { Room } from "./shell/room.ts";
import { stateSign } from "./shell/state-sign.ts";
import { toolbar } from "./shell/toolbar.ts";
import { viewBar } from "./shell/views.ts";
import { storesRoom } from "./stores/stores-room.ts";

/** How long a window keeps its width before what stands in it is drawn for it, ms. */
const stillMs = 150;

/** Puts the page together and brings it to life; `worker` is where its worker's text is. */
export function openWorkbench(document: Document, worker: string): void {
	const window = document.defaultView;
	if (window === null) return;
	const own = ownData(document);
	const html = htmlMaker(document);
	const frames = new Frames(window);
	const title = html("h1");
	const says = html("p", { class: "says", role: "status" });
	const say = (words: string) => {
		says.textContent = words;
	};
	const sign = stateSign(html, frames, () => views.place);
	const address = () => window.location.href.replace(/#.*$/u, "");

	let isToldUnkept = false;
	const unkept = () => {
		if (isToldUnkept) return;
		isToldUnkept = true;
		say(
			"This browser keeps nothing for a page that was opened from a disk: save the scenario as a file before you leave.",
		);
	};
	const surroundings = { window, frames, address: worker, own, sign, told, named, say, view: () => views.name() };
	const day = dayRoom(html, {
		...surroundings,
		keep: keepOf(window, "workbench", own.scenario, unkept),
		checked: ({ rehearsed }) => rehearsal.show(rehearsed),
	});
	const stores = storesRoom(html, { ...surroundings, keep: keepOf(window, "stores", own.ward, unkept) });
	const rehearsal = rehearseRoom(html, window, {
		worker,
		address,
		named,
		say,
		text: () => day.room.bench.text,
		turn: () => views.turn("Rehearse"),
	});
	const views = viewBar(
		html,
		own.opens,
		[
			["Day", day.day],
			["Compare", day.compare],
			["Stores", stores.element],
			["Rehearse", rehearsal.element],
			["Sources", day.sources],
		],
		turned,
	);
	/** What is looked at. */
	const room = (): Room => (views.name() === "Stores" ? stores : day.room);
	const arrive = arrivals({ day: day.room, stores, view: views.name, turn: views.turn, begin: rehearsal.begin, say });
	const opening = { open: arrive.open, refuse: say };
	const tools = toolbar(html, {
		opening,
		address,
		bench: () => room().bench,
		again: () => {
			say("");
			room().again();
		},
		linked: () => room().whole(),
		title: () => title.textContent ?? "",
	});
	const panelPlace = html("div", { class: "panel" });

	function turned(): void {
		say("");
		const { panel } = room();
		if (panelPlace.firstChild !== panel.element) {
			panelPlace.replaceChildren(panel.element);
			frames.plan("form", () => panel.show(true));
		}
		tools.show();
		run(true);
	}

	/** A change is run where it is looked at; elsewhere it waits until the view is turned. */
	function told(changed: Room, { by, steady }: { readonly by: "form" | "else"; readonly steady: boolean }): void {
		if (changed !== room()) return;
		if (steady) {
			frames.plan("form", () => changed.panel.show(by !== "form"));
			tools.show();
		}
		run(steady);
	}

	function run(steady: boolean): void {
		document.body.dataset.view = views.name();
		sign.ask();
		room().run(steady);
	}

	/** A day that was under way when the view was turned to the stores names nothing there; a case that is rehearsed has its own name. */
	function named(): void {
		const words = (views.name() === "Rehearse" ? rehearsal.title() : null) ?? room().title();
		title.textContent = words;
		document.title = `${words}: workbench`;
	}

	document.body.replaceChildren(
		...pageFrame(html, own.version, {
			title,
			bars: [views.bar, tools.element, says],
			work: [html("div", { class: "view-place" }, sign.element, views.place), panelPlace],
		}),
	);
	openDropped(document, opening);
	window.addEventListener("hashchange", () => void arrive.follow(window.location.hash));
	let resized: number | undefined;
	window.addEventListener("resize", () => {
		window.clearTimeout(resized);
		resized = window.setTimeout(() => {
			day.room.redraw();
			stores.redraw();
		}, stillMs);
	});
	turned();
	if ([day.room, stores].some(({ bench }) => bench.canUndo || bench.canRedo))
		say("Your work of last time lies on the bench.");
	void arrive.follow(window.location.hash);
}
