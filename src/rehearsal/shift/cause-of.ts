import type { CauseName } from "../../vocabulary/index.ts";
import type { Cause } from "../causes/cause.ts";
import { causes } from "../causes/causes.ts";

const named = new Map(causes.map((cause) => [cause.name, cause]));

export function causeOf(name: CauseName): Cause {
	const cause = named.get(name);
	if (cause === undefined) throw new RangeError(`no cause is called ${name}`);
	return cause;
}
