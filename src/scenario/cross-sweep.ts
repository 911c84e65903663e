import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf, read } from "./lenient.ts";
import { received } from "./path.ts";
import { duration } from "./schema-regimen.ts";
import { mostPoints, type SweepAxisKey, sweepAxes } from "./schema-sweep.ts";
import { unknownDressing } from "./unknown-dressing.ts";

const anyDuration = duration("a duration", "0 min", "28 d", "24 h");

/** The grid of `sweep:` and the discharge of `home:`. */
export function crossSweep(data: unknown): Found[] {
	const root = asMap(data);
	return [
		...crossGrid(root.sweep, asList(root.dressings)),
		...ofHome(asMap(root.home), root.horizon),
	];
}

/** A grid must name a dressing that is there and have no more points than anyone would wait for. */
export function crossGrid(
	written: unknown,
	dressings: readonly unknown[],
): Found[] {
	const sweep = asMap(written);
	const ids = dressings.map((dressing) => idOf(asMap(dressing).id));
	const meant = idOf(sweep.dressing);
	const unknown =
		meant !== undefined && !ids.includes(meant)
			? [unknownDressing(["sweep", "dressing"], meant, ids)]
			: [];
	const points = (Object.keys(sweepAxes) as SweepAxisKey[]) // keys forgets the names it lists
		.map((key) => read(sweepAxes[key], sweep[key])?.length ?? 1)
		.reduce((product, length) => product * length, 1);
	const many =
		points > mostPoints
			? [
					found(
						["sweep"],
						`a grid of at most ${mostPoints} points`,
						`one of ${points}`,
					),
				]
			: [];
	const alone =
		sweep.apart !== undefined && dressings.length < 2
			? [
					found(
						["sweep", "apart"],
						"two dressings or more, for cycles to be in step or out of step",
						"one dressing",
					),
				]
			: [];
	return [...unknown, ...many, ...alone];
}

function ofHome(
	home: Readonly<Record<string, unknown>>,
	horizon: unknown,
): Found[] {
	const [from, long, end] = [home.from, home.for, horizon ?? "24 h"].map(
		(written) => read(anyDuration, written),
	);
	if (
		from === undefined ||
		long === undefined ||
		end === undefined ||
		from + long <= end + 1e-9
	)
		return [];
	return [
		found(
			["home", "for"],
			"days at home that lie within the horizon",
			`${received(home.from)} and then ${received(home.for)}, with a horizon of ${received(horizon ?? "24 h")}`,
		),
	];
}
