import type { HiddenCause, RehearsalPlan } from "./rehearsal-plan.ts";
import type { ScenarioFile } from "./schema.ts";

type RehearsalFile = NonNullable<ScenarioFile["rehearsal"]>;

/** The rehearsal of a sound file; the dressing it names is among `dressings`. */
export function resolveRehearsal(
	file: RehearsalFile,
	dressings: ScenarioFile["dressings"],
): RehearsalPlan {
	return {
		dressing: Math.max(
			0,
			dressings.findIndex(({ id }) => id === file.dressing),
		),
		brief: file.brief,
		transferMin: file.transfer ?? null,
		told: (file.told ?? [])
			.map(({ at, says }) => ({ atMin: at, says }))
			.sort((a, b) => a.atMin - b.atMin),
		pace: file.pace ?? null,
		help: file.help ?? null,
		hides: file.hides.map(resolveCause),
	};
}

function resolveCause({
	cause,
	at: atMin = 0,
	within: withinMin = 0,
	lasts: lastsMin = Number.POSITIVE_INFINITY,
	size = 0,
	share = 0,
	holds: holdsMl = 0,
	volume: volumeMl = 0,
}: RehearsalFile["hides"][number]): HiddenCause {
	switch (cause) {
		case "fill-line-kinked":
		case "suction-line-kinked":
		case "left-off":
			return { cause, atMin, withinMin, lastsMin };
		case "port-clogged":
			return { cause, atMin, withinMin, share };
		case "seal-breach":
			return { cause, atMin, withinMin, size };
		case "dressing-dislodged":
			return { cause, size };
		case "canister-full":
		case "source-empty":
			return { cause, holdsMl };
		case "bleeding":
			return { cause, atMin, withinMin, volumeMl, lastsMin };
	}
}
