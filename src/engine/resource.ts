/** A piece of work for a resource: asked for, started when a server is free, released at its end. */
export interface Job {
	/** Smaller is served first; equal ones in order of arrival. */
	readonly priority: number;
	/** Called at the moment a server takes the job. */
	readonly start: () => void;
}

/**
 * A staffed resource: servers and one queue, by priority, then arrival; a started job is not interrupted.
 * Keeps the time integrals of busy servers and of the queue.
 */
export class Resource {
	/** Infinity: nobody ever waits. */
	servers: number;
	readonly #clock: { readonly now: number };
	readonly #queue: Job[] = [];
	readonly #serving = new Set<Job>();
	#since = 0;
	#busyTime = 0;
	#queueTime = 0;
	/** Jobs started since the last reset. */
	started = 0;

	/** `clock` is read for statistics over time; a Simulation is one. */
	constructor(servers: number, clock: { readonly now: number }) {
		if (!(servers >= 1))
			throw new RangeError(
				`a resource needs at least one server, received ${servers}`,
			);
		this.servers = servers;
		this.#clock = clock;
	}

	get busy(): number {
		return this.#serving.size;
	}

	get waiting(): number {
		return this.#queue.length;
	}

	/** Starts the job at once where a server is free, else queues it. */
	request(job: Job): void {
		this.#account();
		if (this.#serving.size < this.servers) {
			this.#begin(job);
			return;
		}
		let at = this.#queue.length;
		while (at > 0 && this.#queue[at - 1].priority > job.priority) at--;
		this.#queue.splice(at, 0, job);
	}

	/** Ends a started job, or takes a waiting one out of the queue; a job that is neither is left alone. */
	release(job: Job): void {
		this.#account();
		if (this.#serving.delete(job)) {
			this.#startWaiting();
			return;
		}
		const at = this.#queue.indexOf(job);
		if (at >= 0) this.#queue.splice(at, 1);
	}

	/** Another number of servers from now on: more of them start what waits; fewer finish what they have begun. */
	staff(servers: number): void {
		this.#account();
		this.servers = servers;
		this.#startWaiting();
	}

	/** Mean number of busy servers from 0 to now. */
	meanBusy(): number {
		this.#account();
		return this.#busyTime / this.#clock.now;
	}

	/** Mean length of the queue from 0 to now. */
	meanWaiting(): number {
		this.#account();
		return this.#queueTime / this.#clock.now;
	}

	reset(): void {
		this.#queue.length = 0;
		this.#serving.clear();
		this.#since = 0;
		this.#busyTime = 0;
		this.#queueTime = 0;
		this.started = 0;
	}

	#startWaiting(): void {
		while (this.#serving.size < this.servers) {
			const next = this.#queue.shift();
			if (next === undefined) return;
			this.#begin(next);
		}
	}

	#begin(job: Job): void {
		this.#serving.add(job);
		this.started++;
		job.start();
	}

	#account(): void {
		const span = this.#clock.now - this.#since;
		this.#busyTime += span * this.#serving.size;
		this.#queueTime += span * this.#queue.length;
		this.#since = this.#clock.now;
	}
}
