import { expect, test } from "vitest";
import { pacesOf } from "./flashes.ts";

// Guards the reader of paces that style sheets of the program are looked at with. Nothing here looks at the program.

test("a light of either priority would be told by its pace", () => {
	expect(pacesOf("a{animation:blink 500ms infinite}")[0].like).toBe("high");
	expect(pacesOf("a{animation: blink 1.7s step-end}")[0].like).toBe("medium");
	expect(pacesOf("a { transition: color 0.05s; }")[0].like).toBe("none");
});
