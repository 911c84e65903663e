import { equilibriumDepth, timeConstant, timeToDepth } from "./air.ts";
import type { Constants } from "./constants.ts";

/** Air that the pump must thin, L: that of the lines, of the foam, and above what the canister holds. */
export function airToThin(constants: Constants, capacityMl: number, canisterMl: number, holdsMl: number): number {
	return constants["line.volume"] + (capacityMl + canisterMl - holdsMl) / 1000;
}

/** The depth at which the pump's curve meets the leak of a sound seal: Q0·(1 − p/pmax) = C·p. */
export function deepestHeld(constants: Constants): number {
	const most = constants["pump.maxDepth"];
	return most / (1 + (constants["leak.sound"] * most) / constants["pump.freeFlow"]);
}

/**
 * Minutes that a drawdown takes from the pressure of the room to `depthMmHg` under a sound seal, with `share` of the
 * pump's flow let work and `airL` to thin: t(p) = τ·ln(p∞/(p∞ − p)), p∞ and τ as in `air.ts` with S = f·Q0. Infinity
 * where the depth is not reached so before the pump is let work freely (`pump.drawdownLimit`).
 */
export function drawdownMin(share: number, depthMmHg: number, airL: number, constants: Constants): number {
	const flow = share * constants["pump.freeFlow"];
	const deepest = constants["pump.maxDepth"];
	const leak = constants["leak.sound"];
	const towards = equilibriumDepth(flow, deepest, leak);
	if (towards <= depthMmHg) return Number.POSITIVE_INFINITY;
	const tau = timeConstant(airL, constants["air.ambient"], flow, deepest, leak);
	const minutes = timeToDepth(0, depthMmHg, towards, tau);
	return minutes <= constants["pump.drawdownLimit"] ? minutes : Number.POSITIVE_INFINITY;
}
