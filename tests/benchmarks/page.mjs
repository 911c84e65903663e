// Prints how the workbench moves while a slider is dragged, in a real Chromium; nothing is tested here. Run with `npm run bench:page`.
// Wall time counts whatever else the machine does; processor time counts the page alone.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs22.x"; // the package unpacks its own libraries where the system lacks them
const { default: chromium } = await import("@sparticuz/chromium");
const { chromium: driver } = await import("playwright-core");
const { run } = await import("../../dist/cli/program.js");

const moves = 100;
const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
const file = join(folder, "workbench.html");
await run(["page", "--out", file, "--quiet"]);
const browser = await driver.launch({
	executablePath: await chromium.executablePath(),
	headless: true,
	args: [...chromium.args, "--no-sandbox", "--disable-gpu"],
});
const page = await (await browser.newContext({ offline: true })).newPage();
await page.setViewportSize({ width: 1440, height: 900 });
await page.goto(pathToFileURL(file).href);
await page.waitForFunction(() => document.body.dataset.settled === "yes");
const traced = join(folder, "trace.json");
await browser.startTracing(page, { path: traced, categories: ["toplevel"] });

/** Moves the slider, waits until line and answers are drawn anew, and moves on. */
const waits = await page.evaluate(async (count) => {
	const input = document.querySelector("#turn-dwell");
	const drawn = (selector) =>
		new Promise((resolve) => {
			const watch = new MutationObserver(() => {
				watch.disconnect();
				resolve();
			});
			watch.observe(document.querySelector(selector), { childList: true });
		});
	const all = [];
	for (let i = 0; i < count; i++) {
		const began = performance.now();
		// Drawn is what the projection says: the answers come from all replications.
		const seen = Promise.all([drawn(".line .chart"), drawn(".sentences")]);
		input.value = String(2 + (i % 40) / 2);
		input.dispatchEvent(new Event("input"));
		await seen;
		all.push(performance.now() - began);
		await new Promise((resume) => setTimeout(resume, 30));
	}
	return all;
}, moves);
await browser.stopTracing();
await browser.close();

const { traceEvents } = JSON.parse(readFileSync(traced, "utf8"));
rmSync(folder, { recursive: true });
const names = new Map(
	traceEvents
		.filter(({ name }) => name === "thread_name")
		.map(({ pid, tid, args }) => [`${pid}:${tid}`, args.name]),
);
const tasksOf = (thread) =>
	traceEvents.filter(
		({ ph, name, pid, tid }) =>
			ph === "X" &&
			name.endsWith("RunTask") &&
			!name.startsWith("Run") &&
			thread.test(names.get(`${pid}:${tid}`) ?? ""),
	);
const quantile = (values, share) =>
	values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))];
const say = (what, values) =>
	console.log(
		`${what}: median ${quantile(values, 0.5).toFixed(1)} ms, 95th percentile ${quantile(values, 0.95).toFixed(1)} ms, most ${quantile(values, 1).toFixed(1)} ms`,
	);

console.log(
	`${cpus()[0].model}, ${cpus().length} cores; ${moves} moves of a slider, 400 replications each`,
);
say("move to picture, wall time", waits);
const main = tasksOf(/InProcRenderer|CrRendererMain/);
const cpu = main.map(({ tdur = 0 }) => tdur / 1000);
say(
	"task of the page, processor time",
	cpu.filter((ms) => ms > 1),
);
const wall = main.map(({ dur }) => dur / 1000);
console.log(
	`tasks of the page over 50 ms: ${cpu.filter((ms) => ms > 50).length} by processor time, ${wall.filter((ms) => ms > 50).length} by wall time, of ${main.length}`,
);
const worker = tasksOf(/DedicatedWorker/).reduce(
	(sum, { tdur = 0 }) => sum + tdur / 1000,
	0,
);
console.log(
	`worker, processor time a move: ${(worker / moves).toFixed(1)} ms; page: ${(cpu.reduce((a, b) => a + b, 0) / moves).toFixed(1)} ms`,
);
process.exit(0);
