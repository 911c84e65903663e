import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type BuildOptions, build } from "esbuild";
import { getQuickJS, Scope } from "quickjs-emscripten";
import type { Named } from "./traces.ts";

/** Runs an expression over `slackwater`, which is `traces.ts`, and returns its value (JSON). */
export type Engine = (bundle: string, expression: string) => Promise<unknown>;

/** `traces.ts` and all it needs as one script that works in any engine. `host`: with the engine's own exponential. */
export async function bundled(host = false): Promise<string> {
	const plugins: BuildOptions["plugins"] = host
		? [
				{
					name: "the host's exponential",
					setup(esbuild) {
						esbuild.onLoad({ filter: /elementary[\\/]exp\.ts$/ }, () => ({ contents: "export const exp = Math.exp;" }));
					},
				},
			]
		: [];
	const { outputFiles } = await build({
		entryPoints: ["tests/frozen/traces.ts"],
		bundle: true,
		write: false,
		format: "iife",
		globalName: "slackwater",
		platform: "browser",
		target: "es2022",
		logLevel: "silent",
		plugins,
	});
	return outputFiles[0]?.text ?? "";
}

/** The calls that the tests make, as expressions for any engine. */
export const tracesIn = (files: readonly Named[], count: number) =>
	`slackwater.traces(${JSON.stringify(files)}, ${count})`;
export const logIn = (file: Named, seed: string) =>
	`(({ times, names }) => ({ times, names }))(slackwater.log(${JSON.stringify(file)}, ${JSON.stringify(seed)}))`;

/** bun, which runs JavaScriptCore. */
export const javaScriptCore: Engine = async (bundle, expression) => {
	const require = createRequire(import.meta.url);
	const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
	try {
		const file = join(folder, "run.cjs");
		writeFileSync(file, `${bundle}\nconsole.log(JSON.stringify(${expression}));`);
		const home = dirname(require.resolve("bun/package.json"));
		const answer = execFileSync(join(home, "bin", "bun.exe"), [file], { encoding: "utf8", maxBuffer: 1e9 });
		return JSON.parse(answer);
	} finally {
		rmSync(folder, { recursive: true });
	}
};

/** Of the web's own parts that a bare engine lacks, the one that reading a scenario uses. */
const encoder = `globalThis.TextEncoder ??= class {
	encode(text) {
		return Uint8Array.from(unescape(encodeURIComponent(text)), (c) => c.charCodeAt(0));
	}
};`;

/** quickjs-emscripten, which is QuickJS: the language and nothing else. */
export const quickJs: Engine = async (bundle, expression) => {
	const quick = await getQuickJS();
	return Scope.withScope((scope) => {
		const runtime = scope.manage(quick.newRuntime());
		runtime.setMaxStackSize(4_000_000);
		const context = scope.manage(runtime.newContext());
		const value = scope.manage(
			context.unwrapResult(context.evalCode(`${encoder}\n${bundle}\n;JSON.stringify(${expression})`)),
		);
		return JSON.parse(context.getString(value));
	});
};
