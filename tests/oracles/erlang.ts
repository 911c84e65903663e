/** Oracle: closed forms of Erlang, as the text-books print them: `load` a = λ/μ. What they are held against is in waiting-lines.test.ts. */

/** Share of customers lost where none may wait: B(n) = a·B(n − 1)/(n + a·B(n − 1)). */
export function erlangB(servers: number, load: number): number {
	let b = 1;
	for (let n = 1; n <= servers; n++) b = (load * b) / (n + load * b);
	return b;
}

/** Share of customers who must wait where all may: C = B/(1 − (a/c)·(1 − B)). */
export function erlangC(servers: number, load: number): number {
	const b = erlangB(servers, load);
	return b / (1 - (load / servers) * (1 - b));
}

/** M/M/c: mean number waiting and in all, mean wait and time in all, and the share of time that it stands empty. */
export function severalServers(servers: number, arrivalRate: number, serviceRate: number) {
	const load = arrivalRate / serviceRate;
	const delayed = erlangC(servers, load);
	const wait = delayed / (servers * serviceRate - arrivalRate);
	let term = 1;
	let states = 0;
	for (let n = 0; n < servers; n++) {
		states += term;
		term *= load / (n + 1);
	}
	return {
		delayed,
		wait,
		inSystem: wait + 1 / serviceRate,
		waiting: arrivalRate * wait,
		all: arrivalRate * wait + load,
		empty: 1 / (states + term / (1 - load / servers)),
	};
}

/** M/G/1 after Pollaczek and Khinchine: Lq = (ρ² + λ²·Var S)/(2(1 − ρ)). */
export function generalService(arrivalRate: number, mean: number, variance: number) {
	const use = arrivalRate * mean;
	const waiting = (use ** 2 + arrivalRate ** 2 * variance) / (2 * (1 - use));
	return { waiting, wait: waiting / arrivalRate, all: waiting + use };
}
