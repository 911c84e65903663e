import type { DayResult, HomeSupplies, Schedule, Supply } from "../../results/index.ts";
import { type Clock, clockTime, counted, durationWords, plainNumber, regimenWords, waits } from "../../words/index.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import { type DressingParts, dressingParts } from "./dressing/dressing-parts.ts";

/** The days of a plan: which regimen holds when, when dressings are changed, and what to send home. null where there is one regimen and nobody goes home. */
export function planSection(html: HtmlMaker, result: DayResult): HTMLElement | null {
	const { scenario, home } = result;
	const follows = scenario.dressings.some(({ regimens }) => regimens.length > 1);
	if (!follows && home === null) return null;
	const steps = dressingParts(result).flatMap(stepsOf);
	if (home !== null) steps.push({ atMin: home.fromMin, whose: "", what: "goes home" });
	steps.sort((a, b) => a.atMin - b.atMin);
	const caption = "What holds from when, and when dressings are changed, where nothing comes between.";
	const table = htmlTable(html, { id: "plan", caption }, columns(scenario), steps);
	return section(html, "plan-of-days", "The plan", null, table, ...(home === null ? [] : sendHome(html, home, result)));
}

interface Step {
	readonly atMin: number;
	readonly whose: string;
	readonly what: string;
}

const columns = (clock: Clock): readonly Column<Step>[] => [
	{ head: "From", written: ({ atMin }) => clockTime(atMin, clock) },
	{ head: "Dressing", written: ({ whose }) => whose },
	{ head: "What", written: ({ what }) => what },
];

function stepsOf({ dressing, day, clock }: DressingParts): Step[] {
	const { takeovers, dressingChanges } = day.schedule;
	const regimens = dressing.regimens
		.filter(({ fromMin }) => fromMin < clock.horizonMin)
		.map((regimen, place) => {
			const takeover = takeovers.find((one) => one.regimen === place);
			const late = place === 0 ? "" : takeoverWords(takeover, clock);
			return { atMin: takeover?.atMin ?? regimen.fromMin, what: `${regimenWords(regimen)}${late}` };
		});
	const changes = dressingChanges.map(({ startMin, endMin }) => ({
		atMin: startMin,
		what: `dressing changed, ${durationWords(endMin - startMin)} off suction`,
	}));
	return [...regimens, ...changes].map((step) => ({ ...step, whose: dressing.id }));
}

/** Where a regimen does not take over at its own time. */
function takeoverWords(takeover: Schedule["takeovers"][number] | undefined, clock: Clock): string {
	if (takeover === undefined) return " (not before the end of the time shown)";
	return waits(takeover)
		? ` (set for ${clockTime(takeover.fromMin, clock)}; the cycle that ran then was finished first)`
		: "";
}

function sendHome(html: HtmlMaker, home: HomeSupplies, { scenario, projection }: DayResult): HTMLElement[] {
	const sent = home.supplies.filter(({ p90 }) => p90 > 0).map(({ item, p90 }) => `${p90} × ${item}`);
	const words = `To send home for ${durationWords(home.forMin)} from ${clockTime(home.fromMin, scenario)}: ${sent.length === 0 ? "nothing" : sent.join(", ")}. Nine in ten of ${counted(projection.replications, "replication")} need no more. Whoever receives the patient decides what they hold already.`;
	const caption =
		"Pieces for the first days at home, a canister to begin with included; the dressing that is worn goes along.";
	return [html("p", {}, words), suppliesTable(html, "home", caption, home.supplies)];
}

/** What the dressings need together, in pieces. */
export function suppliesSection(html: HtmlMaker, result: DayResult): HTMLElement {
	const { supplies } = result.scenario;
	const caption =
		"Pieces for the time shown: half of the days need no more than the first number, nine in ten no more than the second.";
	const none = "Nothing is used up in the time shown.";
	const body = supplies.length === 0 ? none : suppliesTable(html, "supplies", caption, supplies);
	return section(html, "supplies", "Supplies", null, body);
}

const suppliesTable = (html: HtmlMaker, id: string, caption: string, supplies: readonly Supply[]): HTMLElement =>
	htmlTable(html, { id, caption }, supplyColumns, supplies);

const packsWords = ({ packs, packSize }: Supply): string => (packs === null ? "" : `${packs} of ${packSize ?? "?"}`);

const supplyColumns: readonly Column<Supply>[] = [
	{ head: "Item", written: ({ item }) => item },
	shownNumber("Half (P50)", ({ p50 }) => plainNumber(p50, 1)),
	shownNumber("Nine in ten (P90)", ({ p90 }) => plainNumber(p90, 1)),
	shownNumber("Packs that cover P90", packsWords),
];
