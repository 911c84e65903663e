import type { SupplyResult } from "../../results/index.ts";
import {
	joinedWords,
	percentWords,
	plainNumber,
	rangeWords,
	type Sentence,
	sentenceStart,
	strong,
	volumeWords,
} from "../../words/index.ts";
import { stockedItems } from "./rules-section.ts";
import { chanceWords, countWords, dayWordsAt, momentWords, moneyWords, orderWords } from "./supply-words.ts";

/** From this chance of running out on an order alone is not enough. */
const likelyOut = 0.5;

/** Orders of so many days from the start are told one by one. */
const toldDays = 14;

/** What a supply planner wants to know first, in sentences. */
export const supplyAnswers = (result: SupplyResult): Sentence[] => [
	...orderSentences(result),
	...outSentences(result),
	demandSentence(result),
	bedsSentence(result),
	...costSentences(result),
	wasteSentence(result),
];

/** Every order of the first two weeks, or the first one where it is later; then how many more the list has. */
function orderSentences({ orders, scenario }: SupplyResult): Sentence[] {
	const [first] = orders;
	if (first === undefined) return [["No order is due within the time shown."]];
	const untilMin = Math.max(first.atMin + 1, toldDays * 1440);
	const told = orders
		.filter(({ atMin }) => atMin < untilMin)
		.sort((a, b) => a.atMin - b.atMin || b.without.probability - a.without.probability);
	const said = told.map((order): Sentence => {
		const when = order.atMin === 0 ? "now" : `by ${momentWords(order.atMin, scenario)}`;
		const isOut = order.with.probability >= likelyOut;
		return [
			"Order ",
			strong(orderWords(order)),
			" ",
			strong(when),
			`; without it the chance of running out by ${dayWordsAt(order.without.byMin, scenario)} is `,
			strong(chanceWords(order.without.probability, scenario)),
			`, with it ${isOut ? "still " : ""}`,
			strong(chanceWords(order.with.probability, scenario)),
			isOut ? ": ask for a quicker delivery, too." : ".",
		];
	});
	const later = orders.length - told.length;
	const next = orders.find(({ atMin }) => atMin >= untilMin);
	if (next === undefined) return said;
	const [are, them] = later === 1 ? ["order is", "it"] : ["orders are", "them"];
	const more = `${later} more ${are} due from ${momentWords(next.atMin, scenario)} on: the order list has ${them}.`;
	return [...said, [more]];
}

/** Of the replications, each of which orders by the rules from its own stock: no word on the list of orders as it stands. */
function outSentences(result: SupplyResult): Sentence[] {
	const items = stockedItems(result);
	const most = Math.max(...items.map(({ store }) => store.stockOut.probability));
	const worst = items.filter(({ store }) => store.stockOut.probability === most);
	const [first] = worst;
	if (first === undefined) return [];
	const { probability, low, high } = first.store.stockOut;
	const weeks = weeksWords(result);
	if (probability === 0) {
		const all = ` in any of the ${result.scenario.replications} replications of ${weeks}.`;
		return [["With orders that follow these rules ", strong("nothing ran out"), all]];
	}
	const isOne = worst.length === 1;
	const lost = worst.reduce((sum, { store }) => sum + store.offHours.mean, 0);
	const tail = lost > 0.05 ? `; therapy lost to ${isOne ? "it" : "them"}: ${plainNumber(lost, 1)} h on average` : "";
	const sentence = [
		`If orders go on following these rules, the ${isOne ? "item most likely to run out is " : "items most likely to run out are "}`,
		strong(joinedWords(worst.map(({ item }) => item))),
		isOne ? ": " : ", equally: ",
		strong(percentWords(probability)),
		` (${percentWords(low)} to ${percentWords(high)})${isOne ? "" : " each"} over ${weeks}${tail}.`,
	];
	return [sentence];
}

const weeksWords = ({ scenario }: SupplyResult) =>
	scenario.days % 7 === 0 ? `${scenario.days / 7} ${scenario.days === 7 ? "week" : "weeks"}` : `${scenario.days} days`;

/** The demand of one week in the middle of the time, which stands for all of them. */
function demandSentence({ items, scenario }: SupplyResult): Sentence {
	const middle = Math.floor((scenario.weeks - 1) / 2);
	const weekly = items
		.filter(({ demand }) => demand.total.mean > 0)
		.map(({ item, demand: { weeks } }) => {
			return `${rangeWords(weeks.p10[middle], weeks.p90[middle], countWords)} × ${item}`;
		});
	if (weekly.length === 0) return ["Nothing is asked of the stores."];
	const days = Math.min(7, scenario.days - 7 * middle);
	return [
		`The ${days === 7 ? "week" : `${days} days`} from ${dayWordsAt(middle * 10_080, scenario)} ${days === 7 ? "takes" : "take"}, in eight of ten replications, `,
		strong(weekly.slice(0, 2).join(" and ")),
		weekly.length > 2 ? `; ${weekly.slice(2).join("; ")}.` : ".",
	];
}

function bedsSentence({ beds, scenario }: SupplyResult): Sentence {
	const of = scenario.units === null ? "" : ` of ${scenario.units}`;
	const many = strong(`${plainNumber(beds.meanInBed.mean, 1)}${of} units`);
	const wait =
		beds.meanWaitMin.mean < 1
			? "; hardly anybody waits for one."
			: `; ${percentWords(beds.shareWaited)} of the patients wait for one, ${plainNumber(beds.meanWaitMin.mean / 60, 1)} h on average over all.`;
	const away = beds.turnedAway.mean > 0 ? ` ${plainNumber(beds.turnedAway.mean, 1)} are treated elsewhere.` : "";
	return ["In use on average: ", many, wait, away];
}

function costSentences({ cost, policies }: SupplyResult): Sentence[] {
	if (cost === null) return [];
	const { currency, asOf, total, totalNeeded } = cost;
	const money = (amount: number): string => moneyWords(amount, currency);
	const range = ({ p10, p90 }: typeof total): string => `(between ${money(p10)} and ${money(p90)})`;
	const first: Sentence = [
		"The pieces that are needed cost ",
		strong(money(totalNeeded.p50)),
		` ${range(totalNeeded)}, at prices of ${asOf}, where the stores lack nothing; with orders by these rules, shortages and expired pieces included, ${money(total.p50)} ${range(total)}.`,
	];
	const others = policies.slice(1).flatMap(({ name, difference }) => {
		if (difference === null) return [];
		const { mean, halfWidth95 } = difference;
		const change = strong(`${mean < 0 ? "saves" : "adds"} ${money(Math.abs(mean))}`);
		const sure = halfWidth95 === null ? "." : ` (± ${money(halfWidth95)}, the same patients).`;
		return [[`${sentenceStart(name)} instead of today's mix: `, change, sure]];
	});
	return [first, ...others];
}

function wasteSentence({ waste }: SupplyResult): Sentence {
	const { liquidMl, solutionMl, weightKg, unweighed } = waste;
	const without = unweighed.length === 0 ? "" : ` (without ${unweighed.join(", ")}, which have no weight given)`;
	return [
		"Thrown away: ",
		strong(volumeWords(liquidMl.p50)),
		" of liquid in canisters and ",
		strong(volumeWords(solutionMl.p50)),
		` of unused solution, ${plainNumber(weightKg.p50, 0)} kg in all${without}.`,
	];
}
