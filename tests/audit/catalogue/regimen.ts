import type { Dressing, Regimen } from "../../../src/scenario/index.ts";
import { type Listed, listed, type Said } from "../pattern.ts";
import { capital, tissueName } from "../vocabulary.ts";

/** How one regimen is told: what goes in, how long it stays, how long suction runs, how deep. */
export function regimenSaid(regimen: Regimen): Said {
	if (regimen.fillMl === 0) return ["continuous suction at {mmHg}, no fill", regimen.depthMmHg];
	const rest = [regimen.suctionMin, regimen.depthMmHg];
	return regimen.dwellMin === 0
		? ["{ml} drained at once, then {duration} of suction at {mmHg}", regimen.fillMl, ...rest]
		: ["{ml} for {duration}, then {duration} of suction at {mmHg}", regimen.fillMl, regimen.dwellMin, ...rest];
}

/** The first with how it begins and how it draws down, then each that takes over, with its time. */
export function regimensSaid(
	regimens: readonly Regimen[],
	/** Of each regimen; null where the drawdown is told elsewhere. */
	drawdowns: readonly Drawdown[] | null,
	/** When each takes over, and when it was set for where that is earlier. */
	taken: readonly (readonly [atMin: number, setMin: number | undefined])[] = regimens.map(({ fromMin }) => [
		fromMin,
		undefined,
	]),
): Listed {
	return listed(
		regimens.map((regimen, i): Said => {
			const before = regimens[i - 1];
			const own = drawdowns?.[i];
			if (before === undefined)
				return [
					"{said}[[, beginning with a {text}]][[; {said}]]",
					regimenSaid(regimen),
					regimen.begin === "fill" ? "fill" : undefined,
					own === undefined ? undefined : drawdownSaid(own),
				];
			const again = before.drawdown !== regimen.drawdown || before.depthMmHg !== regimen.depthMmHg;
			const [atMin, setMin] = taken[i] ?? [regimen.fromMin, undefined];
			return [
				"from {clock}[[ (set for {clock})]] {said}[[; {said}]]",
				atMin,
				setMin,
				regimenSaid(regimen),
				own === undefined || !again ? undefined : drawdownSaid(own),
			];
		}),
		"; ",
	);
}

/** Share of the pump's flow in a drawdown, the depth that it leads to and the seconds that it takes; null where it does not get there. */
export interface Drawdown {
	readonly drawdown: number;
	readonly depthMmHg: number;
	readonly drawdownSec: number | null;
}

const drawdownSaid = ({ drawdown, depthMmHg, drawdownSec }: Drawdown): Said =>
	drawdownSec === null
		? ["drawdown {share} ({mmHg} is not reached before the pump is let work freely)", drawdown, depthMmHg]
		: ["drawdown {share} ({about} to {mmHg})", drawdown, drawdownSec, depthMmHg];

/** A drawdown that several regimens share, which takes each its own time. */
export function sharedDrawdownSaid(all: readonly Drawdown[]): Said {
	const [first] = all;
	const times = all.flatMap(({ drawdownSec }) => drawdownSec ?? []);
	if (first === undefined || times.length === 0)
		return ["drawdown {share} (the set depth is not reached before the pump is let work freely)", first?.drawdown ?? 0];
	const [least, most] = [Math.min(...times), Math.max(...times)];
	const alike = written(least) === written(most);
	return [
		"drawdown {share} ({about}[[ to {about}]] to the set depth[[, {text}]])",
		first.drawdown,
		least,
		alike ? undefined : most,
		times.length < all.length ? "or not before the pump is let work freely" : undefined,
	];
}

/** Seconds as they are written, to tell whether two are written alike. */
const written = (seconds: number): string =>
	seconds < 0.95 ? "less" : seconds < 59.5 ? `${Math.round(seconds)} s` : `${(seconds / 60).toFixed(1)} min`;

/** A canister and what it holds at the start, a bag and what is left in it. */
export const canisterSaid = ({
	canisterMl,
	canisterHoldsMl: holds,
}: Pick<Dressing, "canisterMl" | "canisterHoldsMl">): Said => [
	"canister {ml}[[ that holds {ml}]]",
	canisterMl,
	holds === 0 ? undefined : holds,
];
export const bagSaid = ({ sourceMl, sourceLeftMl: left }: Pick<Dressing, "sourceMl" | "sourceLeftMl">): Said => [
	"solution {ml}[[ with {ml} left]]",
	sourceMl,
	left === null || left >= sourceMl ? undefined : left,
];

/** The wound, its foam, and, unless that is told elsewhere, what hangs beside it. */
export function dressingSaid(dressing: Dressing, capacityShare: number, withUnit = true): Said {
	const foamMl = dressing.foam.reduce((sum, piece) => sum + piece.areaCm2 * piece.thicknessCm, 0);
	const fills = dressing.regimens.some(({ fillMl }) => fillMl > 0);
	return [
		"{text}, about {ml} of exudate a day, {text}, {text} seal; foam {ml}, takes {ml} before it pools[[; {said}]][[, {said}]]",
		capital(tissueName(dressing.tissue)),
		dressing.exudateMlPerDay,
		dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`,
		dressing.difficulty,
		foamMl,
		capacityShare * foamMl,
		withUnit ? canisterSaid(dressing) : undefined,
		withUnit && fills ? bagSaid(dressing) : undefined,
	];
}
