/** Words of older files, each with what to write instead. */

/** Three named steps of a drawdown. */
export const namedDrawdowns: { readonly [step: string]: string } = { gentle: "5 %", standard: "15 %", brisk: "50 %" };

/** Constants that are gone. */
export const goneConstants: { readonly [name: string]: string } = Object.fromEntries(
	Object.entries(namedDrawdowns).map(([step, written]) => [
		`pump.${step}`,
		`drawdown: ${written} in the regimen, or pump.drawdown for those that give none`,
	]),
);
