import ICAL from "ical.js";
import Papa from "papaparse";

/** The rows of a CSV file, its head first. */
export const readCsv = (text: string): string[][] => Papa.parse<string[]>(text.trimEnd(), { delimiter: "," }).data;

/** An entry of a calendar as a reader's calendar shows it; times local, as they are written. */
export interface CalendarEvent {
	readonly uid: string;
	readonly summary: string;
	readonly description: string;
	readonly start: string;
	readonly end: string;
	readonly category: string;
}

export const readCalendar = (text: string): CalendarEvent[] =>
	new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((event) => {
		const of = (name: string): string => String(event.getFirstPropertyValue(name) ?? "");
		return {
			uid: of("uid"),
			summary: of("summary"),
			description: of("description"),
			start: of("dtstart"),
			end: of("dtend"),
			category: of("categories"),
		};
	});
