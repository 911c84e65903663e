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
	readonly #worker: Worker;
	#number = 0;
	#running: (Asked & { readonly sinceMs: number }) | null = null;
	#waiting: Asked | null = null;

	constructor(address: string) {
		this.#worker = new Worker(address);
		this.#worker.onmessage = ({ data }: MessageEvent<NumberedAnswer>) => {
			if (data.number === this.#number) this.#hear(data.answer, data.last);
		};
		this.#worker.onerror = (event) => {
			event.preventDefault();
			this.#hear(
				{ kind: "fault", words: `a fault of the program: ${event.message}` },
				true,
			);
		};
	}

	ask(order: Order, listener: Listener): void {
		this.#waiting = { order, listener };
		if (this.#running === null) {
			this.#sendWaiting();
			return;
		}
		const leftMs = this.#running.sinceMs + patienceMs - performance.now();
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
		this.#running = { ...this.#waiting, sinceMs: performance.now() };
		this.#waiting = null;
		this.#number++;
		this.#worker.postMessage({
			number: this.#number,
			order: this.#running.order,
		});
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
