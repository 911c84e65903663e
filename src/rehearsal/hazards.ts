import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { Recorder } from "../analysis/index.ts";
import { exp, ln } from "../elementary/index.ts";
import type { CauseName } from "../scenario/index.ts";
import { Bedside, type Placed } from "./bedside.ts";
import { type Case, shiftOf } from "./shift.ts";

/** One kind of cause as chance brings it in a shift. */
export interface Hazard {
	readonly cause: CauseName;
	/** How many of the kind a shift brings on average; only the shares matter. */
	readonly weight: number;
	/** The course of one, from uniform numbers; the first decides its moment, so that it can be spread evenly. */
	readonly draw: (uniform: () => number) => Placed;
}

/** What the model has no number for. All of it assumed: placeholders until a site calibrates them. */
export const rehearsalNumbers = {
	/** A canister or source that ought to have been changed is passed over, share of rounds. */
	passedOver: 0.1,
	/** Therapies left switched off, /h. */
	leftOffPerHour: 0.004,
	/** Bleeds, /h. */
	bleedsPerHour: 0.001,
	/** Share of kinks that free themselves, after `freedMin`. */
	freed: 0.2,
	freedMin: { from: 4, to: 30 },
	/** How much larger a breach is where a corner has come up. */
	cornerTimes: 3,
	/** Share of clogs that come at any moment of suction and not with a drain. */
	clogsInSuction: 0.3,
	/** Least share of the port that counts as clogged. */
	clogShare: 0.5,
	/** Part of the shift in which a cause comes. */
	window: { from: 0.03, to: 0.75 },
	bleedMl: { from: 80, to: 500 },
	bleedMin: { from: 30, to: 90 },
} as const;

/**
 * The kinds of cause in a shift with this dressing, weighted by the model's own numbers: kinks and dry breaches by their
 * rates, wet breaches by the Weibull hazard of each wet spell, clumps by the drains, turns and the transfer by their
 * chances. With no flow into canister or out of a source nothing fills up or runs out.
 */
export function hazardsOf(of: Case): Hazard[] {
	const shift = shiftOf(of);
	const [dressing] = shift.dressings;
	const k = shift.constants;
	const n = rehearsalNumbers;
	const recorder = new Recorder(shift);
	const sound = new Bedside(shift, recorder);
	sound.begin([]);
	sound.advance(shift.horizonMin);
	sound.finish();
	const { phases, totals } = recorder.day(0, sound.process);
	const hours = shift.horizonMin / 60;
	const worn =
		1 + k["breach.age"] * ((dressing.ageMin + shift.horizonMin / 2) / 1440);
	const seal = k[`difficulty.${dressing.difficulty}`] * worn;
	const drains = phases.filter(({ phase }) => phase === "drain");
	const wet = wetSpells(phases);

	const anyTime = (u: number) =>
		shift.horizonMin * between(u, n.window.from, n.window.to);
	const kinked = (
		cause: "fill-line-kinked" | "suction-line-kinked",
		share: number,
	): Hazard => ({
		cause,
		weight: k["kink.rate"] * share * hours,
		draw: (uniform) => {
			const onsetMin = anyTime(uniform());
			const frees = uniform() < n.freed;
			const freedMin = between(uniform(), n.freedMin.from, n.freedMin.to);
			return {
				cause,
				atMin: onsetMin,
				withinMin: 0,
				onsetMin,
				lastsMin: frees ? freedMin : Number.POSITIVE_INFINITY,
			};
		},
	});
	// A breach that nobody hears is no case: sizes are drawn from those that a round would hear.
	const audible = k["round.leakAbove"] / dressing.regimens[0].depthMmHg;
	const size = (u: number, times: number) =>
		sizeAbove(
			audible / times,
			u,
			k["breach.sizeMedian"],
			k["breach.sizeSigma"],
		) * times;
	const heard =
		1 - sizeBelow(audible, k["breach.sizeMedian"], k["breach.sizeSigma"]);
	const dryBreaches =
		k["breach.dry"] * seal * hours +
		(of.care.turningMin === null
			? 0
			: (shift.horizonMin / of.care.turningMin) * k["turn.held"]);
	const wetBreaches =
		wet.reduce(
			(sum, { startMin, endMin }) =>
				sum + ((endMin - startMin) / k["breach.wetScale"]) ** 2,
			0,
		) * seal;
	const breaches = dryBreaches + wetBreaches;
	const clogged =
		Math.min(1, k["clump.chance"] * k[`slough.${dressing.slough}`]) *
		exp(-n.clogShare / Math.max(k["clump.mean"], 1e-9)) *
		drains.length;
	const canisterRoom = totals.toCanisterMl - 0.1 * dressing.canisterMl;
	const moved = of.rehearsal.transferMin;

	const hazards: Hazard[] = [
		kinked(
			"fill-line-kinked",
			drains.length === 0 ? 0 : 1 - k["kink.suctionShare"],
		),
		kinked("suction-line-kinked", k["kink.suctionShare"]),
		{
			cause: "port-clogged",
			weight: clogged / (1 - n.clogsInSuction),
			draw: (uniform) => {
				const first = uniform();
				const drain = drains[Math.floor(first * drains.length)];
				const inSuction = uniform() < n.clogsInSuction;
				const share = n.clogShare - k["clump.mean"] * ln(1 - uniform());
				const onsetMin = inSuction ? anyTime(first) : drain.startMin;
				return {
					cause: "port-clogged",
					atMin: onsetMin,
					withinMin: 0,
					onsetMin,
					share: Math.min(1, share),
				};
			},
		},
		{
			cause: "canister-full",
			weight: n.passedOver * Math.max(0, canisterRoom / dressing.canisterMl),
			draw: (uniform) => ({
				cause: "canister-full",
				onsetMin: 0,
				holdsMl: 0.9 * (dressing.canisterMl - uniform() * canisterRoom),
			}),
		},
		{
			cause: "source-empty",
			weight:
				n.passedOver * Math.min(1, totals.instilledMl / dressing.sourceMl),
			draw: (uniform) => ({
				cause: "source-empty",
				onsetMin: 0,
				holdsMl:
					uniform() * Math.min(totals.instilledMl - 1, 0.9 * dressing.sourceMl),
			}),
		},
		{
			cause: "seal-breach",
			weight: breaches * heard,
			draw: (uniform) => {
				const first = uniform();
				const isWet = uniform() * breaches < wetBreaches && wet.length > 0;
				const spell = wet[Math.floor(first * wet.length)];
				const onsetMin = isWet
					? between((first * wet.length) % 1, spell.startMin, spell.endMin)
					: anyTime(first);
				return {
					cause: "seal-breach",
					atMin: onsetMin,
					withinMin: 0,
					onsetMin,
					size: size(uniform(), 1),
				};
			},
		},
		{
			cause: "dressing-dislodged",
			weight: moved === null ? 0 : k[`transfer.${stateAt(moved, phases)}`],
			draw: (uniform) => ({
				cause: "dressing-dislodged",
				onsetMin: moved ?? 0,
				size: size(uniform(), n.cornerTimes),
			}),
		},
		{
			cause: "left-off",
			weight: n.leftOffPerHour * hours,
			draw: (uniform) => {
				const onsetMin = anyTime(uniform());
				return {
					cause: "left-off",
					atMin: onsetMin,
					withinMin: 0,
					onsetMin,
					lastsMin: Number.POSITIVE_INFINITY,
				};
			},
		},
		{
			cause: "bleeding",
			weight: n.bleedsPerHour * hours,
			draw: (uniform) => {
				const onsetMin = anyTime(uniform());
				return {
					cause: "bleeding",
					atMin: onsetMin,
					withinMin: 0,
					onsetMin,
					volumeMl: between(uniform(), n.bleedMl.from, n.bleedMl.to),
					lastsMin: between(uniform(), n.bleedMin.from, n.bleedMin.to),
				};
			},
		},
	];
	return hazards.filter(({ weight }) => weight > 0);
}

type Spell = { readonly startMin: number; readonly endMin: number };
type Phases = readonly (Spell & { readonly phase: string })[];

const between = (u: number, from: number, to: number) => from + (to - from) * u;

/** Spells from the start of a fill to the end of its drain. */
function wetSpells(phases: Phases): Spell[] {
	const spells: { startMin: number; endMin: number }[] = [];
	for (const { phase, startMin, endMin } of phases) {
		const last = spells.at(-1);
		if (phase === "fill") spells.push({ startMin, endMin });
		else if ((phase === "dwell" || phase === "drain") && last !== undefined)
			last.endMin = endMin;
	}
	return spells;
}

/** What the dressing of a sound shift is doing, as the chances of a move have it. */
function stateAt(atMin: number, phases: Phases): "held" | "wet" | "between" {
	const at = phases.find(
		({ startMin, endMin }) => startMin <= atMin && atMin < endMin,
	);
	if (at === undefined) return "between";
	if (at.phase === "fill" || at.phase === "dwell") return "wet";
	// The longest that a drawdown holds the pump back.
	return atMin - at.startMin < 3 ? "between" : "held";
}

/** Share of lognormal sizes below a bound, by bisection of the quantile: 50 halvings leave 1e-15. */
function sizeBelow(bound: number, median: number, sigma: number): number {
	if (sigma === 0) return bound <= median ? 0 : 1;
	const z = ln(bound / median) / sigma;
	let [low, high] = [0, 1];
	for (let i = 0; i < 50; i++) {
		const middle = (low + high) / 2;
		if (normalQuantile(middle, 0, 1) < z) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** Lognormal above a bound, by inversion. */
function sizeAbove(
	bound: number,
	u: number,
	median: number,
	sigma: number,
): number {
	const below = sizeBelow(bound, median, sigma);
	if (below >= 1 || sigma === 0) return Math.max(bound, median);
	const share = Math.min(below + u * (1 - below), 1 - 2 ** -53);
	return Math.max(
		bound,
		median * exp(sigma * normalQuantile(Math.max(share, 2 ** -54), 0, 1)),
	);
}
