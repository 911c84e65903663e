import type * as z from "zod";
import type { Provenance } from "../../physics/index.ts";

export interface Default {
	/** As it would be written in a file. */
	readonly write: string | number | readonly string[] | Readonly<Record<string, never>>;
	readonly provenance: Provenance;
	readonly source: string;
}

/** Makes the defaults of one origin. */
const from =
	(provenance: Provenance, source: string) =>
	<const W extends Default["write"]>(write: W) => ({ write, provenance, source });

const ofProject = from("assumed", "default of the project");
const practice = from("common practice", "common practice, no source");
const assumed = from("assumed", "placeholder until a site calibrates it");

/** Every default of a scenario file, by path; `[]` stands for each item of a list. The constants of `assumptions:` have their own list. */
export const defaults = {
	seed: ofProject("slackwater"),
	start: ofProject("2026-01-05T07:00"),
	horizon: ofProject("24 h"),
	replications: ofProject(400),
	chance: ofProject("on"),
	"dressings[].patient": ofProject("patient"),
	"dressings[].wound.slough": ofProject("ordinary"),
	"dressings[].wound.difficulty": ofProject("ordinary"),
	"dressings[].wound.outflow": ofProject("none"),
	"dressings[].regimen.begin": practice("suction"),
	// Stands for the constant of that name, with whatever value the file gives it: see `filled-defaults.ts`.
	"dressings[].regimen.drawdown": from("assumed", "assumed: the constant pump.drawdown")("15 %"),
	"dressings[].unit.canister": ofProject("1000 mL"),
	"dressings[].unit.holds": ofProject("0 mL"),
	"dressings[].unit.source": ofProject("1000 mL"),
	// The whole of the source, whatever its size: see `filled-defaults.ts`.
	"dressings[].unit.left": ofProject("1000 mL"),
	"dressings[].age": ofProject("0 h"),
	"care.response.day": assumed("4 min"),
	"care.response.night": assumed("7 min"),
	"care.response.spread": assumed(0.6),
	"care.rounds": practice(["03:00", "07:00", "11:00", "15:00", "19:00", "23:00"]),
	"care.turning": practice("4 h"),
	"care.nurses": ofProject("unlimited"),
	"care.dressingChange": practice("48 h"),
	"care.avoid.handOver": practice(["06:30-07:30", "18:30-19:30"]),
	"care.avoid.meals": practice(["08:00-08:30", "12:00-13:00", "17:30-18:30"]),
	"care.avoid.smallHours": practice(["01:00-05:00"]),
	"solution.name": ofProject("the prescribed solution"),
	"ward.horizon": ofProject("8 w"),
	"ward.replications": ofProject(200),
	"ward.kinds[].share": ofProject(1),
	"ward.units": ofProject("unlimited"),
	"ward.full": ofProject("wait"),
	"ward.warmUp": ofProject("0 d"),
	"stores[].pack": ofProject(1),
	"stores[].shelf": ofProject("unlimited"),
	"stores[].lead": assumed("2 d"),
	"stores[].leadSpread": assumed(0),
	"stores[].orderDays": ofProject("any"),
	"stores[].cutOff": assumed("14:00"),
	"stores[].review": ofProject("continuous"),
	"stores[].service": ofProject("99 %"),
} as const;
export type DefaultPath = keyof typeof defaults;

/** A leaf of the schema that stands at its default where the file leaves it out. */
export const byDefault = <T extends z.ZodType>(leaf: T, path: DefaultPath): z.ZodPrefault<T> =>
	leaf.prefault(defaults[path].write as z.input<T>); // as it would be written, which the leaf reads
