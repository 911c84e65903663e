import type { Fault } from "./check.ts";
import type { Clock } from "./clock.ts";
import { isSaidBy, type Said, shown } from "./pattern.ts";
import type { CalendarEvent } from "./read-files.ts";

/** What a cell of a CSV file holds: a number at full precision, a text, true or false, or nothing. */
export type Cell = string | number | boolean | null | Amount;

/** Money: right to the cent, and without digits that come from reckoning alone. */
interface Amount {
	readonly amount: number;
}

/** A CSV file as it was derived: its head and its rows. */
export interface CsvSaid {
	readonly head: readonly string[];
	readonly rows: readonly (readonly Cell[])[];
}

/** Text that a spreadsheet might take for a formula has an apostrophe before it. */
const guarded = (text: string): string => (/^\s*[=+\-@＝＋－＠]/u.test(text) ? `'${text}` : text);

function cellRight(written: string, said: Cell): boolean {
	if (said === null) return written === "";
	if (typeof said === "object")
		return (
			written !== "" &&
			Math.abs(Number(written) - said.amount) <= 0.005 + 1e-9 * said.amount &&
			written.replace(/\D/gu, "").replace(/^0+/u, "").length <= 12
		);
	if (typeof said === "number")
		// Six figures say as much as any number of replications supports.
		return written !== "" && Math.abs(Number(written) - said) <= 5e-6 * Math.abs(said);
	return written === guarded(String(said));
}

/** Every row and cell of a file against what was derived. */
export function checkCsv(document: string, written: readonly (readonly string[])[], { head, rows }: CsvSaid): Fault[] {
	const faults: Fault[] = [];
	const fault = (where: string, said: string, derived: string) => faults.push({ document, where, said, derived });
	const [first = [], ...body] = written;
	if (first.join() !== head.join()) fault("head", first.join(), head.join());
	if (body.length !== rows.length) fault("rows", String(body.length), String(rows.length));
	for (const [at, row] of rows.entries()) {
		const cells = body[at] ?? [];
		for (const [place, said] of row.entries())
			if (!cellRight(cells[place] ?? "", said))
				fault(
					`row ${at + 1}, ${head[place] ?? place}`,
					cells[place] ?? "nothing",
					typeof said === "object" && said !== null ? `${said.amount} to the cent` : String(said),
				);
	}
	return faults;
}

/** The wall clock at a minute from the start, to the whole minute: '2026-03-05T14:00:00'. */
export function wallClock(start: string, atMin: number): string {
	const at = Date.parse(`${start}:00Z`) + Math.round(atMin) * 60_000;
	return new Date(at).toISOString().slice(0, 19);
}

/** The day alone. */
export const wallDate = (start: string, atMin: number): string => wallClock(start, atMin).slice(0, 10);

/** An entry as it was derived; its description is a sentence to be read. */
export interface EventSaid extends Omit<CalendarEvent, "uid" | "description"> {
	readonly description: Said;
}

/** Entries of a calendar, in whatever order; no two may have one name. */
export function checkCalendar(
	document: string,
	written: readonly CalendarEvent[],
	said: readonly EventSaid[],
	clock: Clock,
): Fault[] {
	const line = (event: Omit<CalendarEvent, "uid" | "description">): string =>
		[event.category, event.summary, event.start, event.end].join(" | ");
	const left = [...said];
	const faults: Fault[] = [];
	for (const event of written) {
		const at = left.findIndex(
			(one) => line(one) === line(event) && isSaidBy(event.description, one.description, clock),
		);
		if (at === -1)
			faults.push({
				document,
				where: event.uid,
				said: `${line(event)} | ${event.description}`,
				derived:
					left
						.filter(({ summary }) => summary === event.summary)
						.map((one) => `${line(one)} | ${shown([one.description])}`)[0] ?? "no such entry",
			});
		else left.splice(at, 1);
	}
	for (const one of left)
		faults.push({ document, where: "nowhere", said: "nothing", derived: `${line(one)} | ${shown([one.description])}` });
	const names = written.map(({ uid }) => uid);
	for (const uid of new Set(names))
		if (names.indexOf(uid) !== names.lastIndexOf(uid))
			faults.push({ document, where: uid, said: "the name of two entries", derived: "a name of its own" });
	return faults;
}
