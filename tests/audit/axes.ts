import { type Clock, readDate } from "./clock.ts";
import type { Chart, ChartText } from "./read-html.ts";

const timeTick = /^\d\d:\d\d$/u;
const dayTick = /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2}$/u;
const dateTick = /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]+$/u;
const monthTick = /^(?:January|February|March|April|May|June|July|August|September|October|November|December)$/u;

/** How far a tick may lie from where its time belongs, px. */
const slackPx = 0.6;

/**
 * The time axes of a chart: ticks that stand on one height. Times must lie in even steps along it, the first within a day of
 * the start or of what is enlarged, and a date must be that of the tick it stands under. What is no tick is left for others.
 */
export function axesOf(chart: Chart, clock: Clock) {
	const isTick = ({ text }: ChartText): boolean => timeTick.test(text) || dayTick.test(text);
	const isDate = ({ text }: ChartText): boolean => dateTick.test(text) || monthTick.test(text);
	const ticks = chart.labels.filter(isTick);
	const faults: string[] = [];
	for (const y of new Set(ticks.map((tick) => tick.y))) {
		const row = ticks.filter((tick) => tick.y === y);
		const times = timesOf(row, clock);
		const [first, last] = [row[0], row.at(-1)];
		const [from, to] = [times[0], times.at(-1)];
		if (first === undefined || last === undefined || from === undefined || to === undefined) continue;
		const perMin = row.length < 2 ? 0 : (last.x - first.x) / (to - from);
		row.forEach((tick, place) => {
			const at = first.x + ((times[place] ?? Number.NaN) - from) * perMin;
			if (!(Math.abs(at - tick.x) <= slackPx)) faults.push(`${tick.text} at ${tick.x}, not ${at}`);
		});
		const dates = chart.labels.filter((label) => dateTick.test(label.text) && Math.abs(label.y - y - 17) < 1);
		const shifts = dates.map((date) => {
			const under = row.findIndex((tick) => Math.abs(tick.x - date.x) < 60);
			const day = Math.floor(((times[under] ?? Number.NaN) + clock.startClockMin) / 1440);
			return readDate(date.text, clock) - day;
		});
		if (shifts.some((shift) => !Number.isFinite(shift) || shift !== shifts[0]))
			faults.push(`dates ${dates.map(({ text }) => text).join(", ")}`);
	}
	const levels = levelsOf(chart);
	faults.push(...levels.faults);
	return {
		ticks: ticks.length,
		others: chart.labels.filter((label) => !isTick(label) && !isDate(label) && !levels.read.has(label)),
		faults,
	};
}

const plainTick = /^−?\d+(?:\.\d+)?$/u;

/** Charts whose numbers at the left are a scale from below upwards, and perhaps one along their foot. */
const scaled = /^(?:efficient|response|rests-)/u;

/** Scales of numbers: each in even steps. */
function levelsOf(chart: Chart): { readonly read: ReadonlySet<ChartText>; readonly faults: readonly string[] } {
	const read = new Set<ChartText>();
	const faults: string[] = [];
	if (!scaled.test(chart.id)) return { read, faults };
	const numbers = chart.labels.filter(({ text }) => plainTick.test(text));
	const runs: ChartText[][] = [];
	for (const label of numbers) {
		const run = runs.at(-1);
		const last = run?.at(-1);
		const column = last?.x === label.x && label.y < last.y;
		const row = last?.y === label.y && label.x > last.x;
		if (run !== undefined && (column || row)) run.push(label);
		else runs.push([label]);
	}
	for (const run of runs) {
		const [first, last] = [run[0], run.at(-1)];
		if (first === undefined || last === undefined || run.length < 2) continue;
		const of = ({ text }: ChartText): number => Number(text.replace("−", "-"));
		const along = ({ x, y }: ChartText): number => (first.x === last.x ? y : x);
		const perOne = (along(last) - along(first)) / (of(last) - of(first));
		for (const label of run) {
			read.add(label);
			const at = along(first) + (of(label) - of(first)) * perOne;
			if (!(Math.abs(at - along(label)) <= slackPx)) faults.push(`${label.text} at ${along(label)}, not ${at}`);
		}
	}
	return { read, faults };
}

/** Minutes from the start, each tick after the one before. */
function timesOf(row: readonly ChartText[], clock: Clock): number[] {
	let before = Number.NEGATIVE_INFINITY;
	return row.map(({ text }) => {
		if (dayTick.test(text)) {
			const [weekday, day] = text.split(" ");
			for (let offset = -60; offset < 400; offset++) {
				const date = new Date(Date.parse(`${clock.start.slice(0, 10)}T00:00:00Z`) + offset * 86_400_000);
				const at = offset * 1440 - clock.startClockMin;
				if (
					at > before &&
					(before > -1e9 || offset > -45) &&
					date.getUTCDate() === Number(day) &&
					["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][date.getUTCDay()] === weekday
				) {
					before = at;
					return at;
				}
			}
			return Number.NaN;
		}
		const [hours = 0, minutes = 0] = text.split(":").map(Number);
		let at = (((hours * 60 + minutes - clock.startClockMin) % 1440) + 1440) % 1440;
		while (at <= before) at += 1440;
		before = at;
		return at;
	});
}
