/** Minutes of a day, and of a week. */
export const minutesADay = 1440;
export const minutesAWeek = 7 * minutesADay;

/** As a file writes them; 0 is Monday. */
export const weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
