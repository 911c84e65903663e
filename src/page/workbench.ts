// Longer than most: every part of the page is told of every other here, and nowhere else.

import { isCaseLink, readCaseLink } from "../rehearsal/index.ts";
import { htmlElement } from "../report/html-element.ts";
import { dayScenarioSchema, isWard } from "../scenario/index.ts";
import { Bench, type Change, type Findings } from "./bench.ts";
import { CaseChooser } from "./case-chooser.ts";
import { CompareView } from "./compare-view.ts";
import { DayView } from "./day-view.ts";
import { Engine } from "./engine.ts";
import { Frames } from "./frames.ts";
import { type History, historyOf } from "./history.ts";
import { type Keep, keepOf } from "./keep.ts";
import { openDropped } from "./open-files.ts";
import type { Answer, Handed } from "./orders.ts";
import { ownData } from "./own-data.ts";
import { pageFrame } from "./page-frame.ts";
import { RehearseView } from "./rehearse-view.ts";
import { isScenarioLink, readScenarioLink } from "./scenario-link.ts";
import { ScenarioPanel } from "./scenario-panel.ts";
import { dataOf } from "./scenario-text.ts";
import type { Shape } from "./shape.ts";
import { type Sheet, sheetOf } from "./sheet.ts";
import { SourcesView } from "./sources-view.ts";
import { StoresRoom } from "./stores-room.ts";
import { Toolbar } from "./toolbar.ts";
import { type ViewName, Views } from "./views.ts";
import { type OpenedFile, placedWords, placingOf } from "./ward-files.ts";

/** Replications at the most while something is dragged. */
const draggedReplications = 400;

/** Puts the page together and brings it to life; `address` is where its worker's text is. */
export function openWorkbench(document: Document, address: string): void {
	const window = document.defaultView;
	if (window === null) return;
	const own = ownData(document);
	const element = htmlElement.bind(null, document);
	const engine = new Engine(address);
	const frames = new Frames(window);
	const keep = keepOf(window, "workbench", own.scenario);
	const keepOfStores = keepOf(window, "stores", own.ward);
	const [kept, keptOfStores] = [keep.load(), keepOfStores.load()];

	const title = element("h1", {}, "");
	const sign = element("p", { class: "sign-of-change" });
	const says = element("p", { class: "says", role: "status" });
	const say = (words: string) => {
		says.textContent = words;
	};

	let findings: Findings = {
		problems: [],
		notes: [],
		rehearsed: false,
		regimens: [],
	};
	/** Whether the scenario on the bench is another one than was shown, and cannot be run. */
	let isBlank = false;
	/** Of the scenario on the bench. */
	let dayTitle = "";
	let asked = false;
	/** The text that each view was last drawn of. */
	const shownText = new Map<ViewName, string>();
	/** Another text was laid on the bench, and has not been run yet. */
	let laid = false;
	/** How often something was asked for. */
	let asking = 0;

	const keeping =
		({ save }: Keep) =>
		(history: History) => {
			if (!save(history) && !asked) {
				asked = true;
				say(
					"This browser keeps nothing for a page that was opened from a disk: save the scenario as a file before you leave.",
				);
			}
		};
	const bench = new Bench(
		kept ?? historyOf(sheetOf(own.scenario)),
		keeping(keep),
		(change) => told(panel, change),
	);
	const panel = new ScenarioPanel(document, window, bench, {
		heading: "Scenario",
		schema: dayScenarioSchema() as Shape, // JSON Schema, of which Shape is a part
	});
	const stores = new StoresRoom(document, window, frames, {
		address,
		own,
		history: keptOfStores ?? historyOf({ text: own.ward, beside: own.beside }),
		keep: keeping(keepOfStores),
		told: (change) => told(stores.panel, change),
		name: (words) => {
			if (views.name === "Stores") name(words);
		},
		say,
		settled: () => {
			if (views.name === "Stores") settle();
		},
	});
	const atStores = () => views.name === "Stores";
	const regimenKeys = (dressing: number, regimen: number) => {
		const data = dataOf(bench.text) as {
			dressings?: { regimen?: unknown }[];
		} | null; // looked at, not trusted
		const list = Array.isArray(data?.dressings?.[dressing]?.regimen);
		return ["dressings", dressing, "regimen", ...(list ? [regimen] : [])];
	};
	const day = new DayView(document, frames, {
		drag: ({ dressing, regimen, setting, written }) =>
			bench.drag([[[...regimenKeys(dressing, regimen), setting], written]]),
		drop: () => bench.drop(),
	});
	const compare = new CompareView(document, frames, {
		drag: (name, setting, written) =>
			bench.drag([[["compare", name, setting], written]]),
		drop: () => bench.drop(),
		chosen: () => run(true),
		tryRestsOn: (between) => {
			asking++;
			document.body.dataset.settled = "no";
			engine.ask(
				{ kind: "rests-on", text: bench.text, between },
				(answer, last) => {
					if (last && answer.kind !== "rests-on") compare.untried();
					heard(answer, true, last);
				},
			);
		},
		begin: () => {
			const { regimens } = findings;
			const first = regimens[0] ?? "now";
			bench.set(
				["compare"],
				{
					...(regimens.length > 0 ? comparedIn(bench.text) : { [first]: {} }),
					other: {},
				},
				"else",
			);
		},
	});
	const sources = new SourcesView(document);
	const rehearsalEngine = new Engine(address);
	const chooser = new CaseChooser(document, {
		text: () => bench.text,
		address: () => window.location.href.replace(/#.*$/u, ""),
		begin: (handed) => begin(handed),
	});
	const rehearse = new RehearseView(
		document,
		window,
		rehearsalEngine,
		(begun) => {
			nameDay(dayTitle);
			if (begun) return;
			chooser.element.hidden = false;
			chooser.element.querySelector("button")?.focus();
		},
	);
	const rehearsing = element("div", {}, chooser.element, rehearse.element);
	const panelPlace = element("div", { class: "panel" });
	const views = new Views(
		document,
		own.opens,
		{
			Day: day.element,
			Compare: compare.element,
			Stores: stores.view.element,
			Rehearse: rehearsing,
			Sources: sources.element,
		},
		() => turned(),
	);
	const opening = { open, refuse: say };
	const toolbar = new Toolbar(
		document,
		() => (atStores() ? stores.bench : bench),
		{
			opening,
			again: () => {
				say("");
				if (atStores()) stores.bench.lay(own.ward, own.beside);
				else bench.lay(own.scenario);
			},
			linked: () => (atStores() ? stores.whole : bench.text),
			address: () => window.location.href.replace(/#.*$/u, ""),
			title: () => title.textContent ?? "",
		},
	);

	const panelInView = () => (atStores() ? stores.panel : panel);

	function turned(): void {
		say("");
		const shown = panelInView();
		if (panelPlace.firstChild !== shown.element) {
			panelPlace.replaceChildren(shown.element);
			frames.plan("form", () => shown.show(true));
		}
		toolbar.show();
		run(true);
	}

	/** A change is run where it is looked at; elsewhere it waits until the view is turned. */
	function told(
		changed: ScenarioPanel,
		{ by, steady, laid: anew }: Change,
	): void {
		if (changed === panel && anew) laid = true;
		if (changed !== panelInView()) return;
		if (steady) {
			frames.plan("form", () => changed.show(by !== "form"));
			toolbar.show();
		}
		run(steady);
	}

	function run(steady: boolean): void {
		const most = steady ? null : draggedReplications;
		const { text } = bench;
		const { version } = own;
		document.body.dataset.view = views.name;
		document.body.dataset.settled = "no";
		asking++;
		if (atStores()) {
			mark("");
			stores.run();
			return;
		}
		const known = shownText.get(views.name);
		if (views.name === "Rehearse") mark("");
		else if (known === undefined) mark("first");
		else if (known !== text) mark("working");
		if (views.name === "Compare")
			engine.ask(
				{
					kind: "compare",
					text,
					most,
					version,
					between: steady ? null : compare.between(findings.regimens),
				},
				(answer, last) => heard(answer, steady, last),
			);
		else
			engine.ask({ kind: "day", text, most, version }, (answer, last) =>
				heard(answer, steady, last),
			);
	}

	function heard(answer: Answer, steady: boolean, last: boolean): void {
		take(answer, steady);
		if (last && steady && !atStores()) settle();
	}

	/** Says that all is drawn, unless something else has been asked for meanwhile. */
	function settle(): void {
		const at = asking;
		frames.whenAtRest(() => {
			if (at !== asking) return;
			document.body.dataset.settled = "yes";
			if (atStores()) return;
			if (!isFaulty()) shownText.set(views.name, bench.text);
			const isOld = isFaulty() && !isBlank && views.name !== "Rehearse";
			mark(isOld ? "before" : "");
		});
	}

	const isFaulty = () => findings.problems.length > 0;

	/** Says at once, and for as long as it is so, that what is shown is of before the last change. */
	function mark(state: keyof typeof marks): void {
		views.place.dataset.shows = state;
		views.place.setAttribute(
			"aria-busy",
			String(state === "working" || state === "first"),
		);
		sign.textContent = marks[state];
	}

	/** Nothing of what lay here before stands beside another scenario that cannot be run. */
	function blankWhereFaulty(): void {
		const title = (dataOf(bench.text) as { title?: unknown } | null)?.title; // looked at, not trusted
		const other = typeof title === "string" && title !== dayTitle;
		if (!isFaulty()) {
			laid = false;
			isBlank = false;
		} else if (laid || other || isBlank) {
			isBlank = true;
			for (const view of [day, compare, sources]) view.blank();
			nameDay("A scenario with problems");
		}
	}

	function take(answer: Answer, steady: boolean): void {
		switch (answer.kind) {
			case "checked":
				findings = answer;
				blankWhereFaulty();
				if (steady)
					frames.plan("problems", () => panel.complain(answer, !isBlank));
				chooser.show(answer.rehearsed);
				if (views.name === "Compare" && !isBlank)
					compare.between(answer.regimens);
				return;
			case "traced":
				nameDay(answer.day.scenario.title);
				day.show(answer.day, steady);
				return;
			case "day":
				nameDay(answer.result.scenario.title);
				if (views.name === "Day") day.show(answer.result, steady);
				if (views.name === "Sources") sources.show(answer.result);
				return;
			case "compare":
				nameDay(answer.result.scenario.title);
				compare.show(answer, steady);
				return;
			case "progress":
				compare.tried(answer.done, answer.of);
				return;
			case "rests-on":
				compare.showRestsOn(answer.restsOn);
				return;
			case "fault":
				say(answer.words);
				return;
			default:
				return;
		}
	}

	/** A day that was under way when the view was turned to the stores names nothing there; a case that is rehearsed has its own name. */
	function nameDay(words: string): void {
		dayTitle = words;
		const shift = views.name === "Rehearse" ? rehearse.title : null;
		if (!atStores()) name(shift ?? words);
	}

	function name(words: string): void {
		title.textContent = words;
		document.title = `${words}: workbench`;
	}

	function begin(handed: Handed): void {
		views.turn("Rehearse");
		chooser.refuse("");
		chooser.element.hidden = true;
		const known = !handed.drawn && handed.text === bench.text;
		rehearse.begin(handed, known ? ["opened-on-bench"] : [], (words) => {
			if (rehearse.underWay) {
				say(`${words} The shift goes on.`);
				return;
			}
			chooser.element.hidden = false;
			chooser.refuse(words);
		});
	}

	function open(files: readonly OpenedFile[]): void {
		const [first] = files;
		if (first !== undefined && views.name === "Rehearse") {
			begin({ text: first.text, seed: null, drawn: false });
			return;
		}
		const placing = placingOf(files, atStores(), stores.bench.sheet);
		if (placing === null) return;
		const { unused } = placing;
		if (placing.kind === "day") layDay(placing.text);
		else layWard(placing.sheet);
		say(
			`${placedWords(placing)} Undo brings back what was there.${unused.length === 0 ? "" : ` Left aside: ${unused.join(", ")}.`}`,
		);
	}

	function layDay(text: string): void {
		bench.lay(text);
		if (atStores()) views.turn("Day");
	}

	function layWard({ text, beside }: Sheet): void {
		stores.bench.lay(text, beside);
		if (!atStores()) views.turn("Stores");
	}

	async function follow(fragment: string): Promise<void> {
		if (isCaseLink(fragment)) {
			const handed = readCaseLink(fragment);
			if (handed === null)
				say("The link to a case was cut or altered on its way.");
			else begin(handed);
		} else if (isScenarioLink(fragment)) {
			const text = await readScenarioLink(fragment);
			if (text === null)
				say("The link to a scenario was cut or altered on its way.");
			else if (isWard(text) ? text !== stores.whole : text !== bench.text) {
				if (isWard(text)) layWard(sheetOf(text));
				else layDay(text);
				say(
					"The scenario of the link lies on the bench. Undo brings back what was there.",
				);
			}
		}
	}

	document.body.replaceChildren(
		...pageFrame(document, own.version, {
			title,
			bars: [views.bar, toolbar.element, says],
			work: [
				element("div", { class: "view-place" }, sign, views.place),
				panelPlace,
			],
		}),
	);
	openDropped(document, opening);
	window.addEventListener(
		"hashchange",
		() => void follow(window.location.hash),
	);
	let resized: number | null = null;
	window.addEventListener("resize", () => {
		if (resized !== null) window.clearTimeout(resized);
		resized = window.setTimeout(() => {
			day.redraw();
			compare.redraw();
			stores.view.redraw();
		}, 150);
	});
	turned();
	if ([kept, keptOfStores].some((one) => (one?.sheets.length ?? 0) > 1))
		say("Your work of last time lies on the bench.");
	void follow(window.location.hash);
}

/** What stands over a view while it is not of the scenario on the bench. */
const marks = {
	"": "",
	first: "Being worked out.",
	working: "Being worked out: what stands here is of before the change.",
	before: "What stands here is of the last scenario without problems.",
};

const comparedIn = (text: string): object => {
	const data = dataOf(text) as { compare?: object } | null; // looked at, not trusted
	return data?.compare ?? {};
};
