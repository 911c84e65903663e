import { expect, test } from "vitest";
import { notices } from "../../src/cli/files/page-file.ts";

test("notices keep every paragraph once, and cannot end a comment of HTML", () => {
	const one = (year: number, more = "") =>
		`  /**\n  * @license Apache-2.0\n  *\n  * Copyright (c) ${year} Somebody.\n  *\n  * Words of the licence,\n  * in two lines.\n  *${more}/\n`;
	const kept = notices(
		`Bundled license information:\n\na/b.js:\n${one(2018)}\nc/d.js:\n${one(2021, "\n  *\n  * Also --> here.\n  *")}`,
	);
	for (const words of [
		"Bundled license information:",
		"a/b.js:",
		"Copyright (c) 2018 Somebody.",
		"Copyright (c) 2021 Somebody.",
		"Words of the licence,\nin two lines.",
		"Also",
	])
		expect(kept.split(words), words).toHaveLength(2);
	expect(kept).not.toContain("--");
});
