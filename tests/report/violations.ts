import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { JSDOM } from "jsdom";

const axe = readFileSync(
	createRequire(import.meta.url).resolve("axe-core/axe.min.js"),
	"utf8",
);

/** What axe-core holds against a page; colours and layout it can only judge in a real browser. */
export async function violations(html: string): Promise<string[]> {
	const { window } = new JSDOM(html, { runScripts: "outside-only" });
	window.eval(axe);
	// eval gives no type: this is the shape of axe-core's results.
	const found = (await window.eval(
		"axe.run(document, { rules: { 'color-contrast': { enabled: false } } })",
	)) as { violations: { id: string; nodes: { html: string }[] }[] };
	return found.violations.map(
		(violation) => `${violation.id}: ${violation.nodes[0]?.html}`,
	);
}
