import { describe, expect, test } from "vitest";
import { dayTables } from "../../src/report/index.ts";
import { dayResult } from "../charts/fixture.ts";
import { records } from "../oracles/comma-separated.ts";

// RFC 4180, section 2, rules 1 to 7 (quoted; erratum 5714, no blank after a closing quote, was read).

const assumption = (name: string, unit: string, meaning: string) =>
	({ name, value: 1, unit, provenance: "assumed", source: "", meaning, defaulted: true }) as const;

/** A day whose free text is as awkward as the RFC's examples, and worse. */
const awkward = () => ({
	...dayResult([{ id: "b\r\nbb", canisterChangesMin: [700] }, { id: 'b"bb' }]),
	assumptions: [
		assumption("aaa", "b\r\nbb", "ccc"),
		assumption("aaa", 'b"bb', "ccc"),
		assumption("a,b", '"', '""\n,'),
		assumption(" =1+2", "", "trailing blank "),
	],
});

describe("the tables are RFC 4180", () => {
	const tables = dayTables(awkward());

	test("rule 6: a field with a line break stands in quotes", () => {
		// "aaa","b CRLF bb","ccc"
		expect(tables["assumptions.csv"]).toContain('aaa,1,"b\r\nbb",assumed,');
		expect(tables["phases.csv"]).toContain('\r\n"b\r\nbb",phase,');
	});

	test("rule 7: a quote within a field is doubled", () => {
		// "aaa","b""bb","ccc"
		expect(tables["assumptions.csv"]).toContain('aaa,1,"b""bb",assumed,');
		expect(tables["phases.csv"]).toContain('\r\n"b""bb",phase,');
	});

	test("a strict reader gets back what was written, with as many fields in every record", () => {
		for (const [name, text] of Object.entries(tables)) {
			const rows = records(text);
			expect(rows.length, name).toBeGreaterThan(0);
			expect(new Set(rows.map((row) => row.length)).size, name).toBe(1);
		}
		expect(
			records(tables["assumptions.csv"])
				.slice(1)
				.map((row) => [row[0], row[2], row[5]]),
		).toEqual([
			["aaa", "b\r\nbb", "ccc"],
			["aaa", 'b"bb', "ccc"],
			["a,b", '"', '""\n,'],
			["' =1+2", "", "trailing blank "],
		]);
	});
});
