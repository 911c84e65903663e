#!/usr/bin/env node
import { run } from "./program.ts";
import { explain, reasonOf } from "./terminal/failure.ts";

// A reader that has seen enough closes the pipe: that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
	if (error.code === "EPIPE") process.exit(0);
	process.stderr.write(`slackwater: nothing can be written to standard output: ${reasonOf(error)}\n`);
	process.exit(1);
});
process.stderr.on("error", () => {}); // nobody is left to tell
process.on("uncaughtException", (error) => process.exit(explain(error)));

process.exitCode = await run(process.argv.slice(2));
