import type { Regimen } from "../../src/scenario/index.ts";

/** A regimen in one line: `−125 mmHg, 50 mL for 5 min, suction 2 h, drawdown 15 %, beginning in suction`. */
export function describeRegimen(regimen: Regimen): string {
	const depth = `−${short(regimen.depthMmHg)} mmHg`;
	const drawdown = `drawdown ${short(regimen.drawdown * 100)} %`;
	if (regimen.fillMl === 0) return `${depth}, suction alone, ${drawdown}`;
	const fill = `${short(regimen.fillMl)} mL${regimen.fillSuggested ? " (suggested)" : ""} for ${time(regimen.dwellMin)}`;
	return `${depth}, ${fill}, suction ${time(regimen.suctionMin)}, ${drawdown}, beginning in ${regimen.begin}`;
}

const short = (value: number) => String(Number(value.toFixed(1)));

/** Hours where they come out short, else minutes. */
const time = (minutes: number) =>
	minutes >= 60 && Number.isInteger(minutes / 6) ? `${minutes / 60} h` : `${short(minutes)} min`;
