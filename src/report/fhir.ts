import type { PlannedOrder, SupplyResult } from "../analysis/supply-result.ts";
import { dateAt } from "./dates.ts";

const ucum = "http://unitsofmeasure.org";

/**
 * `requests.fhir.json`: a FHIR R4 Bundle of SupplyRequests, one an order, as drafts; quantities in UCUM. Dates carry no
 * time, since FHIR asks for a zone with a time and a scenario has none.
 */
export function supplyBundle(result: SupplyResult): string {
	const bundle: fhir4.Bundle = {
		resourceType: "Bundle",
		type: "collection",
		entry: result.orders.map((order, i) => ({
			resource: request(order, i + 1, result),
		})),
	};
	return `${JSON.stringify(bundle, null, 2)}\n`;
}

function request(
	order: PlannedOrder,
	number: number,
	{ scenario, items }: SupplyResult,
): fhir4.SupplyRequest {
	const item = items.find(({ item: name }) => name === order.item);
	const sizeMl = item?.sizeMl ?? null;
	return {
		resourceType: "SupplyRequest",
		id: `order-${number}`,
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
		reasonCode: [
			{
				text: `Without it a chance of ${Math.round(order.without.probability * 100)} % of running out by ${dateAt(order.without.byMin, scenario)} (simulated, for planning only)`,
			},
		],
	};
}
