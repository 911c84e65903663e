import type { Regimen, Scenario } from "../../src/scenario/index.ts";

/** What a scenario means, whichever of its values were given and which were defaults. */
export const meaning = ({
	defaulted: _,
	dressings,
	compare,
	...rest
}: Scenario): object => ({
	...rest,
	dressings: dressings.map((dressing) => ({
		...dressing,
		regimens: dressing.regimens.map(alike),
	})),
	compare: compare.map((patch) => ({
		...patch,
		regimens: Object.entries(patch.regimens).map(([id, regimens]) => [
			id,
			regimens.map(alike),
		]),
	})),
});

const alike = ({ drawdownGiven: _, ...regimen }: Regimen) => regimen;
