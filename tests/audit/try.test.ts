import { test } from "vitest";
import { checkScenario, sentence } from "../../src/scenario/index.ts";
import * as audit from "./audit.ts";
import { samplesOf } from "./scenarios.ts";

test("x", async () => {
	const n = Number(process.env.N ?? 20);
	const kind = (process.env.KIND ?? "day") as "day";
	const s = samplesOf(
		kind,
		n,
		Number(process.env.SEED ?? 1),
		kind === "day" ? 72 : 24,
	);
	const run = {
		day: audit.auditDay,
		compare: (audit as any).auditComparison,
		sweep: (audit as any).auditSweep,
		ward: (audit as any).auditWard,
	}[kind as string];
	let bad = 0;
	let time = 0;
	const seen = new Map<string, number>();
	for (const x of s) {
		if (kind !== ("ward" as any)) {
			const c = checkScenario(x.text);
			if (c.scenario === null) {
				bad++;
				if (bad < 6) console.log(c.problems.map(sentence).join("\n"));
				continue;
			}
		}
		const a = performance.now();
		const f = run(
			x.text,
			...(kind === ("sweep" as any)
				? [
						(
							Object.keys(
								(await import("yaml")).parse(x.text).sweep,
							) as string[]
						).filter((_, i) => x.number % 2 === 0 && i === 0)[0] ?? null,
					]
				: []),
		);
		time += performance.now() - a;
		for (const one of f) {
			const key =
				one.document +
				one.derived.slice(0, 25) +
				" §§ " +
				one.said
					.replace(/[\d.]+/g, "#")
					.replace(/(Mon|Tue|Wed|Thu|Fri|Sat|Sun)( # [A-Z][a-z]+)?/g, "DAY")
					.slice(0, 24);
			seen.set(key, (seen.get(key) ?? 0) + 1);
			if (seen.get(key) === 1)
				console.log(
					`#${x.number} ${one.document} ${one.where}\n   SAID ${one.said.slice(0, 260)}\n   DER  ${one.derived.slice(0, 260)}`,
				);
		}
	}
	console.log("unsound", bad, "ms", Math.round(time), [...seen].length);
});
