import * as z from "zod";
import { readQuantity } from "../physics/index.ts";
import { defaults } from "./defaults.ts";
import { drawdown } from "./drawdown.ts";
import { choice, name, record } from "./leaf.ts";
import {
	judge,
	type QuantityRule,
	quantity,
	quantityOr,
	refuse,
} from "./quantity.ts";

const volume = (
	description: string,
	from: string,
	to: string,
	example: string,
) => quantity({ unit: "mL", what: "a volume", example, from, to, description });
export const duration = (
	description: string,
	from: string,
	to: string,
	example: string,
) =>
	quantity({ unit: "min", what: "a duration", example, from, to, description });

const depthRule: QuantityRule = {
	unit: "mmHg",
	what: "a depth",
	example: "-125 mmHg",
	from: "-700 mmHg",
	to: "-5 mmHg",
};

/** The set depth, signed in the file; comes out positive, mmHg below ambient. */
export const depth = z
	.unknown()
	.transform((raw, context): number => {
		const reading =
			typeof raw === "string" ? readQuantity(raw, depthRule.unit) : null;
		if (typeof raw === "string" && reading?.ok === true && reading.value > 0)
			return refuse(
				context,
				raw,
				`a depth below the pressure of the room, with a minus: write -${raw.trim().replace(/^\+/u, "")}`,
			);
		const judged = judge(raw, {
			...depthRule,
			what: "a depth below the pressure of the room",
		});
		if (judged.ok) return -judged.value;
		const deeper =
			reading?.ok === false && reading.hint !== null
				? `-${reading.hint.replace(/^\+/u, "")}`
				: "";
		return refuse(
			context,
			raw,
			judged.expected,
			judged.suggestion ??
				(judge(deeper, depthRule).ok ? `"${deeper}"` : undefined),
		);
	})
	.meta({
		type: "string",
		pattern: "^\\s*[\\u2212-].*[^\\d\\s]$",
		examples: ["-125 mmHg", "-75 mmHg"],
		description:
			"set depth of suction, below the pressure of the room and so with a minus; units: mmHg, kPa, cmH2O, mbar, hPa, Pa, inHg, Torr",
	});

/** The settings of a regimen, one by one. */
export const settings = {
	begin: choice(
		["suction", "fill"],
		"what the day begins with; suction proves the seal before liquid is in the dressing",
	),
	depth,
	fill: quantityOr(["suggested", "none"], {
		unit: "mL",
		what: "a volume",
		example: "50 mL",
		from: "0.1 mL",
		to: "2000 mL",
		description:
			"solution of one fill; suggested: by the foam's volume; none: suction alone",
	}),
	dwell: duration("how long the solution stays", "0.1 min", "24 h", "5 min"),
	suction: duration(
		"suction period, from pump start to the next fill",
		"1 min",
		"7 d",
		"2 h",
	),
	drawdown,
};

export const regimenShape = {
	begin: settings.begin.prefault(defaults["dressings[].regimen.begin"].write),
	depth: settings.depth,
	fill: settings.fill,
	dwell: settings.dwell.optional(),
	suction: settings.suction.optional(),
	drawdown: settings.drawdown.optional(),
};

export const regimen = record("a regimen", regimenShape);

/** When an item of a list of regimens takes over; counts from the start. */
export const from = duration(
	"when it takes over, from the start of the scenario",
	"0 h",
	"28 d",
	"24 h",
);

export const regimenItem = record("a regimen", {
	from: from.optional(),
	...regimenShape,
});

/** Size of the canister that the therapy unit takes. */
export const canisterSize = volume(
	"size of the canister",
	"50 mL",
	"20 L",
	"1000 mL",
);
export const sourceSize = volume(
	"size of a source of solution",
	"50 mL",
	"20 L",
	"1000 mL",
);

/** What the canister holds when the day begins. */
export const canisterHolds = volume(
	"what the canister holds at the start",
	"0 mL",
	"20 L",
	"120 mL",
);
export const sourceLeft = volume(
	"what is left in the source of solution at the start; full where it is left out",
	"0 mL",
	"20 L",
	"640 mL",
);

const partialSettings = {
	begin: settings.begin.optional(),
	depth: settings.depth.optional(),
	fill: settings.fill.optional(),
	dwell: settings.dwell.optional(),
	suction: settings.suction.optional(),
	drawdown: settings.drawdown.optional(),
};

/** The regimen that a site runs most: what it leaves out is as in the scenario. */
export const usualRegimen = record("a partial regimen", partialSettings);

/** A regimen of `compare:`: what it leaves out stays as it is. */
export const partialRegimen = record("a partial regimen", {
	dressing: name(
		"the id of a dressing",
		"the dressing it is laid over; all of them where it is left out",
	).optional(),
	...partialSettings,
	canister: canisterSize.optional(),
	holds: canisterHolds.optional(),
	source: sourceSize.optional(),
	left: sourceLeft.optional(),
});
