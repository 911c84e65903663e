import type { Answer, NumberedAnswer, Order } from "./orders.ts";

type Listener = (answer: Answer, last: boolean) => void;

interface Asked {
	readonly order: Order;
	readonly listener: Listener;
}

/** An order that takes longer than this is given up for a newer one, ms. A shorter one is let finish, so that a drag shows something on its way. */
const patienceMs = 250;

/** The page's end of its worker: one order at a time. Of those that wait only the newest is kept, and answers to an order that was overtaken are dropped. */
export class Engine {
	readonly #address: string;
	/** Whether an order is given up by ending its worker: for orders that hear of nothing newer for seconds. */
	readonly #abrupt: boolean;
	#worker: Worker;
	#number = 0;
	#running: (Asked & { readonly sinceMs: number }) | null = null;
	#waiting: Asked | null = null;

	constructor(address: string, abrupt = false) {
		this.#address = address;
		this.#abrupt = abrupt;
		this.#worker = this.#begun();
	}

	#begun(): Worker {
		const worker = new Worker(this.#address);
		worker.onmessage = ({ data }: MessageEvent<NumberedAnswer>) => {
			if (data.number === this.#number) this.#hear(data.answer, data.last);
		};
		worker.onerror = (event) => {
			event.preventDefault();
			this.#hear({ kind: "fault", words: `a fault of the program: ${event.message}` }, true);
		};
		return worker;
	}

	ask(order: Order, listener: Listener): void {
		this.#waiting = { order, listener };
		if (this.#running === null) {
			this.#sendWaiting();
			return;
		}
		const patience = this.#abrupt ? 0 : patienceMs;
		const leftMs = this.#running.sinceMs + patience - performance.now();
		const number = this.#number;
		setTimeout(
			() => {
				if (this.#number === number) this.#sendWaiting();
			},
			Math.max(0, leftMs),
		);
	}

	#sendWaiting(): void {
		if (this.#waiting === null) return;
		if (this.#abrupt && this.#running !== null) {
			this.#worker.terminate();
			this.#worker = this.#begun();
		}
		this.#running = { ...this.#waiting, sinceMs: performance.now() };
		this.#waiting = null;
		this.#number++;
		this.#worker.postMessage({ number: this.#number, order: this.#running.order });
	}

	#hear(answer: Answer, last: boolean): void {
		const listener = this.#running?.listener;
		if (last) {
			this.#running = null;
			this.#sendWaiting();
		}
		listener?.(answer, last);
	}
}
