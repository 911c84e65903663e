import { expect, test } from "vitest";
import { countBand } from "../../src/charts/index.ts";
import { shelf } from "./count-band-examples.ts";
import { document, options, wordsOf } from "./example.ts";

test("a count says in words what it shows, with the lowest point by date", () => {
	expect(wordsOf(countBand(shelf(), document, options))).toMatch(
		/^Stock: canister 1000 mL\. .*Lowest at Mon 9 March: between 0 and 9\. Out at least once in 4 %/,
	);
});
