import type { Regimen } from "../../scenario/index.ts";

const short = (minutes: number): string =>
	minutes >= 60 ? `${Math.round((minutes / 60) * 100) / 100} h` : `${Math.round(minutes * 10) / 10} min`;

/** A regimen in one line: `−125 mmHg, 50 mL for 5 min every 2 h`. */
export function regimenLine(regimen: Regimen): string {
	const depth = `−${Math.round(regimen.depthMmHg)} mmHg`;
	if (regimen.fillMl === 0) return `${depth}, suction alone`;
	return `${depth}, ${Math.round(regimen.fillMl)} mL for ${short(regimen.dwellMin)} after every ${short(regimen.suctionMin)} of suction`;
}
