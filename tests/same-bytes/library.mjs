// Prints what the package exports: names, what each is, the whole of what is data, and what it makes of the scenarios named.
import { readFileSync } from "node:fs";
import * as library from "slackwater";

const print = (value) => console.log(JSON.stringify(value, null, "\t"));

for (const [name, value] of Object.entries(library).sort()) {
	console.log(`${name}: ${typeof value}`);
	if (typeof value !== "function") print(value);
}
for (const file of process.argv.slice(2)) {
	console.log(file);
	const checked = library.checkScenario(readFileSync(file, "utf8"));
	print(checked);
	if (checked.scenario !== null) print(library.traceDay(checked.scenario));
}
