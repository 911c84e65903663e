import type { Answer, NumberedAnswer, NumberedOrder, Order } from "./orders.ts";
import { runComparison } from "./run-comparison.ts";
import { runDay } from "./run-day.ts";
import { RehearsalRun } from "./run-rehearsal.ts";
import { runRestsOn } from "./run-rests-on.ts";
import { runStores } from "./run-stores.ts";

/** What an order's work is given: how to answer, and whether a newer order has come meanwhile. */
export interface Desk {
	/** Sends an answer that is not the last. */
	readonly say: (answer: Answer) => void;
	/** Lets newer orders be heard; false where one has come and this one is of no use any more. */
	readonly goOn: () => Promise<boolean>;
}

/** The two ends of a worker's line, as the worker sees it. */
export interface Line {
	onmessage: ((event: MessageEvent<NumberedOrder>) => void) | null;
	postMessage(answer: NumberedAnswer): void;
}

/** Answers orders one after the other; a newer order makes an older one stop where it stands. */
export function answerOrders(line: Line): void {
	let newest = 0;
	const rehearsal = new RehearsalRun();
	line.onmessage = ({ data: { number, order } }) => {
		newest = number;
		const say = (answer: Answer, last: boolean) =>
			line.postMessage({ number, answer, last });
		const desk: Desk = {
			say: (answer) => say(answer, false),
			goOn: async () => {
				await nextTurn();
				return newest === number;
			},
		};
		workOn(order, desk, rehearsal).then(
			(answer) => {
				if (answer !== null) say(answer, true);
			},
			(error: unknown) =>
				say({ kind: "fault", words: `a fault of the program: ${error}` }, true),
		);
	};
}

/** null where the order was dropped. */
async function workOn(
	order: Order,
	desk: Desk,
	rehearsal: RehearsalRun,
): Promise<Answer | null> {
	switch (order.kind) {
		case "day":
			return runDay(order, desk);
		case "compare":
			return runComparison(order, desk);
		case "rests-on":
			return runRestsOn(order, desk);
		case "stores":
			return runStores(order, desk);
		case "rehearse":
			return rehearsal.begin(order.handed, order.known, desk);
		case "step":
			return rehearsal.step(order.step);
		case "debrief":
			return rehearsal.debrief();
	}
}

/** A message to oneself stands behind those that wait already; a timer would be held back by the browser. */
function nextTurn(): Promise<void> {
	const { port1, port2 } = new MessageChannel();
	return new Promise((resolve) => {
		port1.onmessage = () => {
			port1.close();
			resolve();
		};
		port2.postMessage(null);
	});
}
