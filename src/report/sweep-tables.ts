import type {
	SweepAxis,
	SweepPoint,
	SweepResult,
	SweepValues,
} from "../analysis/sweep-result.ts";
import { assumptionsTable, type Cell, csvTable } from "./csv-table.ts";
import { carriedMeasures, efficientPlaces } from "./sweep-parts.ts";

/**
 * One table a file, by file name. `points.csv` has a row a point, `values.csv` a row a point and measure, by the point's
 * number; the marked regimens stand in `values.csv` by name. `begin-times.csv` is there where the beginning is varied.
 */
export function sweepTables(result: SweepResult): {
	readonly [fileName: string]: string;
} {
	const isTimed = result.points.some(({ clock }) => clock !== null);
	return {
		"points.csv": points(result),
		"values.csv": values(result),
		...(isTimed ? { "begin-times.csv": beginTimes(result) } : {}),
		"assumptions.csv": assumptionsTable(result.assumptions),
	};
}

/** 'dwellMin', 'depthMmHg', 'startClockMin': a column of an axis. */
const column = ({ name, unit }: SweepAxis): string =>
	unit === "clock"
		? `${name}ClockMin`
		: `${name}${unit.charAt(0).toUpperCase()}${unit.slice(1).replace("L", "l")}`;

const points = (result: SweepResult): string => {
	const efficient = efficientPlaces(result);
	return csvTable(
		[
			"point",
			...result.axes.map(column),
			"current",
			"usual",
			"kept",
			"efficient",
			"outside",
		],
		result.points.map((point, index) => [
			index,
			...point.at,
			point.current,
			point.usual,
			point.kept,
			efficient.has(index),
			point.outside.join(" "),
		]),
	);
};

const values = (result: SweepResult): string => {
	const measures = carriedMeasures(result);
	const rows = (name: string | number, from: SweepValues): Cell[][] =>
		measures.flatMap((measure) => {
			const value = from.measures[measure];
			return value === undefined
				? []
				: [
						[
							name,
							measure,
							value.mean,
							value.halfWidth95,
							value.difference,
							value.differenceHalfWidth95,
						],
					];
		});
	return csvTable(
		[
			"point",
			"measure",
			"mean",
			"halfWidth95",
			"difference",
			"differenceHalfWidth95",
		],
		[
			...result.points.flatMap((point, index) => rows(index, point)),
			...result.marks.flatMap((mark) => rows(mark.mark, mark)),
		],
	);
};

/** When the canister is likely to be changed; minutes count from the start of the point's own day. */
const beginTimes = (result: SweepResult): string =>
	csvTable(
		["point", "canisterChange", "p10Min", "p50Min", "p90Min", "probability"],
		result.points.flatMap((point: SweepPoint, index) =>
			(point.clock?.canisterChanges ?? []).map((change, ordinal) => [
				index,
				ordinal + 1,
				change.p10Min,
				change.p50Min,
				change.p90Min,
				change.probabilityWithinHorizon,
			]),
		),
	);
