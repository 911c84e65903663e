import type * as z from "zod";
import { defaults } from "../meaning/defaults.ts";
import type { Scenario } from "../meaning/scenario.ts";
import { record } from "../reading/leaf.ts";
import { type Found, found, received } from "../reading/problem.ts";
import { duration } from "../reading/quantity.ts";
import { asMap, type Fields, read } from "../reading/raw.ts";

export const home = record("a way home", {
	from: duration("when the patient goes home", "from 0 h to 28 d", "96 h"),
	for: duration("how long supplies are sent along for", "from 12 h to 28 d", "3 d"),
})
	.optional()
	.describe("discharge, for what is to be sent home; the days at home lie within the horizon");

const anyDuration = duration("a duration", "from 0 min to 28 d", "24 h");

/** The days at home lie within the horizon. */
export function crossHome(root: Fields): Found[] {
	const home = asMap(root.home);
	const horizon = root.horizon ?? defaults.horizon.write;
	const [fromMin, forMin, endMin] = [home.from, home.for, horizon].map((time) => read(anyDuration, time));
	if (fromMin === undefined || forMin === undefined || endMin === undefined || fromMin + forMin <= endMin + 1e-9)
		return [];
	const came = `${received(home.from)} and then ${received(home.for)}, with a horizon of ${received(horizon)}`;
	return [found(["home", "for"], "days at home that lie within the horizon", came)];
}

export const resolveHome = (file: z.output<typeof home>): Scenario["home"] =>
	file === undefined ? null : { fromMin: file.from, forMin: file.for };
