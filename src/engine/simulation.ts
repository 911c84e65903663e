import { Calendar } from "./calendar.ts";
import { nameHash, type Trace } from "./trace.ts";

/** An event of a simulation: what `event` hands out and the other calls take. */
export type EventId = number;

/**
 * One process of one replication: a clock, a calendar, and what happens at each event.
 *
 * Events are made once (`event`), then scheduled, moved and cancelled as often as needed; `reset` starts another
 * replication with the same events. Simultaneous events run by priority, then in the order in which they were scheduled.
 */
export class Simulation {
	now = 0;
	/** Events executed since the last reset. */
	executed = 0;
	/** Takes note of every executed event, when there is one. */
	trace: Trace | null = null;
	readonly #calendar = new Calendar();
	/** Names, their hashes and actions by kind. */
	readonly #names: string[] = [];
	readonly #hashes: number[] = [];
	readonly #actions: ((event: EventId) => void)[] = [];
	/** Kind of each event. Events made one after the other with the same name and action are of one, so that many of them stay in a small memory. */
	#kinds = new Int32Array(64);

	/** Makes an event. The action is told which event it is, so that many events may share one. */
	event(name: string, priority: number, action: (event: EventId) => void): EventId {
		const id = this.#calendar.slot(priority);
		if (this.#actions.at(-1) !== action || this.#names.at(-1) !== name) {
			this.#actions.push(action);
			this.#names.push(name);
			this.#hashes.push(nameHash(name));
		}
		if (id === this.#kinds.length) {
			const more = new Int32Array(2 * id);
			more.set(this.#kinds);
			this.#kinds = more;
		}
		this.#kinds[id] = this.#actions.length - 1;
		return id;
	}

	/** Puts the event at `time`, moving it if it is pending. Throws RangeError for a time before now or not finite. */
	schedule(event: EventId, time: number): void {
		if (time < this.now) throw new RangeError(`${this.#nameOf(event)} scheduled at ${time}, before ${this.now}`);
		this.#calendar.schedule(event, time);
	}

	cancel(event: EventId): void {
		this.#calendar.cancel(event);
	}

	isPending(event: EventId): boolean {
		return this.#calendar.isPending(event);
	}

	/** When the event is due; Infinity when it is not pending. */
	timeOf(event: EventId): number {
		return this.#calendar.timeOf(event);
	}

	/**
	 * Executes every event of the half-open span up to `end`, then sets the clock to `end`.
	 * Throws RangeError for an end before now, and where a million events follow each other at one instant:
	 * time would never move on.
	 */
	run(end: number): void {
		if (end < this.now) throw new RangeError(`the end ${end} lies before ${this.now}`);
		const calendar = this.#calendar;
		let atOnce = 0;
		for (let time = calendar.nextTime(); time < end; time = calendar.nextTime()) {
			const event = calendar.pop();
			atOnce = time === this.now ? atOnce + 1 : 0;
			if (atOnce === 1_000_000) this.#standsStill(time, event);
			this.#execute(event, time);
		}
		this.now = end;
	}

	/** When the next event is due; Infinity where none is. */
	get nextTime(): number {
		return this.#calendar.nextTime();
	}

	/** As `run`, but those at `end` itself too: for one who looks at things as they are at that instant. */
	runThrough(end: number): void {
		this.run(end);
		for (let atOnce = 0; this.#calendar.nextTime() === end; atOnce++) {
			const event = this.#calendar.pop();
			if (atOnce === 1_000_000) this.#standsStill(end, event);
			this.#execute(event, end);
		}
	}

	#execute(event: EventId, time: number): void {
		this.now = time;
		this.executed++;
		const kind = this.#kinds[event];
		if (this.trace !== null) this.trace.note(time, this.#hashes[kind], this.#names[kind]);
		this.#actions[kind](event);
	}

	#standsStill(time: number, event: EventId): never {
		throw new RangeError(`time stands still at ${time}, at: ${this.#nameOf(event)}`);
	}

	#nameOf(event: EventId): string {
		return this.#names[this.#kinds[event]];
	}

	/** Back to time 0 with nothing pending. */
	reset(): void {
		this.#calendar.clear();
		this.now = 0;
		this.executed = 0;
	}
}
