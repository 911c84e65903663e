/** Oracle: machines that break down and are repaired, the finite-source queue of the text-books. Held against tables in waiting-lines.test.ts. */

/** `machines` that run for 1/λ on average and are repaired in 1/μ by one of `servers`. */
export interface Shop {
	readonly machines: number;
	readonly failureRate: number;
	readonly repairRate: number;
	readonly servers: number;
}

/** P(n) ∝ P(n − 1)·(N − n + 1)·λ/(min(n, c)·μ): the finite-source queue of the text-books. */
function stateShares(shop: Shop): number[] {
	const shares = [1];
	for (let n = 1; n <= shop.machines; n++)
		shares.push(
			(shares[n - 1] * (shop.machines - n + 1) * shop.failureRate) / (Math.min(n, shop.servers) * shop.repairRate),
		);
	const sum = shares.reduce((total, share) => total + share, 0);
	return shares.map((share) => share / sum);
}

export function shopAnswers(shop: Shop) {
	const shares = stateShares(shop);
	const mean = (value: (n: number) => number) => shares.reduce((sum, share, n) => sum + share * value(n), 0);
	const down = mean((n) => n);
	const waiting = mean((n) => Math.max(0, n - shop.servers));
	const failures = shop.failureRate * (shop.machines - down);
	// A machine that breaks down sees the states of a shop without itself.
	const seen = stateShares({ ...shop, machines: shop.machines - 1 });
	return {
		noneDown: shares[0],
		down,
		waiting,
		wait: waiting / failures,
		downTime: down / failures,
		allBusy: 1 - total(shares.slice(0, shop.servers)),
		mustWait: 1 - total(seen.slice(0, shop.servers)),
	};
}

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Six machines, a breakdown every 20 h each, a repair in 2 h, one repairer or two: a published problem. */
export const oneRepairer: Shop = { machines: 6, failureRate: 0.05, repairRate: 0.5, servers: 1 };
export const twoRepairers: Shop = { ...oneRepairer, servers: 2 };
