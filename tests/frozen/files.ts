import { readdirSync, readFileSync } from "node:fs";
import type { Named } from "./traces.ts";

/** Every scenario in `scenarios/`. */
export const files: Named[] = readdirSync("scenarios")
	.filter((name) => name.endsWith(".yaml"))
	.sort()
	.map((name) => ({ name, text: readFileSync(`scenarios/${name}`, "utf8") }));
