import type { ChangeTime, DressingProjection } from "../../../src/results/index.ts";
import type { Happening, Regimen } from "../../../src/scenario/index.ts";
import type { Clock } from "../clock.ts";
import { type Listed, listed, type Said } from "../pattern.ts";
import type { DressingScope } from "../scope.ts";
import { conditionName } from "../vocabulary.ts";
import { regimensSaid } from "./regimen.ts";

/** The day of a time, counted from that of the start, as a clock that is read to the whole minute shows it. */
export const dayOf = (atMin: number, { startClockMin }: Clock): number =>
	Math.floor(Math.round(startClockMin + atMin) / 1440);

const sameMinute = (a: number, b: number, clock: Clock): boolean =>
	Math.round(clock.startClockMin + a) === Math.round(clock.startClockMin + b);

type Need = DressingProjection["canisterNeeds"][number];

/** Windows in which a change is likeliest, with their shares of all days; undefined where the range itself says it. */
export function likeliestSaid(need: Need, clock: Clock): Listed | undefined {
	const { windows, p10Min, p90Min } = need;
	const [first] = windows;
	if (first === undefined || sameMinute(p10Min, p90Min, clock)) return undefined;
	if (windows.length === 1 && first.startMin <= p10Min && first.endMin >= p90Min) return undefined;
	let day = dayOf(p10Min, clock) === dayOf(p90Min, clock) ? dayOf(p10Min, clock) : 0;
	return listed(
		windows.map(({ startMin, endMin, probability }, i): Said => {
			const said: Said = [
				"{rangeon} ({percent}[[ {text}]])",
				{ from: startMin, to: endMin, day },
				probability,
				i === 0 ? "of the days" : undefined,
			];
			day = dayOf(endMin, clock);
			return said;
		}),
		", ",
		" or ",
	);
}

export const varies = ({ scenario, result }: DressingScope): boolean =>
	scenario.chance && result.projection.replications > 1;

/** What is listed for a dressing within the horizon, in order of time: from the scenario, changes under care among it. */
export interface Listing {
	readonly atMin: number;
	readonly what: Happening["what"];
	readonly forMin: number | null;
}

const ofAWard = new Set(["transfer", "turn", "off", "canister-change", "source-change", "dressing-change"]);

export const isPlanned = ({ what }: Listing): boolean => ofAWard.has(what);

export function listingsOf({ scenario, dressing }: DressingScope): Listing[] {
	const change = scenario.care.dressingChange;
	return [
		...scenario.happenings
			.filter((one) => one.dressing === dressing.id)
			.map((one) => ({ atMin: one.atMin, what: one.what, forMin: "forMin" in one ? one.forMin : null })),
		...(change !== null && "atMin" in change
			? change.atMin.map((atMin) => ({ atMin, what: "dressing-change" as const, forMin: null }))
			: []),
	]
		.filter(({ atMin }) => atMin < scenario.horizonMin)
		.toSorted((a, b) => a.atMin - b.atMin);
}

const names: { readonly [W in Happening["what"]]: string } = {
	transfer: "transfer",
	turn: "turn in bed",
	off: "therapy off",
	"canister-change": "canister changed",
	"source-change": "new bag of solution",
	"dressing-change": "dressing change",
	breach: "the seal breaks",
	clog: "debris in the port",
	"kink-fill": "the fill line is kinked",
	"kink-suction": "the suction line is kinked",
	bleed: "bleeding",
};

/** A listing as a sentence calls it, or with a capital, as a row does. */
export const listingSaid = (one: Listing, written: (text: string) => string = (text) => text): Said =>
	isPlanned(one)
		? [
				"{text}[[ until {time}]] (planned)",
				written(names[one.what]),
				one.forMin === null ? undefined : one.atMin + one.forMin,
			]
		: ["{text}: {text}[[ for {duration}]]", written("listed failure"), names[one.what], one.forMin ?? undefined];

/** When the alarm of a planned stretch without therapy sounds; null where it does not, or another piece is meant. */
export function soundsAt({ day }: DressingScope, one: Listing): number | null {
	if (one.what !== "off" || one.forMin === null) return null;
	const until = one.atMin + one.forMin;
	return (
		day.schedule.alarms.find(
			({ condition, startMin }) => condition === "suction-absent" && startMin >= one.atMin && startMin <= until,
		)?.startMin ?? null
	);
}

export const soundsSaid = (atMin: number): Said => ["{text} sounds at {clock}", conditionName("suction-absent"), atMin];

/** When the regimen at a place in the list takes over in the undisturbed day; null where it does not before the end. */
export const takeoverOf = ({ day }: DressingScope, place: number): number | null =>
	day.schedule.takeovers.find(({ regimen }) => regimen === place)?.atMin ?? null;

/** Later than its own time, since the running cycle is finished first. */
export const isLate = ({ fromMin }: Regimen, atMin: number): boolean => atMin - fromMin >= 0.5;

/** The regimens of a dressing, each with the time at which it really takes over. */
export const planLineSaid = (scope: DressingScope): Listed =>
	regimensSaid(
		scope.dressing.regimens,
		scope.summary.regimens,
		scope.dressing.regimens.map((regimen, i) => {
			const atMin = i === 0 ? 0 : (takeoverOf(scope, i) ?? regimen.fromMin);
			return [atMin, isLate(regimen, atMin) ? regimen.fromMin : undefined];
		}),
	);

/** Said where something comes on fewer than nineteen days in twenty. */
export const rareness = ({ probabilityWithinHorizon: chance }: ChangeTime): number | undefined =>
	chance < 0.95 ? chance : undefined;
