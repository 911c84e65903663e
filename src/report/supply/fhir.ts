import type { PlannedOrder, SupplyResult } from "../../results/index.ts";
import { dateAt, wardName } from "../../words/index.ts";
import { chanceWords } from "./supply-words.ts";

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
		entry: result.orders.map((order) => ({ resource: request(order, result) })),
	};
	return `${JSON.stringify(bundle, null, 2)}\n`;
}

const quantity = (value: number, unit: string, code: string): fhir4.Quantity => ({ value, unit, system: ucum, code });

const parameter = (text: string, valueQuantity: fhir4.Quantity): fhir4.SupplyRequestParameter => ({
	code: { text },
	valueQuantity,
});

function request(order: PlannedOrder, { scenario, items }: SupplyResult): fhir4.SupplyRequest {
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
		quantity: quantity(order.packs, "pack", "{pack}"),
		parameter: [
			parameter("pieces in a pack", quantity(order.packSize, "piece", "{piece}")),
			...(sizeMl === null ? [] : [parameter("size of one piece", quantity(sizeMl, "mL", "mL"))]),
		],
		occurrencePeriod: { start: dateAt(order.atMin, scenario), end: dateAt(order.arrivesMin, scenario) },
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
