import { crossCare } from "./cross-care.ts";
import { crossWard } from "./cross-ward.ts";
import { dayOfKind } from "./day-of-kind.ts";
import { expectedEvents } from "./events.ts";
import { type Found, found, problemsOf } from "./issues.ts";
import { asList, asMap, idOf } from "./lenient.ts";
import { nearest } from "./nearest.ts";
import { received } from "./path.ts";
import { type Problem, sentence, UnusableInput } from "./problem.ts";
import { checkData, isWardData, placed, refused } from "./read.ts";
import { resolveWard } from "./resolve-ward.ts";
import { wardSchema } from "./schema-ward.ts";
import { checkText } from "./text.ts";
import { readTree } from "./tree.ts";
import { dayMin, type WardScenario } from "./ward.ts";

/** Gives the text of a scenario file by the name that stands in the ward's file, or what keeps it from being read. */
export type Load = (
	file: string,
) => { readonly text: string } | { readonly problem: Problem };

/** What is laid over a file before it is read, as it would stand in it. */
export interface WardOverrides {
	readonly seed?: string | undefined;
	readonly replications?: number | undefined;
	readonly horizon?: string | undefined;
	readonly chance?: "on" | "off" | undefined;
}

export interface CheckedWard {
	/** null where there are problems. */
	readonly ward: WardScenario | null;
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
	/** The file as data, with every dressing of another file written out: reads to the same ward without that file. */
	readonly data: unknown;
}

/** Most events of one replication of a ward. */
const mostEvents = 1e9;

/** Whether a text is the file of a ward. Never throws. */
export function isWard(raw: string): boolean {
	const { text, problems } = checkText(raw);
	if (problems.length > 0) return false;
	return isWardData(readTree(text, formatOf(text)).data);
}

const formatOf = (text: string) => (/^\s*\{/u.test(text) ? "json" : "yaml");

/** Reads a ward; throws UnusableInput with every problem at once. */
export function readWard(
	text: string,
	load: Load = noFiles,
	overrides: WardOverrides = {},
): WardScenario {
	const { ward, problems } = checkWard(text, load, overrides);
	if (ward === null) throw new UnusableInput(problems);
	return ward;
}

const noFiles: Load = () => ({
	problem: { path: "", expected: "no other file here", received: "one" },
});

/** Reads the file of a ward or says everything that is wrong with it. Never throws. */
export function checkWard(
	raw: string,
	load: Load = noFiles,
	overrides: WardOverrides = {},
): CheckedWard {
	const none = (problems: readonly Problem[]): CheckedWard => ({
		ward: null,
		problems: refused(problems).problems,
		notes: [],
		data: undefined,
	});
	const { text, problems } = checkText(raw);
	if (problems.length > 0) return none(problems);
	const tree = readTree(text, formatOf(text));
	if (tree.data === undefined) return none(tree.problems);
	if (!isWardData(tree.data)) {
		const both = asMap(tree.data).ward !== undefined;
		const fault = found(
			[both ? "dressings" : "ward"],
			"a ward, and no dressings beside it",
			both ? "both" : "a scenario without one, which the command day simulates",
		);
		return none([...tree.problems, placed(fault, tree)]);
	}
	const expanded = expand({ ...asMap(tree.data), ...given(overrides) }, load);
	const { data } = expanded;
	const parsed = wardSchema.safeParse(data);
	const all = [
		...tree.problems,
		...[
			...expanded.problems,
			...problemsOf(parsed.error?.issues ?? [], data),
			...crossWard(data),
			...crossCare(data),
		].map((problem) => placed(problem, tree)),
	];
	if (!parsed.success || all.length > 0) return none(all);
	const ward = resolveWard(parsed.data, data);
	const events = expectedWardEvents(ward);
	if (!(events <= mostEvents)) {
		const endless = found(
			["horizon"],
			`a ward of at most ${mostEvents} events a replication`,
			`one of about ${events.toPrecision(2)} (fewer units or weeks help)`,
		);
		return none([placed(endless, tree)]);
	}
	return {
		ward,
		problems: [],
		notes: [...notesOf(ward), ...newUnits(data)],
		data,
	};
}

const given = (overrides: WardOverrides) =>
	Object.fromEntries(
		Object.entries(overrides).filter(([, value]) => value !== undefined),
	);

/** The data with every kind that names a file carrying the dressing of that file. */
function expand(
	root: Readonly<Record<string, unknown>>,
	load: Load,
): { readonly data: unknown; readonly problems: Found[] } {
	const problems: Found[] = [];
	const ward = asMap(root.ward);
	if (!Array.isArray(ward.kinds)) return { data: root, problems };
	const kinds = ward.kinds.map((kind: unknown, i) => {
		const { file, dressing: wanted, ...rest } = asMap(kind);
		if (typeof file !== "string") return kind;
		const refuse = (
			key: string,
			expected: string,
			came: string,
			near?: string,
		) => problems.push(found(["ward", "kinds", i, key], expected, came, near));
		const read = load(file);
		if ("problem" in read) {
			refuse("file", read.problem.expected, read.problem.received);
			return kind;
		}
		const { checked, data } = checkData(read.text);
		if (checked.scenario === null) {
			const [first] = checked.problems;
			refuse(
				"file",
				"a sound scenario of dressings",
				`${received(file)}, whose first problem of ${checked.problems.length} is: ${first === undefined ? "" : sentence(first)}`,
			);
			return kind;
		}
		const dressings = asList(asMap(data).dressings).map(asMap);
		const ids = dressings.flatMap(({ id }) => idOf(id) ?? []);
		const id = idOf(wanted) ?? (ids.length === 1 ? ids[0] : undefined);
		const chosen = dressings.find((dressing) => idOf(dressing.id) === id);
		if (id === undefined || chosen === undefined) {
			refuse(
				"dressing",
				`the id of a dressing of that file: ${ids.join(", ")}`,
				received(wanted),
				id === undefined ? undefined : nearest(id, ids),
			);
			return kind;
		}
		const { id: _, patient: __, ...worn } = chosen;
		return { ...worn, ...rest };
	});
	return { data: { ...root, ward: { ...ward, kinds } }, problems };
}

/** A rough upper estimate of the events of one replication. */
function expectedWardEvents(ward: WardScenario): number {
	const shares = ward.kinds.reduce((sum, kind) => sum + kind.share, 0);
	const days = (ward.horizonMin + ward.warmUpMin) / dayMin;
	const perDay = ward.kinds.reduce(
		(sum, kind) =>
			sum +
			(kind.share / shares) *
				expectedEvents({
					...dayOfKind(ward, kind.dressing),
					horizonMin: dayMin,
				}),
		0,
	);
	const most =
		(ward.arrivals?.perDay ?? 0) *
			Math.max(...(ward.arrivals?.factors ?? [0])) *
			days +
		ward.beds.length +
		ward.census.reduce((sum, count) => sum + count, 0);
	return Math.min(ward.units ?? Number.POSITIVE_INFINITY, most) * days * perDay;
}

/** What a day says of the content at its start holds for that day alone. */
function newUnits(data: unknown): string[] {
	return asList(asMap(asMap(data).ward).kinds).flatMap((raw, i) => {
		const kind = asMap(raw);
		const unit = asMap(kind.unit);
		return unit.holds === undefined && unit.left === undefined
			? []
			: [
					`ward.kinds[${i}]: every therapy of the ward begins with a new canister and a new source; what ${String(kind.id)} holds or has left at the start of its day is not used.`,
				];
	});
}

function notesOf(ward: WardScenario): string[] {
	return ward.beds.flatMap(({ id, startMin }) =>
		startMin >= ward.horizonMin
			? [
					`ward.beds: the therapy of ${id} begins at or after the end, and so never.`,
				]
			: [],
	);
}
