import type { SweepAxis, SweepPoint, SweepResult, SweepValues } from "../../results/index.ts";
import { assumptionColumns } from "../kit/closing-chapter.ts";
import { csvTable } from "../kit/csv-table.ts";
import { carriedMeasures, efficientPlaces } from "./shown-measures.ts";

/**
 * One table a file, by file name. `points.csv` has a row a point, `values.csv` a row a point and measure, by the point's
 * number; the marked regimens stand in `values.csv` by name. `begin-times.csv` is there where the beginning is varied.
 */
export function sweepTables(result: SweepResult): { readonly [fileName: string]: string } {
	const isTimed = result.points.some(({ clock }) => clock !== null);
	return {
		"points.csv": points(result),
		"values.csv": values(result),
		...(isTimed ? { "begin-times.csv": beginTimes(result) } : {}),
		"assumptions.csv": csvTable(assumptionColumns, result.assumptions),
	};
}

/** 'dwellMin', 'depthMmHg', 'startClockMin': a column of an axis. */
const column = ({ name, unit }: SweepAxis): string =>
	unit === "clock" ? `${name}ClockMin` : `${name}${unit.charAt(0).toUpperCase()}${unit.slice(1).replace("L", "l")}`;

const points = (result: SweepResult): string => {
	const efficient = efficientPlaces(result);
	return csvTable(
		[
			{ key: "point", value: (_, place) => place },
			...result.axes.map((axis, index) => ({ key: column(axis), value: ({ at }: SweepPoint) => at[index] ?? null })),
			...(["current", "usual", "kept"] as const),
			{ key: "efficient", value: (_, place) => efficient.has(place) },
			{ key: "outside", value: ({ outside }) => outside.join(" ") },
		],
		result.points,
	);
};

const values = (result: SweepResult): string => {
	const measures = carriedMeasures(result);
	const rows = (point: string | number, from: SweepValues) =>
		measures.flatMap((measure) => {
			const value = from.measures[measure];
			return value === undefined ? [] : [{ point, measure, ...value }];
		});
	return csvTable(
		["point", "measure", "mean", "halfWidth95", "difference", "differenceHalfWidth95"],
		[
			...result.points.flatMap((point, place) => rows(place, point)),
			...result.marks.flatMap((mark) => rows(mark.mark, mark)),
		],
	);
};

/** When the canister is likely to be changed; minutes count from the start of the point's own day. */
const beginTimes = (result: SweepResult): string =>
	csvTable(
		[
			...(["point", "canisterChange", "p10Min", "p50Min", "p90Min"] as const),
			{ key: "probability", value: ({ probabilityWithinHorizon }) => probabilityWithinHorizon },
		],
		result.points.flatMap(({ clock }, point) =>
			(clock?.canisterChanges ?? []).map((change, index) => ({ point, canisterChange: index + 1, ...change })),
		),
	);
