import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf } from "./lenient.ts";
import { received } from "./path.ts";
import { details, whats } from "./schema-happening.ts";
import { unknownDressing } from "./unknown-dressing.ts";

const samples = {
	size: 'the leak it adds, such as "0.02 L/min/mmHg"',
	share: "the share of the port it closes, such as 0.6",
	for: 'how long, such as "30 min"',
	volume: 'a volume such as "120 mL"',
};
const detailKeys = Object.keys(samples) as (keyof typeof samples)[]; // keys forgets the names it lists

/** Every happening befalls a dressing that is there and carries the details of its kind, no others. */
export function crossHappenings(data: unknown): Found[] {
	const root = asMap(data);
	const ids = asList(root.dressings).map((dressing) =>
		idOf(asMap(dressing).id),
	);
	return asList(root.happenings).flatMap((item, i) => {
		const happening = asMap(item);
		const keys = ["happenings", i];
		const id = idOf(happening.dressing);
		const stranger =
			id !== undefined && ids.length > 0 && !ids.includes(id)
				? [unknownDressing([...keys, "dressing"], id, ids)]
				: [];
		const what = whats.find((known) => known === happening.what);
		if (what === undefined) return stranger;
		const needed: readonly string[] = details[what];
		const wrong = detailKeys.flatMap((key) => {
			const there = happening[key] !== undefined;
			if (there === needed.includes(key)) return [];
			return [
				there
					? found(
							[...keys, key],
							`no ${key} with ${what}`,
							received(happening[key]),
						)
					: found([...keys, key], samples[key], "nothing"),
			];
		});
		return [...stranger, ...wrong];
	});
}
