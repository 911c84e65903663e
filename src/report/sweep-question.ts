import type { SweepResult } from "../analysis/sweep-result.ts";
import { joinedWords } from "./joined-words.ts";
import { axisWords, clockWords, markOf, markWords } from "./sweep-words.ts";

/** The question that a grid answers. */
export function sweepQuestion(result: SweepResult): string {
	const { scenario, axes, dressing } = result;
	const wound =
		dressing === "all" && scenario.dressings.length > 1
			? "these wounds"
			: "this wound";
	const start = axes.find(({ name }) => name === "start");
	const apart = axes.find(({ name }) => name === "apart");
	const settings = axes.filter((axis) => axis !== start && axis !== apart);
	if (settings.length === 0 && axes.length > 0) {
		const clauses = [
			...(start === undefined
				? []
				: [`begin at another time than ${clockWords(start.current)}`]),
			...(apart === undefined ? [] : ["have the dressings out of step"]),
		];
		return `For ${wound}, what does it buy and cost to ${clauses.join(", or to ")}?`;
	}
	const others = joinedWords(axes.map(({ name }) => axisWords[name].many));
	const current = markOf(result, "current");
	const against = current === undefined ? "" : ` against ${markWords(current)}`;
	return `For ${wound}, what do other ${others === "" ? "settings" : others} buy and cost${against}?`;
}
