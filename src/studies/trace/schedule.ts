import type { Schedule } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { isPlanned } from "../../vocabulary/index.ts";
import { traceDay } from "./trace-day.ts";

/**
 * The undisturbed day of every dressing: what the regimens ask for, with what is planned and at rounds, and nothing
 * else. Nothing fails, exudate comes at its mean rate, and what a piece of care takes (but for a dressing change) takes
 * no time, so that a canister or a bag that has to be changed moves no fill.
 */
export function schedulesOf(scenario: Scenario): Schedule[] {
	const undisturbed: Scenario = {
		...scenario,
		chance: false,
		replications: 1,
		happenings: scenario.happenings.filter(({ what }) => isPlanned(what)),
		care: { ...scenario.care, nurses: null, response: { ...scenario.care.response, dayMin: 0, nightMin: 0 } },
		constants: {
			...scenario.constants,
			"hands.canister": 0,
			"hands.source": 0,
			"hands.kink": 0,
			"hands.port": 0,
			"hands.patch": 0,
			"hands.round": 0,
			"port.pumpOff": 0,
		},
	};
	return traceDay(undisturbed).dressings.map(
		({ phases, pauses, alarms, canisterChanges, sourceChanges, dressingChanges, takeovers }) => ({
			phases,
			pauses: pauses.filter(({ startMin, endMin }) => endMin > startMin),
			alarms: alarms.filter(({ startMin, endMin }) => endMin > startMin),
			canisterChanges,
			sourceChanges,
			dressingChanges,
			takeovers,
		}),
	);
}
