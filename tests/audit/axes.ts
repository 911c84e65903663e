import { type Clock, readDate } from "./clock.ts";
import type { Chart, ChartText } from "./read-html.ts";

const timeTick = /^\d\d:\d\d$/u;
const dayTick = /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2}$/u;
const dateTick = /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]+$/u;
const monthTick =
	/^(?:January|February|March|April|May|June|July|August|September|October|November|December)$/u;

/** How far a tick may lie from where its time belongs, px. */
const slackPx = 0.6;

/**
 * The time axes of a chart: ticks that stand on one height. Times must lie in even steps along it, the first within a day of
 * the start or of what is enlarged, and a date must be that of the tick it stands under. What is no tick is left for others.
 */
export function axesOf(chart: Chart, clock: Clock) {
	const isTick = ({ text }: ChartText): boolean =>
		timeTick.test(text) || dayTick.test(text);
	const isDate = ({ text }: ChartText): boolean =>
		dateTick.test(text) || monthTick.test(text);
	const ticks = chart.labels.filter(isTick);
	const faults: string[] = [];
	for (const y of new Set(ticks.map((tick) => tick.y))) {
		const row = ticks.filter((tick) => tick.y === y);
		const times = timesOf(row, clock);
		const [first, last] = [row[0], row.at(-1)];
		const [from, to] = [times[0], times.at(-1)];
		if (
			first === undefined ||
			last === undefined ||
			from === undefined ||
			to === undefined
		)
			continue;
		const perMin = row.length < 2 ? 0 : (last.x - first.x) / (to - from);
		row.forEach((tick, place) => {
			const at = first.x + ((times[place] ?? Number.NaN) - from) * perMin;
			if (!(Math.abs(at - tick.x) <= slackPx))
				faults.push(`${tick.text} at ${tick.x}, not ${at}`);
		});
		const dates = chart.labels.filter(
			(label) => dateTick.test(label.text) && Math.abs(label.y - y - 17) < 1,
		);
		const shifts = dates.map((date) => {
			const under = row.findIndex((tick) => Math.abs(tick.x - date.x) < 60);
			const day = Math.floor(
				((times[under] ?? Number.NaN) + clock.startClockMin) / 1440,
			);
			return readDate(date.text, clock) - day;
		});
		if (shifts.some((shift) => !Number.isFinite(shift) || shift !== shifts[0]))
			faults.push(`dates ${dates.map(({ text }) => text).join(", ")}`);
	}
	return {
		ticks: ticks.length,
		others: chart.labels.filter((label) => !isTick(label) && !isDate(label)),
		faults,
	};
}

/** Minutes from the start, each tick after the one before. */
function timesOf(row: readonly ChartText[], clock: Clock): number[] {
	let before = Number.NEGATIVE_INFINITY;
	return row.map(({ text }) => {
		if (dayTick.test(text)) {
			const [weekday, day] = text.split(" ");
			for (let offset = -60; offset < 400; offset++) {
				const date = new Date(
					Date.parse(`${clock.start.slice(0, 10)}T00:00:00Z`) +
						offset * 86_400_000,
				);
				const at = offset * 1440 - clock.startClockMin;
				if (
					at > before &&
					(before > -1e9 || offset > -45) &&
					date.getUTCDate() === Number(day) &&
					["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][
						date.getUTCDay()
					] === weekday
				) {
					before = at;
					return at;
				}
			}
			return Number.NaN;
		}
		const [hours = 0, minutes = 0] = text.split(":").map(Number);
		let at =
			(((hours * 60 + minutes - clock.startClockMin) % 1440) + 1440) % 1440;
		while (at <= before) at += 1440;
		before = at;
		return at;
	});
}
