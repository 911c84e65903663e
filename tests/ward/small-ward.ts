import { stringify } from "yaml";
import { leastWard } from "./sample.ts";

/** A ward of two beds that lacks things, quick to run: one week, 50 replications in ten blocks. */
export function smallWard(): string {
	const raw = leastWard();
	raw.title = "Small ward; Übergabe, “früh”";
	raw.chance = "on";
	raw.horizon = "7 d";
	raw.replications = 50;
	raw.ward.units = 2;
	raw.ward.beds = [];
	raw.ward.arrivals = { rate: "0.6 /d", weekdays: { sun: 0.2 } };
	raw.ward.length = { median: "3 d", spread: 0.5 };
	raw.ward.warmUp = "2 d";
	raw.ward.kinds[0].regimen = { depth: "-125 mmHg", fill: "50 mL", dwell: "10 min", suction: "8 h" };
	raw.solution = { name: "saline" };
	raw.stores = [
		{ item: "canister", size: "1000 mL", stock: 4, pack: 2, price: 38, weight: "400 g", substitute: "500 mL" },
		{ item: "canister", size: "500 mL", stock: 2, pack: 2, price: 30 },
		{ item: "solution", size: "1000 mL", stock: 9, pack: 3, price: 2.9, shelf: "20 d", orderDays: ["mon", "thu"] },
		{ item: "kit", stock: 4, pack: 2, price: 64, lead: "3 d", leadSpread: 0.4, reorder: 2, upTo: 6 },
		{ item: "port", stock: 2, price: 19, review: "7 d" },
		{ item: "line", stock: 5, pack: 5, price: 7 },
	];
	raw.prices = { currency: "EUR", asOf: "2026-01" };
	raw.compare = { long: { dwell: "15 min", suction: "12 h" }, "small canisters": { canister: "500 mL" } };
	return stringify(raw);
}
