import type { WardScenario } from "../scenario/index.ts";
import { generalCautions } from "./cautions.ts";
import type { Caution } from "./day-result.ts";
import type { SupplyResult } from "./supply-result.ts";

/** What a reader must be told about the weeks of a ward, in sentences. */
export function supplyCautions(
	ward: WardScenario,
	result: Omit<SupplyResult, "cautions">,
): Caution[] {
	const cautions: Caution[] = [...generalCautions];
	const add = (code: string, text: string) => cautions.push({ code, text });
	const lost = result.items.filter(
		({ store }) => (store?.offHours.p90 ?? 0) > 0,
	);
	if (lost.length > 0)
		add(
			"therapy-off",
			`Running out of ${lost.map(({ item }) => item).join(", ")} leaves therapy off until the delivery in one run in ten or more: more than 2 h off in 24 h calls for a look at the dressing (common practice; local policy comes first).`,
		);
	if (ward.stores.some(({ substitute }) => substitute !== null))
		add(
			"substitutes",
			"Another size is used where one is out: check that the therapy unit takes it.",
		);
	if (ward.chance)
		add(
			"clogging-assumed",
			"How debris closes a port is assumed from end to end: the demand for suction ports rests on it, and needs a site's own count.",
		);
	if (ward.replications < 100 && ward.chance)
		add(
			"few-replications",
			`Only ${ward.replications} replications were run: chances of running out are coarse.`,
		);
	if (ward.warmUpMin === 0 && ward.arrivals !== null)
		add(
			"no-warm-up",
			"The simulation begins with the patients that the scenario lists and no warm-up: the first weeks may not be typical.",
		);
	if (
		ward.kinds.some(({ dressing }) =>
			dressing.regimens.some(({ fillMl }) => fillMl > 0),
		)
	)
		add(
			"solution-label",
			"How long an opened source may hang, and which solution may dwell in a wound, follow the solution's label, the prescription and local policy.",
		);
	if (result.orders.length > 0)
		add(
			"order-sheet",
			"The order list follows the rules on a median course of demand: look at the shelf before it is sent.",
		);
	return cautions;
}
