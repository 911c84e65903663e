import { runComparison, runRestsOn } from "./compare-orders.ts";
import { runDay } from "./day-order.ts";
import type { Desk } from "./desk.ts";
import type { Answer, NumberedAnswer, NumberedOrder, Order, OrderOf } from "./orders.ts";
import { RehearsalRun } from "./rehearse-order.ts";
import { runStores } from "./stores-order.ts";

type Work<O> = (order: O, desk: Desk) => Promise<Answer | null> | Answer;
type Works = { readonly [K in Order["kind"]]: Work<OrderOf<K>> };

/** How each order is answered, null where it was dropped; a worker has one rehearsal at a time. */
function works(): Works {
	const rehearsal = new RehearsalRun();
	return {
		day: runDay,
		compare: runComparison,
		"rests-on": runRestsOn,
		stores: runStores,
		rehearse: (order, desk) => rehearsal.begin(order, desk),
		step: (order) => rehearsal.step(order),
		debrief: () => rehearsal.debrief(),
	};
}

/** The two ends of a worker's line, as the worker sees it. */
export interface Line {
	onmessage: ((event: MessageEvent<NumberedOrder>) => void) | null;
	postMessage(answer: NumberedAnswer): void;
}

/** Answers orders one after the other; a newer order makes an older one stop where it stands. */
export function answerOrders(line: Line): void {
	let newest = 0;
	const all = works();
	line.onmessage = ({ data: { number, order } }) => {
		newest = number;
		const say = (answer: Answer, last: boolean) => line.postMessage({ number, answer, last });
		const desk: Desk = {
			say: (answer) => say(answer, false),
			goOn: async () => {
				await nextTurn();
				return newest === number;
			},
		};
		const work = all[order.kind] as Work<Order>; // each is given orders of its own kind
		const answered = async () => work(order, desk);
		answered().then(
			(answer) => {
				if (answer !== null) say(answer, true); // else it was dropped
			},
			(error: unknown) => say({ kind: "fault", words: `a fault of the program: ${error}` }, true),
		);
	};
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
