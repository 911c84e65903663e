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
	/** Who waits, from `#head` on: what lies before it has been served, and is cleared away now and then. */
	readonly #queue: Job[] = [];
	#head = 0;
	/** Who is served, in no order. */
	readonly #serving: Job[] = [];
	#since = 0;
	#busyTime = 0;
	#queueTime = 0;
	/** Jobs started since the last reset. */
	started = 0;

	/** `clock` is read for statistics over time; a Simulation is one. */
	constructor(servers: number, clock: { readonly now: number }) {
		if (!(servers >= 1)) throw new RangeError(`a resource needs at least one server, received ${servers}`);
		this.servers = servers;
		this.#clock = clock;
	}

	get busy(): number {
		return this.#serving.length;
	}

	get waiting(): number {
		return this.#queue.length - this.#head;
	}

	/** Starts the job at once where a server is free, else queues it. */
	request(job: Job): void {
		this.#account();
		if (this.#serving.length < this.servers) {
			this.#begin(job);
			return;
		}
		const queue = this.#queue;
		let at = queue.length;
		queue.push(job);
		for (; at > this.#head && queue[at - 1].priority > job.priority; at--) queue[at] = queue[at - 1];
		queue[at] = job;
	}

	/** Ends a started job, or takes a waiting one out of the queue; a job that is neither is left alone. */
	release(job: Job): void {
		this.#account();
		const serving = this.#serving;
		let server = serving.length - 1;
		while (server >= 0 && serving[server] !== job) server--;
		if (server >= 0) {
			const last = serving.length - 1;
			if (server < last) serving[server] = serving[last];
			serving.pop();
			this.#startWaiting();
			return;
		}
		const at = this.#queue.indexOf(job, this.#head);
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
		this.#head = 0;
		this.#serving.length = 0;
		this.#since = 0;
		this.#busyTime = 0;
		this.#queueTime = 0;
		this.started = 0;
	}

	/** Whoever waits begins while there is somebody free. */
	#startWaiting(): void {
		while (this.waiting > 0 && this.#serving.length < this.servers) this.#begin(this.#next());
	}

	/** Takes the first out of the queue, which is not empty. */
	#next(): Job {
		const job = this.#queue[this.#head++];
		if (this.#head >= 64 && 2 * this.#head >= this.#queue.length) {
			this.#queue.splice(0, this.#head);
			this.#head = 0;
		}
		return job;
	}

	#begin(job: Job): void {
		this.#serving.push(job);
		this.started++;
		job.start();
	}

	#account(): void {
		const span = this.#clock.now - this.#since;
		this.#busyTime += span * this.#serving.length;
		this.#queueTime += span * this.waiting;
		this.#since = this.#clock.now;
	}
}
