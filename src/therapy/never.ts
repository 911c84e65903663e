/** Stands where a time would, for something that has not begun: every time of a day is 0 or later. */
export const never = -1;
