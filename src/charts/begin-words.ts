import type { BeginTimesData, BeginTimesRow } from "./begin-times.ts";
import { clockWords } from "./clock-round.ts";
import { percentWords } from "./probability.ts";
import { counted } from "./quantity.ts";

const mostNamed = 12;

/** Title, how to read, and what a reader would see in the rows. */
export function beginTimesWords(data: BeginTimesData): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const more =
		data.rows.length > mostNamed
			? ` And ${data.rows.length - mostNamed} more.`
			: "";
	const clear =
		data.windows.length === 0
			? ""
			: ` To be kept clear: ${data.windows.map((window) => `${window.label} ${clockWords(window.startClockMin)} to ${clockWords(window.endClockMin)}`).join(", ")}.`;
	return {
		title: data.title,
		legend:
			"One row for each time at which the day could begin; its first 24 h on the clock.",
		description:
			data.rows.length === 0
				? "No time was tried."
				: `${counted(data.rows.length, "time")} tried.${clear} ${data.rows.slice(0, mostNamed).map(rowWords).join(" ")}${more}`,
	};
}

function rowWords(row: BeginTimesRow): string {
	const at = (atMin: number): string => clockWords(row.startClockMin + atMin);
	const [change] = row.canisterChanges;
	const canister =
		change === undefined || change.p10Min >= 1440
			? "no canister change"
			: `first canister change between ${at(change.p10Min)} and ${at(change.p90Min)}`;
	const highest = row.alarmBins
		.slice(0, 48)
		.reduce((most, chance) => Math.max(most, chance), 0);
	const place = row.alarmBins.indexOf(highest);
	const alarms =
		highest > 0
			? `alarms likeliest from ${at(place * 30)}, ${percentWords(highest)} in a half-hour`
			: "no alarm";
	const name = row.current === true ? "(current) " : "";
	const note =
		row.note === undefined || row.note === "" ? "" : ` (${row.note})`;
	return `${name}Begin ${clockWords(row.startClockMin)}${note}: ${canister}; ${alarms}.`;
}
