import type { PlannedOrder, SupplyResult } from "../analysis/supply-result.ts";
import { dateAt } from "./dates.ts";
import { chanceWords } from "./supply-answers.ts";
import { wardName } from "./ward-name.ts";

const ucum = "http://unitsofmeasure.org";

/**
 * `requests.fhir.json`: a FHIR R4 Bundle of SupplyRequests, one an order, as drafts; quantities in UCUM. Dates carry no
 * time, since FHIR asks for a zone with a time and a scenario has none. Ids hold the ward, the day and the item's place, so that
 * those of two wards differ and those of a newer list are those of the older one.
 */
export function supplyBundle(result: SupplyResult): string {
	const bundle: fhir4.Bundle = {
		resourceType: "Bundle",
		type: "collection",
		entry: result.orders.map((order) => ({
			resource: request(order, result),
		})),
	};
	return `${JSON.stringify(bundle, null, 2)}\n`;
}

function request(
	order: PlannedOrder,
	{ scenario, items }: SupplyResult,
): fhir4.SupplyRequest {
	const item = items.find(({ item: name }) => name === order.item);
	const sizeMl = item?.sizeMl ?? null;
	const place = items.findIndex(({ item: name }) => name === order.item) + 1;
	const id = `${wardName(scenario)}-${dateAt(order.atMin, scenario)}-${place}`;
	const by = dateAt(order.without.byMin, scenario);
	return {
		resourceType: "SupplyRequest",
		id,
		identifier: [{ system: "https://slackwater.invalid/orders", value: id }],
		status: "draft",
		priority: "routine",
		itemCodeableConcept: { text: order.item },
		quantity: {
			value: order.packs,
			unit: "pack",
			system: ucum,
			code: "{pack}",
		},
		parameter: [
			{
				code: { text: "pieces in a pack" },
				valueQuantity: {
					value: order.packSize,
					unit: "piece",
					system: ucum,
					code: "{piece}",
				},
			},
			...(sizeMl === null
				? []
				: [
						{
							code: { text: "size of one piece" },
							valueQuantity: {
								value: sizeMl,
								unit: "mL",
								system: ucum,
								code: "mL",
							},
						},
					]),
		],
		occurrencePeriod: {
			start: dateAt(order.atMin, scenario),
			end: dateAt(order.arrivesMin, scenario),
		},
		authoredOn: dateAt(0, scenario),
		requester: { type: "Organization", display: scenario.title },
		deliverTo: { type: "Location", display: scenario.title },
		reasonCode: [
			{
				text: `The chance of running out by ${by} is ${chanceWords(order.without.probability, scenario)} without it, ${chanceWords(order.with.probability, scenario)} with it (simulated, for planning only)`,
			},
		],
	};
}
