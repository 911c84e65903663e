import type { Desk } from "./desk.ts";
import type { Answer, NumberedAnswer, NumberedOrder, Order, Work, Works } from "./orders.ts";
import { works } from "./orders.ts";

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
		const desk: Desk<Answer> = {
			say: (answer) => say(answer, false),
			goOn: async () => {
				await nextTurn();
				return newest === number;
			},
		};
		workOn(all, order, desk).then(
			(answer) => {
				if (answer !== null) say(answer, true);
			},
			(error: unknown) => say({ kind: "fault", words: `a fault of the program: ${error}` }, true),
		);
	};
}

/** null where the order was dropped. */
async function workOn(all: Works, order: Order, desk: Desk<Answer>): Promise<Answer | null> {
	const work = all[order.kind] as Work<Order>; // each is given orders of its own kind
	return work(order, desk);
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
