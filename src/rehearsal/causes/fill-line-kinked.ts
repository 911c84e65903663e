import type { Cause, Hidden, SoundShift } from "./cause.ts";
import { anyTime, assumedNumbers, between, comesAt } from "./chance.ts";

export const fillLineKinked: Cause<Hidden<"fill-line-kinked">> = {
	name: "fill-line-kinked",
	words: "the fill line was kinked",
	sights: [
		{
			place: "fill-line",
			seen: ({ process }) => process.kinks.fill,
			words: "The fill line is bent sharply at the bed rail: a kink.",
			absent: "The fill line runs freely from end to end.",
		},
	],
	mendedBy: ["free-fill-line", "new-dressing"],
	raises: ["fill-path-obstructed", "suction-absent"],
	begin: (_, { process }) => process.kinks.kink("fill"),
	end: (_, { process }) => process.kinks.free("fill"),
	hazard(shift) {
		const washed = shift.phases.some(({ phase }) => phase === "drain");
		const share = washed ? 1 - shift.constants["kink.suctionShare"] : 0;
		return {
			weight: kinksOf(shift, share),
			draw: (uniform) => ({ cause: "fill-line-kinked", ...kinkCourse(shift, uniform) }),
		};
	},
};

/** How many kinks of a line a shift brings. */
export const kinksOf = ({ constants, hours }: SoundShift, share: number): number =>
	constants["kink.rate"] * share * hours;

/** When a kink comes and how long it lasts: some free themselves, after 4 to 30 min (assumed). */
export function kinkCourse(shift: SoundShift, uniform: () => number) {
	const onsetMin = anyTime(uniform(), shift);
	const frees = uniform() < assumedNumbers["chance.kink-frees-itself"].value;
	const freedMin = between(uniform(), 4, 30);
	return { ...comesAt(onsetMin), lastsMin: frees ? freedMin : Number.POSITIVE_INFINITY };
}
