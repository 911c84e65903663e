import type { View } from "./view.ts";

/** What is seen at the bedside, in a line or two: for a terminal, and for a reader who has it read out. */
export function viewWords(view: View): string {
	const depth = (value: number) => `${value < 0 ? "−" : ""}${Math.abs(value)}`;
	const alarms =
		view.alarms.length === 0
			? "no alarm"
			: `alarm: ${view.alarms
					.map(({ condition }) => condition.replaceAll("-", " "))
					.join(", ")}`;
	const filled =
		view.fills === 0 ? "no fill yet" : `last fill ${view.filledMl} mL`;
	return `${view.clock}  ${view.phase}, ${depth(view.depthMmHg)} of ${depth(view.setDepthMmHg)} mmHg; canister ${view.canisterMl} mL, source ${view.sourceMl} mL, ${filled}; ${alarms}. ${view.dressing}`;
}
