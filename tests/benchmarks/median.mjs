/** The middle one of an odd number of values. */
export const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];
