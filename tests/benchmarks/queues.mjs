// The M/M/1 queue and the hold model: on the engine as the therapy uses it, and on two queues of the registry.
// M/M/1: one desk, mean gap 1, mean service 0.9. Hold: the earliest of so many pending events is put off by an
// exponential step, over and over. Each returns seconds of processor time and a result that must agree with the others'.
import FlatQueue from "flatqueue";
import heap from "heap-js";

const { exponential, Resource, Simulation, Stream } = await import("../../dist/engine/index.js");

const arrival = 0;
const departure = 1;
const seconds = (began) => process.cpuUsage(began).user / 1e6;

/** Who comes to the desk. */
class Customer {
	priority = 0;
	constructor(shop, since) {
		this.shop = shop;
		this.since = since;
	}
	start() {
		this.shop.serve(this);
	}
}

class Shop {
	sim = new Simulation();
	desk = new Resource(1, this.sim);
	gaps = new Stream("mm1", "gaps", 0);
	services = new Stream("mm1", "services", 0);
	arrived = 0;
	waits = 0;
	atDesk = null;
	arrives = this.sim.event("arrival", 2, () => this.arrive());
	leaves = this.sim.event("departure", 1, () => this.leave());

	constructor(customers) {
		this.customers = customers;
	}
	arrive() {
		const { sim } = this;
		if (++this.arrived < this.customers) this.next();
		this.desk.request(new Customer(this, sim.now));
	}
	serve(customer) {
		const { sim } = this;
		this.atDesk = customer;
		this.waits += sim.now - customer.since;
		sim.schedule(this.leaves, sim.now + 0.9 * exponential(this.services));
	}
	leave() {
		this.desk.release(this.atDesk);
	}
	next() {
		this.sim.schedule(this.arrives, this.sim.now + exponential(this.gaps));
	}
}

export function engineMm1(customers) {
	const shop = new Shop(customers);
	const began = process.cpuUsage();
	shop.next();
	shop.sim.run(Number.MAX_VALUE);
	return { seconds: seconds(began), result: shop.waits / customers };
}

class Holds {
	sim = new Simulation();
	steps = new Stream("hold", "steps", 0);
	last = 0;

	constructor(pending, holds) {
		this.left = holds;
		const hold = (event) => this.hold(event);
		for (let i = 0; i < pending; i++) this.sim.schedule(this.sim.event("hold", 0, hold), exponential(this.steps));
	}
	hold(event) {
		if (--this.left < 0) return;
		const { now } = this.sim;
		this.last = now;
		this.sim.schedule(event, now + exponential(this.steps));
	}
}

export function engineHold(pending, count) {
	const holds = new Holds(pending, count);
	const { sim } = holds;
	const began = process.cpuUsage();
	while (holds.left > 0) sim.run(sim.now + (holds.left + 1) / pending);
	return { seconds: seconds(began), result: holds.last };
}

/** How a queue of the registry takes and gives events: `push(time, what)`, `pop()` to `time` and `what`. */
class Flat {
	#queue = new FlatQueue();
	time = 0;
	push(time, what) {
		this.#queue.push(what, time);
	}
	pop() {
		this.time = this.#queue.peekValue();
		return this.#queue.pop();
	}
	get size() {
		return this.#queue.length;
	}
}

class Plain {
	#heap = new heap.Heap((a, b) => a.time - b.time);
	time = 0;
	push(time, what) {
		this.#heap.push({ time, what });
	}
	pop() {
		const event = this.#heap.pop();
		this.time = event.time;
		return event.what;
	}
	get size() {
		return this.#heap.length;
	}
}

export const others = { flatqueue: () => new Flat(), "heap-js": () => new Plain() };

export function queueMm1(calendar, customers) {
	const gaps = new Stream("mm1", "gaps", 0);
	const services = new Stream("mm1", "services", 0);
	const line = [];
	let head = 0;
	let busy = false;
	let arrived = 0;
	let waits = 0;
	const begin = (since, now) => {
		busy = true;
		waits += now - since;
		calendar.push(now + 0.9 * exponential(services), departure);
	};
	const began = process.cpuUsage();
	calendar.push(exponential(gaps), arrival);
	while (calendar.size > 0) {
		const what = calendar.pop();
		const now = calendar.time;
		if (what === arrival) {
			if (++arrived < customers) calendar.push(now + exponential(gaps), arrival);
			if (busy) line.push(now);
			else begin(now, now);
		} else {
			busy = false;
			if (head < line.length) begin(line[head++], now);
			if (head > 1000) {
				line.splice(0, head);
				head = 0;
			}
		}
	}
	return { seconds: seconds(began), result: waits / customers };
}

export function queueHold(calendar, pending, holds) {
	const steps = new Stream("hold", "steps", 0);
	for (let i = 0; i < pending; i++) calendar.push(exponential(steps), i);
	const began = process.cpuUsage();
	for (let i = 0; i < holds; i++) {
		const what = calendar.pop();
		calendar.push(calendar.time + exponential(steps), what);
	}
	return { seconds: seconds(began), result: calendar.time };
}

const [, , queue, work, ...sizes] = process.argv;
if (queue !== undefined) {
	const [size, holds] = sizes.map(Number);
	const run = (most) => {
		const some = Math.min(size, most);
		const times = Math.min(holds ?? 0, most);
		if (queue === "engine") return work === "mm1" ? engineMm1(some) : engineHold(some, times);
		const calendar = others[queue]();
		return work === "mm1" ? queueMm1(calendar, some) : queueHold(calendar, some, times);
	};
	// The compiler at run time gets a tenth of a second to warm up; the C++ was compiled before.
	for (let i = 0; i < 3; i++) run(100_000);
	const { seconds, result } = run(Number.POSITIVE_INFINITY);
	console.log(seconds.toFixed(9), result);
}
