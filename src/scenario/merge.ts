import type * as z from "zod";
import type { Constants } from "../physics/index.ts";
import type { Regimen } from "./scenario.ts";
import type { partialRegimen, regimen } from "./schema-regimen.ts";

export type RegimenFile = z.output<typeof regimen> & {
	readonly from?: number | undefined;
};
export type PartialRegimenFile = z.output<typeof partialRegimen>;

/** A regimen with the suggested fill and the drawdown worked out. */
export function resolveRegimen(
	file: RegimenFile,
	foamVolumeMl: number,
	constants: Constants,
): Regimen {
	const fillMl =
		file.fill === "none"
			? 0
			: file.fill === "suggested"
				? constants["foam.suggested"] * foamVolumeMl
				: file.fill;
	return {
		fromMin: file.from ?? 0,
		begin: fillMl === 0 ? "suction" : file.begin,
		depthMmHg: file.depth,
		fillMl,
		fillSuggested: file.fill === "suggested",
		dwellMin: fillMl === 0 ? 0 : (file.dwell ?? 0),
		suctionMin:
			fillMl === 0
				? Number.POSITIVE_INFINITY
				: (file.suction ?? Number.POSITIVE_INFINITY),
		drawdown: file.drawdown ?? constants["pump.drawdown"],
		drawdownGiven: file.drawdown !== undefined,
	};
}

/** Settings as text, alike where the day is: whether a number was given or worked out makes no other day. */
export const settingsText = (settings: unknown): string =>
	JSON.stringify(settings, (key, value) =>
		key === "fillSuggested" || key === "drawdownGiven" ? undefined : value,
	);

/** A partial regimen laid over the first of a list; the later ones stay. */
export function laidOver(
	patch: Partial<PartialRegimenFile>,
	regimens: readonly RegimenFile[],
): RegimenFile[] {
	const {
		dressing: _,
		canister: __,
		source: ___,
		holds: ____,
		left: _____,
		...settings
	} = patch;
	const given = Object.fromEntries(
		Object.entries(settings).filter(([, value]) => value !== undefined),
	);
	return regimens.map((regimen, i) =>
		i === 0 ? { ...regimen, ...given } : regimen,
	);
}
