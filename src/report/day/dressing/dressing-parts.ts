import type { DayResult } from "../../../results/index.ts";

/** One dressing of a day: what was asked, its drawn day, its projection, and what of the result concerns it. */
export type DressingParts = ReturnType<typeof dressingParts>[number];

export function dressingParts(result: DayResult) {
	const { scenario, projection } = result;
	return scenario.dressings.flatMap((dressing, index) => {
		const own = <Part extends { readonly id: string }>(parts: readonly Part[]): Part | undefined =>
			parts.find(({ id }) => id === dressing.id);
		const [day, projected] = [own(result.dressings), own(projection.dressings)];
		if (day === undefined || projected === undefined) return [];
		// Ids within a report are made of the dressing's number, whatever its name holds.
		const id = `dressing-${index + 1}`;
		return [
			{
				id,
				heading: `Dressing ${dressing.id}`,
				headingId: `${id}-heading`,
				result,
				clock: scenario,
				dressing,
				day,
				projection: projected,
				replications: projection.replications,
				/** False where every replication would be the same, or there is only one: then nothing is 'likely', it is so. */
				varies: scenario.chance === "on" && projection.replications > 1,
				hasFill: dressing.regimens.some(({ fillMl }) => fillMl > 0),
				happenings: scenario.happenings.filter((one) => one.dressing === dressing.id),
				/** When the patient goes home; null where nobody does. */
				homeMin: result.home?.fromMin ?? null,
				/** What must be known of this dressing, to stand beside its regimen. */
				cautions: result.cautions.filter((one) => one.dressing === dressing.id).map(({ text }) => text),
			},
		];
	});
}
