// How the workbench moves while a slider is dragged, in a real Chromium; nothing is tested here. Run with `npm run bench:page`.
// Wall time counts whatever else the machine does; processor time counts the page alone.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** A browser, or null where none starts, which is told. */
async function launched(tell) {
	try {
		process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs22.x"; // the package unpacks its own libraries where the system lacks them
		const { default: chromium } = await import("@sparticuz/chromium");
		const { chromium: driver } = await import("playwright-core");
		return await driver.launch({
			executablePath: await chromium.executablePath(),
			headless: true,
			args: [...chromium.args, "--no-sandbox", "--disable-gpu"],
		});
	} catch (error) {
		tell(`SKIPPED: the page, as no Chromium starts: ${String(error).split("\n")[0]}`);
		return null;
	}
}

/** Moves the slider, waits until line and answers are drawn anew, and moves on; ms of each. Runs in the page. */
async function drag(count) {
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
}

const quantile = (values, share) => values.toSorted((a, b) => a - b)[Math.floor(share * (values.length - 1))];
const ofMs = (values) => {
	const [medianMs, p95Ms, mostMs] = [0.5, 0.95, 1].map((share) => Number(quantile(values, share).toFixed(1)));
	return { medianMs, p95Ms, mostMs };
};

/** Figures of so many moves of a slider, 400 replications each; null where no browser starts. */
export async function page(moves, tell) {
	const browser = await launched(tell);
	if (browser === null) return null;
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	try {
		const file = join(folder, "workbench.html");
		const words = ["dist/cli/main.js", "page", "--out", file, "--quiet"];
		spawnSync(process.execPath, words, { stdio: "inherit" });
		const tab = await (await browser.newContext({ offline: true })).newPage();
		await tab.setViewportSize({ width: 1440, height: 900 });
		await tab.goto(pathToFileURL(file).href);
		await tab.waitForFunction(() => document.body.dataset.settled === "yes");
		const traced = join(folder, "trace.json");
		await browser.startTracing(tab, { path: traced, categories: ["toplevel"] });
		const waits = await tab.evaluate(drag, moves);
		await browser.stopTracing();
		const { traceEvents } = JSON.parse(readFileSync(traced, "utf8"));
		return figures(moves, waits, traceEvents);
	} finally {
		await browser.close();
		rmSync(folder, { recursive: true });
	}
}

function figures(moves, waits, traceEvents) {
	const names = new Map(
		traceEvents.filter(({ name }) => name === "thread_name").map(({ pid, tid, args }) => [`${pid}:${tid}`, args.name]),
	);
	const tasksOf = (thread) =>
		traceEvents.filter(
			({ ph, name, pid, tid }) =>
				ph === "X" &&
				name.endsWith("RunTask") &&
				!name.startsWith("Run") &&
				thread.test(names.get(`${pid}:${tid}`) ?? ""),
		);
	const main = tasksOf(/InProcRenderer|CrRendererMain/);
	const cpu = main.map(({ tdur = 0 }) => tdur / 1000);
	const sum = (values) => values.reduce((a, b) => a + b, 0);
	const eachMs = (values) => Number((sum(values) / moves).toFixed(1));
	return {
		moves,
		moveToPicture: ofMs(waits),
		taskOfPage: ofMs(cpu.filter((ms) => ms > 1)),
		tasks: main.length,
		tasksOver50Ms: cpu.filter((ms) => ms > 50).length,
		tasksOver50MsByWallTime: main.filter(({ dur }) => dur > 50_000).length,
		pageMsPerMove: eachMs(cpu),
		workerMsPerMove: eachMs(tasksOf(/DedicatedWorker/).map(({ tdur = 0 }) => tdur / 1000)),
	};
}

/** The figures as lines to read. */
export function pageLines(seen) {
	const say = (what, { medianMs, p95Ms, mostMs }) =>
		`${what}: median ${medianMs} ms, 95th percentile ${p95Ms} ms, most ${mostMs} ms`;
	return `${seen.moves} moves of a slider, 400 replications each
${say("move to picture, wall time", seen.moveToPicture)}
${say("task of the page, processor time", seen.taskOfPage)}
tasks of the page over 50 ms: ${seen.tasksOver50Ms} by processor time, ${seen.tasksOver50MsByWallTime} by wall time, of ${seen.tasks}
processor time a move: worker ${seen.workerMsPerMove} ms, page ${seen.pageMsPerMove} ms`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	console.log(`${cpus()[0].model}, ${cpus().length} cores`);
	const seen = await page(100, console.log);
	if (seen !== null) console.log(pageLines(seen));
	process.exit(0);
}
