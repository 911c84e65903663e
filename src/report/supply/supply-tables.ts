import type { CountSpread, SupplyResult } from "../../results/index.ts";
import { assumptionColumns } from "../kit/closing-chapter.ts";
import { csvTable } from "../kit/csv-table.ts";
import { bedsCsv, stockCsv } from "./band-sections.ts";
import { costColumns, costRows } from "./cost-sections.ts";
import { demandCsv } from "./demand-section.ts";
import { orderColumns } from "./order-list.ts";
import { ruleColumns, stockedItems } from "./rules-section.ts";
import { filedSpread } from "./supply-words.ts";

/** One table a file, RFC 4180 with CRLF, by file name. Pieces are whole, money is to the cent, all else to six digits; days and weeks count from 1. */
export function supplyTables(result: SupplyResult): { readonly [fileName: string]: string } {
	const { cost, orders, policies, scenario } = result;
	return {
		"demand-by-day.csv": demandCsv(result, "days"),
		"demand-by-week.csv": demandCsv(result, "weeks"),
		"stock.csv": stockCsv(result),
		"orders.csv": csvTable(orderColumns(scenario), orders),
		"rules.csv": csvTable(ruleColumns, stockedItems(result)),
		"cost.csv": csvTable(costColumns(cost ?? { currency: "", asOf: "" }), cost === null ? [] : costRows(cost)),
		"policies.csv": csvTable(
			["policy", "item", ...filedSpread<{ readonly used: CountSpread }>(({ used }) => used)],
			policies.flatMap(({ name, items }) => items.map((row) => ({ policy: name, ...row }))),
		),
		"beds.csv": bedsCsv(result),
		"supply-assumptions.csv": csvTable(assumptionColumns, result.assumptions),
	};
}
