import { byDefault, defaults } from "../../meaning/defaults.ts";
import { record } from "../../reading/leaf.ts";
import { type Found, found, type Keys, received } from "../../reading/problem.ts";
import { volume } from "../../reading/quantity.ts";
import { type Fields, read } from "../../reading/raw.ts";

/** Size of a canister, or of a bag of solution. */
export const size = (description: string) => volume(description, "from 50 mL to 20 L", "1000 mL");
const content = (description: string, example: string) => volume(description, "from 0 mL to 20 L", example);

/** Canister and source of a therapy unit, and what they hold when the day begins. */
export const unitParts = {
	canister: size("size of the canister"),
	holds: content("what the canister holds at the start", "120 mL"),
	source: size("size of a source of solution"),
	left: content("what is left in the source of solution at the start; full where it is left out", "640 mL"),
};

export const unit = record("a therapy unit", {
	canister: byDefault(unitParts.canister, "dressings[].unit.canister"),
	holds: byDefault(unitParts.holds, "dressings[].unit.holds"),
	source: byDefault(unitParts.source, "dressings[].unit.source"),
	left: unitParts.left.optional(),
})
	.prefault({})
	.describe("what the therapy unit takes, and what hangs on it at the start");

/** What hangs on a unit, as it is written: of the stated size, or of that by default. */
export const writtenSize = (unit: Fields, part: "canister" | "source"): unknown =>
	unit[part] ?? defaults[`dressings[].unit.${part}`].write;

/** A canister that hangs at the start has room, and no more is left in a source than it takes. */
export function crossUnit(unit: Fields, at: Keys): Found[] {
	const [canisterMl, sourceMl] = (["canister", "source"] as const).map((part) =>
		read(unitParts[part], writtenSize(unit, part)),
	);
	const holdsMl = read(unitParts.holds, unit.holds);
	const leftMl = read(unitParts.left, unit.left);
	const faults: Found[] = [];
	const room = `less than the canister takes (${canisterMl} mL): a full one stops the pump before the day begins, so change it first`;
	if (canisterMl !== undefined && holdsMl !== undefined && holdsMl >= canisterMl)
		faults.push(found([...at, "holds"], room, received(unit.holds)));
	if (sourceMl !== undefined && leftMl !== undefined && leftMl > sourceMl)
		faults.push(found([...at, "left"], `at most what the source takes (${sourceMl} mL)`, received(unit.left)));
	return faults;
}
