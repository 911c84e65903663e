import { checkData } from "./read.ts";
import { nearest } from "./reading/nearest.ts";
import { type Found, found, type Problem, received, sentence } from "./reading/problem.ts";
import { asList, asMap, type Fields, idOf } from "./reading/raw.ts";

/** Gives the text of a scenario file by the name that stands in the ward's file, or what keeps it from being read. */
export type Load = (file: string) => { readonly text: string } | { readonly problem: Problem };

/** The file of a ward with every kind that names a file carrying the dressing of that file; a kind that cannot stays as it is. */
export function expandKinds(root: Fields, load: Load): { readonly data: unknown; readonly problems: Found[] } {
	const problems: Found[] = [];
	const ward = asMap(root.ward);
	if (!Array.isArray(ward.kinds)) return { data: root, problems };
	const kinds = ward.kinds.map((kind: unknown, i) => {
		const { file, dressing: wanted, ...rest } = asMap(kind);
		if (typeof file !== "string") return kind;
		const refuse = (key: string, expected: string, came: string, near?: string) => {
			problems.push(found(["ward", "kinds", i, key], expected, came, near));
			return kind;
		};
		const read = load(file);
		if ("problem" in read) return refuse("file", read.problem.expected, read.problem.received);
		const { checked, data } = checkData(read.text);
		if (checked.scenario === null) {
			const first = checked.problems.slice(0, 1).map(sentence).join("");
			const whose = `${received(file)}, whose first problem of ${checked.problems.length} is: ${first}`;
			return refuse("file", "a sound scenario of dressings", whose);
		}
		const dressings = asList(asMap(data).dressings).map(asMap);
		const ids = dressings.flatMap(({ id }) => idOf(id) ?? []);
		const id = idOf(wanted) ?? (ids.length === 1 ? ids[0] : undefined);
		const chosen = dressings.find((dressing) => idOf(dressing.id) === id);
		if (id === undefined || chosen === undefined) {
			const near = id === undefined ? undefined : nearest(id, ids);
			return refuse("dressing", `the id of a dressing of that file: ${ids.join(", ")}`, received(wanted), near);
		}
		const { id: _, patient: __, ...worn } = chosen;
		return { ...worn, ...rest };
	});
	return { data: { ...root, ward: { ...ward, kinds } }, problems };
}
