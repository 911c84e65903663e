import { alarmEvents, careEvents } from "./chart-events.ts";
import { clockTime } from "./clock.ts";
import { dayBetween } from "./day-between.ts";
import { counted, numberWord, volumeWords } from "./quantity.ts";
import { regimenWords } from "./regimen-words.ts";
import { drawnSpan, type WaterLineData } from "./water-line-chart.ts";

const mostNamed = 8;

/** Title and text alternative of a water-line chart: what a reader would see in it. */
export function waterLineWords(data: WaterLineData): {
	readonly title: string;
	readonly description: string;
} {
	const { clock } = data;
	const { fromMin, toMin, isPart } = drawnSpan(data);
	const day = isPart ? dayBetween(data.day, fromMin, toMin) : data.day;
	// The one in force when the stretch begins: a later one may have waited for the running cycle.
	const takeover = data.day.takeovers.findLast(({ atMin }) => atMin <= fromMin);
	const first = data.dressing.regimens[takeover?.regimen ?? 0];
	const named = (
		events: ReturnType<typeof alarmEvents>,
		kind: string,
	): string => {
		if (events.length === 0) return `No ${kind}.`;
		const list = events
			.slice(0, mostNamed)
			.map((event) => `${clockTime(event.startMin, clock)} ${event.label}`);
		const more =
			events.length > mostNamed
				? ` and ${numberWord(events.length - mostNamed)} more`
				: "";
		return `${kind[0]?.toUpperCase()}${kind.slice(1)}: ${list.join("; ")}${more}.`;
	};
	const sentences = [
		`From ${clockTime(fromMin, clock)} to ${clockTime(toMin, clock)}.`,
		first === undefined ? "" : `${regimenWords(first)}.`,
		isPart
			? `${counted(day.phases.filter((phase) => phase.phase === "fill" && phase.startMin >= fromMin).length, "fill")} in this time.`
			: `${counted(day.totals.fills, "fill")}, ${volumeWords(day.totals.instilledMl)} of solution in, ${volumeWords(day.totals.toCanisterMl)} to the canister.`,
		named(alarmEvents(day), "alarms"),
		named(careEvents(day), "care"),
	];
	return {
		title: `Water line: ${data.title}`,
		description: sentences.filter((sentence) => sentence !== "").join(" "),
	};
}

/** How to read the chart, in a line. */
export function waterLineLegend(
	data: Pick<WaterLineData, "replications" | "projection">,
): string {
	const band =
		data.replications > 1 && data.projection !== undefined
			? " Pale band: where 8 days in 10 keep."
			: "";
	return `Liquid stands above the line, hatched suction hangs below it. Shaded: night shift.${band}`;
}
