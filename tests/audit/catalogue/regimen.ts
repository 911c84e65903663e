import type { Dressing, Regimen } from "../../../src/scenario/index.ts";
import { type Listed, listed, type Said } from "../pattern.ts";
import { tissueName } from "../vocabulary.ts";

/** How one regimen is told: what goes in, how long it stays, how long suction runs, how deep. */
export function regimenSaid(regimen: Regimen): Said {
	if (regimen.fillMl === 0)
		return ["continuous suction at {mmHg}, no fill", regimen.depthMmHg];
	const rest = [regimen.suctionMin, regimen.depthMmHg];
	return regimen.dwellMin === 0
		? [
				"{ml} drained at once, then {duration} of suction at {mmHg}",
				regimen.fillMl,
				...rest,
			]
		: [
				"{ml} for {duration}, then {duration} of suction at {mmHg}",
				regimen.fillMl,
				regimen.dwellMin,
				...rest,
			];
}

/** The first with how it begins and how it draws down, then each that takes over, with its time. */
export function regimensSaid(
	regimens: readonly Regimen[],
	withDrawdown = true,
): Listed {
	const [first, ...later] = regimens;
	if (first === undefined) throw new RangeError("a dressing has a regimen");
	return listed(
		[
			[
				"{said}[[, beginning with a {text}]][[; {said}]]",
				regimenSaid(first),
				first.begin === "fill" ? "fill" : undefined,
				withDrawdown ? drawdownSaid(first) : undefined,
			],
			...later.map(
				(regimen): Said => [
					"from {clock} {said}",
					regimen.fromMin,
					regimenSaid(regimen),
				],
			),
		],
		"; ",
	);
}

export const drawdownSaid = ({ drawdown }: Regimen): Said => [
	"{text} drawdown",
	drawdown,
];

/** The wound, its foam, and what hangs beside it. */
export function dressingSaid(
	dressing: Dressing,
	capacityShare: number,
	start: "capital" | "",
): Said {
	const tissue = tissueName(dressing.tissue);
	return [
		"{text}, about {ml} of exudate a day, {text}, {text} seal; foam {ml}, takes {ml} before it pools; canister {ml}[[, solution {ml}]]",
		start === "capital"
			? tissue.slice(0, 1).toUpperCase() + tissue.slice(1)
			: tissue,
		dressing.exudateMlPerDay,
		dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`,
		dressing.difficulty,
		dressing.foam.reduce(
			(sum, piece) => sum + piece.areaCm2 * piece.thicknessCm,
			0,
		),
		capacityShare *
			dressing.foam.reduce(
				(sum, piece) => sum + piece.areaCm2 * piece.thicknessCm,
				0,
			),
		dressing.canisterMl,
		dressing.regimens.some(({ fillMl }) => fillMl > 0)
			? dressing.sourceMl
			: undefined,
	];
}
