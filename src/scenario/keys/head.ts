import * as z from "zod";
import { byDefault } from "../meaning/defaults.ts";
import { leaf, text } from "../reading/leaf.ts";
import { start } from "./clock.ts";

const chance = leaf(
	{ enum: ["on", "off", true, false], description: "off: nothing fails by itself and nothing varies" },
	(raw, refuse): boolean => {
		if (raw === "on" || raw === true) return true;
		return raw === "off" || raw === false ? false : refuse("on or off");
	},
);

const schemaPlace = leaf(
	{
		description: "where an editor finds this schema, for a JSON file, which cannot say so in a comment",
		type: "string",
		maxLength: 1000,
	},
	(raw, refuse): string => (typeof raw === "string" && raw.length <= 1000 ? raw : refuse("where the JSON Schema is")),
);

/** The keys with which every file begins; how long and how often is a day's or a ward's own. */
export const head = <H extends z.ZodType, R extends z.ZodType>(horizon: H, replications: R) => ({
	$schema: schemaPlace.optional(),
	slackwater: z.literal(1, { error: "the version of the format, 1" }).describe("version of the format"),
	title: text("a title", 200, "what the scenario is, one line"),
	seed: byDefault(text("a seed", 200, "any text; the same seed gives the same day"), "seed"),
	start: byDefault(start, "start"),
	horizon,
	replications,
	chance: byDefault(chance, "chance"),
});
