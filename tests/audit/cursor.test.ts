import { expect, test } from "vitest";
import { Trace } from "../../src/engine/index.ts";
import type { DayCurve } from "../../src/results/index.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { readClock } from "./clock.ts";
import { samples } from "./many.ts";
import { writtenAt, writtenDay } from "./outputs.ts";
import { isSaidBy } from "./pattern.ts";
import { dressingScopes, placed } from "./scope.ts";

/** Minutes at which a cursor is put down: some on the half-hour, most beside it. */
const minutes = [0, 7, 30, 44, 77, 133, 200, 299.5];

/** A column of a drawn day at a minute: after a jump there, else straight between the rows around it. */
function at(curve: DayCurve, values: readonly number[], minute: number): number {
	const after = curve.atMin.findIndex((one) => one > minute);
	if (after === -1) return values.at(-1) ?? Number.NaN;
	const before = Math.max(0, after - 1);
	const [from, to] = [placed(curve.atMin, before), placed(curve.atMin, after)];
	const share = to === from ? 0 : Math.max(0, (minute - from) / (to - from));
	return placed(values, before) + share * (placed(values, after) - placed(values, before));
}

/** Value below which a share of the days lies, at the least and at the most: the days around that share. */
function around(values: readonly number[], share: number) {
	const sorted = values.toSorted((a, b) => a - b);
	const place = share * (sorted.length - 1);
	return [
		placed(sorted, Math.max(0, Math.floor(place - 0.5))),
		placed(sorted, Math.min(sorted.length - 1, Math.ceil(place + 0.5))),
	] as const;
}

test("what each lane reads at the minute of a cursor is so at that minute", () => {
	const faults: string[] = [];
	const days = samples("day", 190, 600).filter(({ text }) => /^replications: (?:12|20|40)$/mu.test(text));
	let read = 0;
	for (const { text, number } of days.slice(0, 10)) {
		const { scenario, result } = writtenDay(text);
		const all = Array.from({ length: scenario.replications }, (_, i) => traceDay(scenario, new Trace(), i));
		for (const { index, day, summary, projection } of dressingScopes({ scenario, result }))
			for (const minute of minutes.filter((one) => one < scenario.horizonMin)) {
				const readings = writtenAt(minute, { clock: scenario, dressing: summary, day, projection });
				const words = (lane: string): string => readings.find((one) => one.lane === lane)?.words ?? "";
				const fault = (lane: string, derived: string) =>
					faults.push(`day ${number}, ${summary.id}, minute ${minute}, ${lane}: ${words(lane)}; derived ${derived}`);
				read++;
				if (Math.abs(readClock(words("time"), scenario) - minute) > 0.5) fault("time", String(minute));
				const { curve } = day;
				for (const [lane, values] of [
					["in the dressing", curve.liquidMl],
					["source", curve.sourceMl],
				] as const) {
					const ml = at(curve, values, minute);
					if (words(lane) !== "" && !isSaidBy(words(lane), ["{ml}", ml], scenario)) fault(lane, `${ml}`);
				}
				const own = at(curve, curve.canisterMl, minute);
				const [, time = "", low, high] =
					/\(8 days in 10, at (.*?): (.*) mL to (.*) mL\)$/u.exec(words("canister")) ?? [];
				const content = words("canister").replace(/ \(.*$/u, "");
				if (!isSaidBy(content, ["{ml}", own], scenario)) fault("canister", `${own}`);
				if (low === undefined || high === undefined) continue;
				// The band says of which time it is: the last one that was looked at, half an hour ago at the most in a day.
				const then = readClock(time, scenario);
				if (then > minute + 0.5 || then < minute - 46) fault("canister", time);
				const levels = all.map(({ dressings }) => {
					const other = placed(dressings, index).curve;
					return at(other, other.canisterMl, then);
				});
				for (const [written, share] of [
					[Number(low), 0.1],
					[Number(high), 0.9],
				] as const) {
					const [least, most] = around(levels, share);
					if (written < least - 1.5 || written > most + 1.5)
						fault("canister", `P${100 * share} of ${levels.length} days between ${least} and ${most}`);
				}
			}
	}
	expect(read).toBeGreaterThan(100);
	expect(faults.length, faults.slice(0, 20).join("\n")).toBe(0);
});
