#!/usr/bin/env node
import { run } from "./program.ts";

// A reader that has seen enough closes the pipe: that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
	process.exit(error.code === "EPIPE" ? 0 : 1);
});

process.exitCode = await run(process.argv.slice(2));
