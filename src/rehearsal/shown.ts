import type { Bedside } from "./bedside.ts";
import type { Shown } from "./belief.ts";
import { depthShown } from "./dressing-words.ts";

/** What shows at the bedside now, as a belief takes note of it. */
export function shownAt({ process, now, signBits }: Bedside): Shown {
	return {
		atMin: now,
		signs: signBits,
		depth: depthShown(process.depthAt(now), process.regimen.depthMmHg),
	};
}
