import { join } from "node:path";
import { beforeAll, expect } from "vitest";
import { filesOf, here, reportNames, scenario, temporary } from "./program.ts";

export const thigh = scenario("thigh-short-dwell");
export const few = ["--replications", "50"];

/** Files of a report by name. */
export type Report = Readonly<Record<string, string>>;

/** The reports of one scenario under the seeds a and b, made before the tests: a file that is whole is of one of them. */
export function twoReports(): readonly Report[] {
	const reports: Report[] = [];
	beforeAll(async () => {
		for (const seed of ["a", "b"]) {
			const out = join(temporary(), seed);
			const { status } = await here("day", thigh, ...few, "--seed", seed, "--out", out);
			expect(status).toBe(0);
			reports.push(filesOf(out));
		}
		expect(reports[0]?.["phases.csv"]).not.toBe(reports[1]?.["phases.csv"]);
	});
	return reports;
}

/** Every file that stands under its final name is whole. */
export function expectWhole(out: string, reports: readonly Report[]): void {
	for (const [name, text] of Object.entries(filesOf(out))) {
		if (name.startsWith(".")) continue;
		expect(reportNames).toContain(name);
		const whole = reports.some((report) => report[name] === text);
		expect(whole, `${name} is half written`).toBe(true);
	}
}
