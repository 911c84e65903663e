import type { Caution, RuleResult, SupplyResult } from "../../results/index.ts";
import type { WardScenario } from "../../scenario/index.ts";
import { generalCautions, solutionLabel } from "../kit/cautions.ts";

/** What a reader must be told about the weeks of a ward, in sentences. */
export function supplyCautions(ward: WardScenario, result: Omit<SupplyResult, "cautions">): Caution[] {
	const cautions: Caution[] = [...generalCautions];
	const add = (code: string, text: string) => cautions.push({ code, text });
	const lost = result.items.filter(({ store }) => (store?.offHours.p90 ?? 0) > 0);
	if (lost.length > 0)
		add(
			"therapy-off",
			`Running out of ${lost.map(({ item }) => item).join(", ")} leaves therapy off until the delivery in one run in ten or more: more than 2 h off in 24 h calls for a look at the dressing (common practice; local policy comes first).`,
		);
	const missed = result.items.flatMap(({ item, store }) =>
		store !== null && store.rule.reached.mean < store.rule.service ? [`${item} ${share(store.rule)}`] : [],
	);
	if (missed.length > 0)
		add(
			"service-missed",
			`The order rules reach less than what was asked for: ${missed.join("; ")}. Where the interval holds what was asked for, chance may have done it: more replications, or a reorder point from the upper end of its interval, make sure.`,
		);
	const fell = result.items.flatMap(({ item, store }) =>
		store !== null && store.ready.mean < store.rule.service
			? [`${item} ${percent(store.ready.mean)} instead of ${percent(store.rule.service)}`]
			: [],
	);
	if (fell.length > 0)
		add(
			"service-missed-in-run",
			`From today's stock on, there is a piece on the shelf for less of the time than was asked for: ${fell.join("; ")}. Each rule is sought for a shelf of its own, in the long run: a low stock to begin with, and what another size lends, come on top.`,
		);
	if (result.items.some(({ store }) => store?.rule.origin === "found" && !store.rule.reached.onOtherHalf))
		add(
			"rules-unchecked",
			"With so few replications the reorder points are judged on the very ones that they were sought in, which flatters them: take ten or more.",
		);
	if (ward.stores.some(({ substitute }) => substitute !== null))
		add("substitutes", "Another size is used where one is out: check that the therapy unit takes it.");
	if (ward.chance)
		add(
			"clogging-assumed",
			"How debris closes a port is assumed from end to end: the demand for suction ports rests on it, and needs a site's own count.",
		);
	if (ward.replications < 100 && ward.chance)
		add("few-replications", `Only ${ward.replications} replications were run: chances of running out are coarse.`);
	if (ward.warmUpMin === 0 && ward.arrivals !== null)
		add(
			"no-warm-up",
			"The simulation begins with the patients that the scenario lists and no warm-up: the first weeks may not be typical.",
		);
	cautions.push(...solutionLabel(ward.kinds.map(({ dressing }) => dressing)));
	if (result.orders.length > 0)
		add(
			"order-sheet",
			"Each line of the order list supposes that use up to its order day was the median one: look at the shelf before it is sent, and make the later lines anew.",
		);
	return cautions;
}

const percent = (value: number): string => `${Number((value * 100).toFixed(2))} %`;

/** '97.1 % (96.2 to 98.0 %) instead of 98 %'. */
function share({ reached, service }: RuleResult): string {
	const { mean, low95, high95 } = reached;
	const interval =
		low95 === null || high95 === null ? "" : ` (${Number((low95 * 100).toFixed(2))} to ${percent(high95)})`;
	return `${percent(mean)}${interval} instead of ${percent(service)}`;
}
