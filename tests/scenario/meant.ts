import type { Regimen, Scenario } from "../../src/scenario/index.ts";

/** What a scenario means, whichever of its values were given and which were defaults. */
export const meaning = ({ defaulted: _, dressings, compare, usual, ...rest }: Scenario): object => ({
	...rest,
	dressings: dressings.map((dressing) => ({ ...dressing, regimens: dressing.regimens.map(alike) })),
	compare: compare.map((patch) => ({ ...patch, regimens: eachAlike(patch.regimens) })),
	usual: usual === null ? null : eachAlike(usual),
});

const eachAlike = (regimens: { readonly [id: string]: readonly Regimen[] }) =>
	Object.entries(regimens).map(([id, list]) => [id, list.map(alike)]);

const alike = ({ drawdownGiven: _, ...regimen }: Regimen) => regimen;
