import { defaults } from "../../meaning/defaults.ts";
import { type Found, found, received } from "../../reading/problem.ts";
import { asList, asMap, type Fields, idOf, readMl } from "../../reading/raw.ts";
import { itemsOf } from "../dressing/regimen.ts";
import { writtenSize } from "../dressing/unit.ts";

/** An item as the raw file names it: `canister 1000 mL`, `saline 500 mL`, `kit`. */
const nameOf = (kind: string, sizeMl: number | null, solution: string | null) =>
	`${kind === "solution" ? solution : kind}${sizeMl === null ? "" : ` ${sizeMl} mL`}`;

/** Names of the items that kinds and policies use, each with its last user; a size that cannot be read has none. */
function used(root: Fields, kinds: readonly Fields[], standard: string): ReadonlyMap<string, string> {
	const policies = Object.entries(asMap(root.compare)).map(([name, policy]) => ({ name, policy: asMap(policy) }));
	const users = new Map<string, string>();
	for (const kind of kinds) {
		if (kind.regimen === undefined) continue;
		const id = idOf(kind.id);
		const by = `the kind ${id ?? "?"}`;
		const useSizes = (item: "canister" | "solution", part: "canister" | "source", solution: string | null) => {
			const laidOver = policies.filter(
				({ policy }) => policy[part] !== undefined && [undefined, id].includes(idOf(policy.dressing)),
			);
			const own = { size: writtenSize(asMap(kind.unit), part), user: by };
			const others = laidOver.map(({ name, policy }) => ({ size: policy[part], user: `the policy ${name}` }));
			for (const { size, user } of [own, ...others])
				if (!Number.isNaN(readMl(size))) users.set(nameOf(item, readMl(size), solution), user);
		};
		useSizes("canister", "canister", null);
		const regimens = itemsOf(kind.regimen).map(asMap);
		if (regimens.some(({ fill }) => fill !== undefined && fill !== "none")) {
			useSizes("solution", "source", idOf(kind.solution) ?? standard);
			users.set("line", by);
		}
		users.set("kit", by).set("port", by);
	}
	return users;
}

/** Every item that is used is stocked, and each is sound in itself. */
export function crossStores(root: Fields, kinds: readonly Fields[]): Found[] {
	const standard = idOf(asMap(root.solution).name) ?? defaults["solution.name"].write;
	const items = asList(root.stores).map(asMap);
	const isSized = ({ item }: Fields) => item === "canister" || item === "solution";
	const named = ({ item, solution }: Fields, size: unknown) => {
		const held = item === "solution" ? (idOf(solution) ?? standard) : null;
		return nameOf(String(item), isSized({ item }) ? readMl(size) : null, held);
	};
	const names = items.map((item) => named(item, item.size));
	const lacking = [...used(root, kinds, standard)].filter(([name]) => !names.includes(name));
	return [
		...lacking.map(([name, by]) =>
			found(["stores"], `every item that is used, among them ${name} (${by})`, "none of it"),
		),
		...items.flatMap((item, i) => {
			const faults: Found[] = [];
			const fault = (key: string, expected: string, came: string) =>
				faults.push(found(["stores", i, key], expected, came));
			if (isSized(item) && item.size === undefined) fault("size", 'a size such as "1000 mL"', "nothing");
			const without = !isSized(item)
				? ["size", "solution", "substitute"]
				: item.item === "canister"
					? ["solution"]
					: [];
			for (const key of without)
				if (item[key] !== undefined) fault(key, `no ${key} with ${String(item.item)}`, received(item[key]));
			if (names.indexOf(names[i]) < i) faults.push(found(["stores", i], "each item once", `${names[i]} again`));
			if (item.price !== undefined && asMap(root.prices).currency === undefined)
				fault("price", "a currency for it, under prices:", "none");
			const { reorder, upTo, substitute } = item;
			if (typeof upTo === "number" && typeof reorder !== "number") fault("upTo", "a reorder point beside it", "none");
			if (typeof upTo === "number" && typeof reorder === "number" && upTo <= reorder)
				fault("upTo", `more than the reorder point, ${reorder}`, String(upTo));
			if (substitute !== undefined && isSized(item)) {
				const other = names.indexOf(named(item, substitute));
				if (other < 0 || other === i)
					fault("substitute", "the size of another item of the stores", received(substitute));
			}
			return faults;
		}),
	];
}
