import { type EventId, Resource, Simulation } from "../../src/engine/index.ts";

export interface Line {
	readonly servers: number;
	/** Most customers that wait or are served at a time; one more is lost. */
	readonly room?: number;
	/** Time from the customer before (from 0 for customer 0) to this one; Infinity ends the arrivals. */
	readonly gap: (customer: number) => number;
	readonly service: (customer: number) => number;
	/** Smaller is served first; equal ones in order of arrival. 0 by default. */
	readonly priority?: (customer: number, service: number) => number;
}

/** A customer whose service has begun. */
export interface Served {
	readonly customer: number;
	readonly arrived: number;
	readonly started: number;
	readonly service: number;
}

/** A waiting line before one or more servers, on the engine: `run` it, then read `served`, `lost` and the desk's means. */
export class WaitingLine {
	readonly sim = new Simulation();
	readonly desk: Resource;
	readonly served: Served[] = [];
	arrivals = 0;
	lost = 0;

	constructor(line: Line) {
		const { sim, served } = this;
		const desk = new Resource(line.servers, sim);
		this.desk = desk;
		const free: EventId[] = [];
		const request = (customer: number, arrived: number) => {
			const service = line.service(customer);
			const job = {
				priority: line.priority?.(customer, service) ?? 0,
				start: () => {
					const end = free.pop() ?? newEnd();
					leaving[end] = () => desk.release(job);
					sim.schedule(end, sim.now + service);
					served.push({ customer, arrived, started: sim.now, service });
				},
			};
			desk.request(job);
		};
		const leaving: (() => void)[] = [];
		const newEnd = (): EventId => {
			const end = sim.event("end of service", 1, () => {
				free.push(end);
				leaving[end]();
			});
			return end;
		};
		const arrive = sim.event("arrival", 2, () => {
			const customer = this.arrivals++;
			if (desk.busy + desk.waiting < (line.room ?? Number.POSITIVE_INFINITY)) request(customer, sim.now);
			else this.lost++;
			next();
		});
		const next = () => {
			const gap = line.gap(this.arrivals);
			if (gap !== Number.POSITIVE_INFINITY) sim.schedule(arrive, sim.now + gap);
		};
		next();
	}

	run(end: number): void {
		this.sim.run(end);
	}
}
