import type {
	DrawnDressing,
	DressingProjection,
	DressingSummary,
	ListedHappening,
} from "../analysis/day-result.ts";
import type { Clock } from "../charts/index.ts";

/** What the answers of one dressing are made from. */
export interface AnswerData {
	readonly clock: Clock;
	readonly chance: "on" | "off";
	readonly dressing: DressingSummary;
	readonly day: DrawnDressing;
	readonly projection: DressingProjection;
	readonly replications: number;
	/** When the patient goes home; null where nobody does. */
	readonly homeMin: number | null;
	/** What the scenario lists for this dressing. */
	readonly happenings: readonly ListedHappening[];
}

/** Shares of the days at which something counts as likely, and below which it counts as unlikely. */
export const likely = 0.95;
export const unlikely = 0.05;

/** False where every replication would be the same, or there is only one: then nothing is 'likely', it is so. */
export const varies = (
	data: Pick<AnswerData, "chance" | "replications">,
): boolean => data.chance === "on" && data.replications > 1;
