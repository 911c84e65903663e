import { exp, ln } from "../../elementary/index.ts";
import type { Cause, Hidden } from "./cause.ts";
import { anyTime, assumedNumbers, comesAt } from "./chance.ts";

const leastShare = assumedNumbers["clog.share"].value;
const inSuctionShare = assumedNumbers["clog.in-suction"].value;

export const portClogged: Cause<Hidden<"port-clogged">> = {
	name: "port-clogged",
	words: "the port was clogged by debris",
	sights: [
		{
			place: "port",
			seen: ({ process }) => process.port.debris > 0,
			words: "Debris sits in the mouth of the port: it is clogged.",
			absent: "The port is clear.",
		},
	],
	mendedBy: ["new-port", "new-dressing"],
	raises: ["suction-path-obstructed", "suction-absent"],
	begin: ({ share }, { process }) => process.port.add(share),

	/** By the clumps that drains loosen: those of an exponential size above the least that counts. */
	hazard(shift) {
		const { constants: k, dressing, phases } = shift;
		const drains = phases.filter(({ phase }) => phase === "drain");
		const clogged =
			Math.min(1, k["clump.chance"] * k[`slough.${dressing.slough}`]) *
			exp(-leastShare / Math.max(k["clump.mean"], 1e-9)) *
			drains.length;
		return {
			weight: clogged / (1 - inSuctionShare),
			draw(uniform) {
				const first = uniform();
				const drain = drains[Math.floor(first * drains.length)];
				const inSuction = uniform() < inSuctionShare;
				const share = leastShare - k["clump.mean"] * ln(1 - uniform());
				const onsetMin = inSuction ? anyTime(first, shift) : drain.startMin;
				return { cause: "port-clogged", ...comesAt(onsetMin), share: Math.min(1, share) };
			},
		};
	},
};
