import type { PaperPage, Printed } from "./paper.ts";

/** What a day's report is asked for on paper. */
export interface Day {
	readonly start: string;
	readonly horizonMin: number;
	readonly dressings: readonly { readonly id: string }[];
}

const minutesADay = 1440;
/** A chart of a whole day narrower than this is not read, pt: 15 cm. */
const leastChartPt = (150 / 25.4) * 72;

/** What is wrong with the hand-over sheets of a day: each dressing has one page for each 24 h, with its chart and signature lines. */
export function sheetFaults(pages: readonly PaperPage[], day: Day): string[] {
	const faults: string[] = [];
	const days = Math.ceil(day.horizonMin / minutesADay);
	const sheets = pages
		.map((page, index) => ({ page, number: index + 1 }))
		.filter(({ page }) => page.words.includes("Handed over by"));
	const wanted = days * day.dressings.length;
	if (sheets.length !== wanted) faults.push(`${sheets.length} pages have signature lines, not ${wanted}`);
	for (const [index, { page, number }] of sheets.entries()) {
		const has = (words: string): boolean => page.words.replaceAll("\n", " ").includes(words);
		for (const words of ["vented", "On the clock", "Water line"])
			if (!has(words))
				faults.push(`page ${number} has signature lines without "${words}": ${page.texts.length} pieces of text`);
		const { id } = day.dressings[Math.floor(index / days)] ?? { id: "" };
		if (!has(id)) faults.push(`page ${number} is not of dressing ${id}`);
		const fromMin = (index % days) * minutesADay;
		const spanMin = Math.min(minutesADay, day.horizonMin - fromMin);
		faults.push(...axisFaults(page, day.start, fromMin, spanMin).map((fault) => `page ${number}: ${fault}`));
	}
	return faults;
}

const clockMin = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));

/** The axis of the water line is that of its own stretch of time, and wide enough. */
function axisFaults({ texts }: PaperPage, start: string, fromMin: number, spanMin: number): string[] {
	const rows = new Map<number, Printed[]>();
	for (const one of texts) {
		if (!/^\d\d:\d\d$/u.test(one.text)) continue;
		const row = Math.round(one.bottom);
		rows.set(row, [...(rows.get(row) ?? []), one]);
	}
	const axes = [...rows.values()]
		.filter((row) => row.length > 3)
		.map((row) => row.sort((a, b) => a.left - b.left))
		.map((row) => {
			const times: number[] = [];
			for (const { text } of row) {
				let at = clockMin(text);
				while (at < (times.at(-1) ?? 0)) at += minutesADay;
				times.push(at);
			}
			const [first, last] = [row[0], row.at(-1)];
			const minutes = (times.at(-1) ?? 0) - (times[0] ?? 0);
			const wide = (last?.left ?? 0) - (first?.left ?? 0);
			return { minutes, wide, from: times[0] ?? 0 };
		})
		.filter(({ minutes }) => minutes > 0 && minutes >= spanMin * 0.5);
	// Of a stretch as short as a cycle the lens may look at as much as the chart.
	const [axis] = axes;
	if (axis === undefined) return [`no axis of ${spanMin} min is on the sheet of minute ${fromMin}`];
	const faults: string[] = [];
	const startMin = (clockMin(start.slice(11)) + fromMin) % minutesADay;
	const late = (axis.from - startMin + minutesADay) % minutesADay;
	if (late > Math.min(180, spanMin * 0.5))
		faults.push(`the axis begins ${late} min after the sheet does, which is at minute ${fromMin}`);
	const chartPt = (axis.wide / axis.minutes) * spanMin;
	if (chartPt < leastChartPt) faults.push(`the chart is ${chartPt.toFixed(0)} pt wide`);
	return faults;
}
