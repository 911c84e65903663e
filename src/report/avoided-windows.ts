import type { AvoidedTime } from "../analysis/measures.ts";
import type { SweepResult } from "../analysis/sweep-result.ts";
import type { BeginTimesData } from "../charts/index.ts";

const names: { readonly [T in AvoidedTime]: string } = {
	handOver: "hand-over",
	meals: "meals",
	smallHours: "small hours",
};

const span = /(\d\d):(\d\d)\s*[-\u2013]\s*(\d\d):(\d\d)/gu;

/** The stretches of the day that the scenario keeps clear, as its assumptions name them: `06:30-07:30`. */
export const avoidedWindows = (
	result: SweepResult,
): BeginTimesData["windows"] =>
	(Object.keys(names) as AvoidedTime[]) // the keys of the record above
		.flatMap((time) => {
			const assumed = result.assumptions.find(
				({ name }) => name === `care.avoid.${time}`,
			);
			return [...String(assumed?.value ?? "").matchAll(span)].map(
				([, fromH, fromM, toH, toM]) => ({
					label: names[time],
					startClockMin: Number(fromH) * 60 + Number(fromM),
					endClockMin: Number(toH) * 60 + Number(toM),
				}),
			);
		});
