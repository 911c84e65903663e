import { expect, test } from "vitest";
import { readScript, stepText } from "../../src/rehearsal/script.ts";
import { sentence } from "../../src/scenario/index.ts";
import { acts, places } from "../../src/vocabulary/index.ts";

test("a script is one look, act or wait a line, with remarks and empty lines", () => {
	const { steps, problems } = readScript(
		"# a start\n\nlook  suction-line # the cheap one\r\nact free-suction-line\nwait 2.5\nnext\nend\n",
	);
	expect(problems).toEqual([]);
	expect(steps.map(stepText)).toEqual(["look suction-line", "act free-suction-line", "wait 2.5", "next", "end"]);
});

test("every look and act can be written and read back", () => {
	const lines = [...places.map((place) => `look ${place}`), ...acts.map((act) => `act ${act}`)];
	expect(readScript(lines.join("\n")).steps.map(stepText)).toEqual(lines);
});

test("everything that is wrong with a script is said at once, with its line", () => {
	const { problems } = readScript(
		"look port\nlook moon\nact\nwait -3\nwait 2000\nwait\nnext please\ndance\nlook port now",
	);
	expect(problems.map(({ line }) => line)).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
	expect(sentence(problems[0])).toMatch(
		/^the script \(line 2\): expected look and one of dressing, .*, received "look moon"$/,
	);
});
