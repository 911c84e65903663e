import { expect, test } from "vitest";
import { records } from "./comma-separated.ts";

// Guards the strict reader that the program's tables are read with. Nothing here looks at the program.
test("the strict reader takes the RFC's examples and refuses what it forbids", () => {
	expect(records('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx\r\n')).toEqual([
		["aaa", "b\r\nbb", "ccc"],
		["zzz", "yyy", "xxx"],
	]);
	expect(records('"aaa","b""bb","ccc"\r\n')).toEqual([["aaa", 'b"bb', "ccc"]]);
	expect(records("aaa,bbb,\r\n")).toEqual([["aaa", "bbb", ""]]);
	for (const bad of ['"aaa" ,b\r\n', "a\nb\r\n", 'a"b\r\n', '"a\r\n', "a,b"])
		expect(() => records(bad)).toThrow(RangeError);
});
