import type {
	DayResult,
	DrawnDressing,
	DressingProjection,
	DressingSummary,
} from "../analysis/day-result.ts";
import type { AnswerData } from "./answer-data.ts";

/** One dressing of a result: what was asked, its traced day, its projection. */
export interface DressingParts {
	readonly index: number;
	readonly summary: DressingSummary;
	readonly day: DrawnDressing;
	readonly projection: DressingProjection;
}

/** The dressings of a result with their parts side by side. */
export const dressingParts = (result: DayResult): DressingParts[] =>
	result.scenario.dressings.flatMap((summary, index) => {
		const day = result.dressings.find(
			(candidate) => candidate.id === summary.id,
		);
		const projection = result.projection.dressings.find(
			(candidate) => candidate.id === summary.id,
		);
		return day === undefined || projection === undefined
			? []
			: [{ index, summary, day, projection }];
	});

/** What the answers of a dressing are made from. */
export const answerData = (
	result: DayResult,
	parts: DressingParts,
): AnswerData => ({
	clock: result.scenario,
	chance: result.scenario.chance,
	dressing: parts.summary,
	day: parts.day,
	projection: parts.projection,
	replications: result.projection.replications,
	homeMin: result.home?.fromMin ?? null,
	happenings: result.scenario.happenings.filter(
		({ dressing }) => dressing === parts.summary.id,
	),
});

/** The heading of a dressing. */
export const headingWords = ({ summary }: DressingParts): string =>
	`Dressing ${summary.id}`;

/** Id of the heading of a dressing. */
export const headingOf = (parts: DressingParts): string =>
	`${idOf(parts)}-heading`;

/** Ids within a report are made of the dressing's number, whatever its name holds. */
export const idOf = (parts: DressingParts): string =>
	`dressing-${parts.index + 1}`;
