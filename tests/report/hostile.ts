import type { DayResult } from "../../src/results/index.ts";
import { dayResult } from "../charts/fixture.ts";

const markup = `</script></style><img src=x onerror=alert(1)> ]]> "&' `;

/** Markup, an end of CDATA, quotes, and characters that XML 1.0 forbids. */
export const hostileText = `${markup}\u0000\u0008\uD800`;

/** The same as a file may hold it. */
export const readableText = `${markup}\uFFFD\uFFFD\uFFFD`;

/** A result whose every free text is hostile to something that reads it. */
export function hostileResult(): DayResult {
	const result = dayResult([{ id: hostileText, canisterChangesMin: [700] }, { id: "=1+2" }], {
		title: hostileText,
		seed: "@SUM(A1)",
		solution: "+saline",
	});
	return {
		...result,
		scenario: { ...result.scenario, supplies: [{ item: "-2+3", p50: 1, p90: 2, packSize: 4, packs: 1 }] },
		cautions: [{ code: "free-text", text: hostileText, dressing: hostileText }],
		assumptions: [
			{
				name: "=cmd",
				value: "\t=1",
				unit: "\r",
				provenance: "assumed",
				source: " =HYPERLINK(1)",
				meaning: "-",
				defaulted: true,
			},
			{
				name: "turn.held",
				value: -0.25,
				unit: "",
				provenance: "assumed",
				source: hostileText,
				meaning: hostileText,
				defaulted: false,
			},
		],
	};
}
