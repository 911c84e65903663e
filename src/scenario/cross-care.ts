import { constantFacts } from "../physics/index.ts";
import { assumptionRule } from "./assumptions.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap } from "./lenient.ts";
import { received } from "./path.ts";
import { judge } from "./quantity.ts";

/** Rounds, changes, and constants that bound one another. */
export function crossCare(data: unknown): Found[] {
	const root = asMap(data);
	const care = asMap(root.care);
	return [
		...repeated(care.rounds, "rounds"),
		...repeated(care.dressingChange, "dressingChange"),
		...ofAssumptions(asMap(root.assumptions)),
		...hang(root),
	];
}

function repeated(list: unknown, key: string): Found[] {
	const items = asList(list);
	return items.flatMap((item, i) =>
		typeof item === "string" && items.indexOf(item) < i
			? [found(["care", key, i], "each time once", `${received(item)} again`)]
			: [],
	);
}

const below = [
	["pump.maxDepth", "air.ambient"],
	["port.pumpOff", "hands.port"],
] as const;

function ofAssumptions(given: Readonly<Record<string, unknown>>): Found[] {
	return below.flatMap(([low, high]) => {
		const [lowValue, highValue] = [low, high].map((name) => {
			const judged =
				given[name] === undefined
					? null
					: judge(given[name], assumptionRule(name));
			return judged?.ok === true ? judged.value : constantFacts[name].value;
		});
		if (
			lowValue === undefined ||
			highValue === undefined ||
			lowValue <= highValue
		)
			return [];
		const written = given[low] === undefined ? high : low;
		return [
			found(
				["assumptions", written],
				`${low} of at most ${high}`,
				received(given[written]),
			),
		];
	});
}

/** `solution.hang` and `assumptions.source.hang` are one number. */
function hang(root: Readonly<Record<string, unknown>>): Found[] {
	const rule = assumptionRule("source.hang");
	const [short, long] = [
		asMap(root.solution).hang,
		asMap(root.assumptions)["source.hang"],
	].map((written) => (written === undefined ? null : judge(written, rule)));
	if (!short?.ok || !long?.ok || Math.abs(short.value - long.value) < 1e-9)
		return [];
	return [
		found(
			["solution", "hang"],
			"the same time as assumptions.source.hang, or only one of them",
			received(asMap(root.solution).hang),
		),
	];
}
