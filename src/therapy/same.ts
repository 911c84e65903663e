/** Volumes that should be equal are equal within this, mL. */
export const same = 1e-9;
