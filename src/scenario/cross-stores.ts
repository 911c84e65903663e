import { readQuantity } from "../physics/index.ts";
import { defaults } from "./defaults.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf } from "./lenient.ts";
import { type Keys, received } from "./path.ts";

type Fields = Readonly<Record<string, unknown>>;

/** The volume in mL; NaN where it cannot be read. */
function volume(written: unknown): number {
	const reading =
		typeof written === "string" ? readQuantity(written, "mL") : null;
	return reading?.ok === true ? reading.value : Number.NaN;
}

const standardSolution = (root: Fields) =>
	idOf(asMap(root.solution).name) ?? defaults["solution.name"].write;

interface Used {
	readonly kind: string;
	readonly size: number | null;
	readonly solution: string | null;
	readonly by: string;
}

/** What the kinds and the policies use. */
function usedBy(root: Fields, kinds: readonly Fields[]): Used[] {
	const standard = standardSolution(root);
	const policies = Object.entries(asMap(root.compare)).map(
		([name, policy]) => ({ name, policy: asMap(policy) }),
	);
	return kinds.flatMap((kind) => {
		if (kind.regimen === undefined) return [];
		const by = `the kind ${idOf(kind.id) ?? "?"}`;
		const unit = asMap(kind.unit);
		const regimens = (
			Array.isArray(kind.regimen) ? kind.regimen : [kind.regimen]
		).map(asMap);
		const fills = regimens.some(
			({ fill }) => fill !== undefined && fill !== "none",
		);
		const sizes = (key: "canister" | "source") => [
			{
				size: unit[key] ?? defaults[`dressings[].unit.${key}`].write,
				by,
			},
			...policies
				.filter(
					({ policy }) =>
						policy[key] !== undefined &&
						[undefined, idOf(kind.id)].includes(idOf(policy.dressing)),
				)
				.map(({ name, policy }) => ({
					size: policy[key],
					by: `the policy ${name}`,
				})),
		];
		const solution = idOf(kind.solution) ?? standard;
		return [
			...sizes("canister").map(({ size, by: user }) => ({
				kind: "canister",
				size: volume(size),
				solution: null,
				by: user,
			})),
			...(fills
				? [
						...sizes("source").map(({ size, by: user }) => ({
							kind: "solution",
							size: volume(size),
							solution,
							by: user,
						})),
						{ kind: "line", size: null, solution: null, by },
					]
				: []),
			{ kind: "kit", size: null, solution: null, by },
			{ kind: "port", size: null, solution: null, by },
		];
	});
}

const nameOf = ({ kind, size, solution }: Omit<Used, "by">) =>
	`${kind === "solution" ? solution : kind}${size === null ? "" : ` ${size} mL`}`;

/** Every item that is used is stocked, and each is sound in itself. */
export function crossStores(root: Fields, kinds: readonly Fields[]): Found[] {
	const standard = standardSolution(root);
	const items = asList(root.stores).map(asMap);
	const keyed = items.map((item) => ({
		kind: String(item.item),
		size:
			item.item === "canister" || item.item === "solution"
				? volume(item.size)
				: null,
		solution:
			item.item === "solution" ? (idOf(item.solution) ?? standard) : null,
	}));
	const names = keyed.map(nameOf);
	const lacking = new Map(
		usedBy(root, kinds)
			.filter((used) => used.size === null || !Number.isNaN(used.size))
			.filter((used) => !names.includes(nameOf(used)))
			.map((used) => [nameOf(used), used.by] as const),
	);
	return [
		...[...lacking].map(([name, by]) =>
			found(
				["stores"],
				`every item that is used, among them ${name} (${by})`,
				"none of it",
			),
		),
		...items.flatMap((item, i) => {
			const at = (key: string): Keys => ["stores", i, key];
			const sized = item.item === "canister" || item.item === "solution";
			const faults: Found[] = [];
			if (sized && item.size === undefined)
				faults.push(found(at("size"), 'a size such as "1000 mL"', "nothing"));
			if (!sized)
				for (const key of ["size", "solution", "substitute"])
					if (item[key] !== undefined)
						faults.push(
							found(
								at(key),
								`no ${key} with ${String(item.item)}`,
								received(item[key]),
							),
						);
			if (item.item === "canister" && item.solution !== undefined)
				faults.push(
					found(
						at("solution"),
						"no solution with canister",
						received(item.solution),
					),
				);
			if (names.indexOf(names[i] ?? "") < i)
				faults.push(
					found(["stores", i], "each item once", `${names[i]} again`),
				);
			if (item.price !== undefined && asMap(root.prices).currency === undefined)
				faults.push(
					found(at("price"), "a currency for it, under prices:", "none"),
				);
			const { reorder, upTo } = item;
			if (typeof upTo === "number" && typeof reorder !== "number")
				faults.push(found(at("upTo"), "a reorder point beside it", "none"));
			if (
				typeof upTo === "number" &&
				typeof reorder === "number" &&
				upTo <= reorder
			)
				faults.push(
					found(
						at("upTo"),
						`more than the reorder point, ${reorder}`,
						String(upTo),
					),
				);
			if (item.substitute !== undefined && sized) {
				const other = nameOf({
					kind: keyed[i]?.kind ?? "",
					size: volume(item.substitute),
					solution: keyed[i]?.solution ?? null,
				});
				const there = names.indexOf(other);
				if (there < 0 || there === i)
					faults.push(
						found(
							at("substitute"),
							"the size of another item of the stores",
							received(item.substitute),
						),
					);
			}
			return faults;
		}),
	];
}
