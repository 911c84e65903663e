import {
	type ConstantName,
	type Constants,
	constantFacts,
	constantNames,
	constantsWith,
} from "../physics/index.ts";
import { defaults } from "./defaults.ts";
import { filledDefaults, writtenDefault } from "./fill.ts";
import {
	laidOver,
	type PartialRegimenFile,
	type RegimenFile,
	resolveRegimen,
} from "./merge.ts";
import { pathText } from "./path.ts";
import { resolveRehearsal } from "./resolve-rehearsal.ts";
import type {
	Care,
	Dressing,
	Happening,
	RegimenPatch,
	Scenario,
	SweepGrid,
} from "./scenario.ts";
import type { ScenarioFile } from "./schema.ts";
import { clockMin } from "./schema-clock.ts";

type DressingFile = ScenarioFile["dressings"][number];

/** A sound file as the scenario that it means. `data` is the raw file, for the list of what was left to the defaults. */
export function resolve(file: ScenarioFile, data: unknown): Scenario {
	const constants = constantsOf(file);
	return {
		title: file.title,
		seed: file.seed,
		start: file.start,
		startClockMin: clockMin(file.start.slice(11)) ?? 0,
		horizonMin: file.horizon,
		replications: file.replications,
		chance: file.chance,
		dressings: file.dressings.map((dressing) =>
			resolveDressing(dressing, constants),
		),
		care: resolveCare(file.care),
		happenings: file.happenings.map(resolveHappening),
		...(file.rehearsal === undefined
			? {}
			: { rehearsal: resolveRehearsal(file.rehearsal, file.dressings) }),
		compare: Object.entries(file.compare).map(
			([name, patch]): RegimenPatch => ({
				name,
				dressing: patch.dressing ?? null,
				canisterMl: patch.canister ?? null,
				sourceMl: patch.source ?? null,
				canisterHoldsMl: patch.holds ?? null,
				sourceLeftMl: patch.left ?? null,
				regimens: regimensWith(
					file,
					constants,
					({ id }) => patch.dressing === undefined || patch.dressing === id,
					patch,
				),
			}),
		),
		usual:
			file.usual === undefined
				? null
				: regimensWith(file, constants, () => true, file.usual),
		sweep: file.sweep === undefined ? null : resolveSweep(file.sweep),
		home:
			file.home === undefined
				? null
				: { fromMin: file.home.from, forMin: file.home.for },
		constants,
		solution: {
			name: file.solution.name,
			named: file.solution.name !== defaults["solution.name"].write,
		},
		prices: file.prices === undefined ? null : pricesOf(file.prices),
		packs: given(file.packs),
		defaulted: filledDefaults(data).map((filled) => ({
			path: pathText(filled.keys),
			value: writtenDefault(filled.default),
			provenance: filled.default.provenance,
			source: filled.default.source,
		})),
		overridden: constantNames.filter(
			(name) => constants[name] !== constantFacts[name].value,
		),
	};
}

/** The regimens of every dressing, a partial one laid over those that are meant, by id. */
const regimensWith = (
	{ dressings }: ScenarioFile,
	constants: Constants,
	isMeant: (dressing: DressingFile) => boolean,
	patch: Partial<PartialRegimenFile>,
): RegimenPatch["regimens"] =>
	Object.fromEntries(
		dressings.map((dressing) => [
			dressing.id,
			laidOver(isMeant(dressing) ? patch : {}, regimensOf(dressing)).map(
				(regimen) => resolveRegimen(regimen, foamVolumeMl(dressing), constants),
			),
		]),
	);

/** The constants with the file's overrides; `solution.hang` is another way to write `source.hang`. */
export function constantsOf(
	file: Pick<ScenarioFile, "assumptions" | "solution">,
): Constants {
	const overrides: Partial<Record<ConstantName, number>> = given(
		file.assumptions,
	);
	// solution.hang is in minutes, the constant in hours
	return constantsWith(
		file.solution.hang === undefined
			? overrides
			: { ...overrides, "source.hang": file.solution.hang / 60 },
	);
}

export function regimensOf({
	regimen,
}: Pick<DressingFile, "regimen">): readonly RegimenFile[] {
	return Array.isArray(regimen) ? regimen : [regimen];
}

/** Sum of area × thickness: cm² · cm = mL. */
export const foamVolumeMl = ({ foam }: Pick<DressingFile, "foam">) =>
	foam.reduce((sum, { area, thickness }) => sum + area * thickness, 0);

export function resolveDressing(
	file: DressingFile,
	constants: Constants,
): Dressing {
	const { wound, unit } = file;
	const volumeMl = foamVolumeMl(file);
	return {
		id: file.id,
		patient: file.patient,
		tissue: wound.tissue,
		areaCm2: wound.area ?? null,
		exudateMlPerDay:
			"mlPerDay" in wound.exudate
				? wound.exudate.mlPerDay
				: wound.exudate.mlPerCm2PerDay * (wound.area ?? 0),
		slough: wound.slough,
		difficulty: wound.difficulty,
		outflow:
			wound.outflow === "none"
				? null
				: {
						totalMlPerDay: wound.outflow.total,
						burstsPerDay: wound.outflow.bursts,
					},
		foam: file.foam.map(({ area, thickness }) => ({
			areaCm2: area,
			thicknessCm: thickness,
		})),
		foamVolumeMl: volumeMl,
		regimens: regimensOf(file).map((regimen) =>
			resolveRegimen(regimen, volumeMl, constants),
		),
		canisterMl: unit.canister,
		sourceMl: unit.source,
		canisterHoldsMl: unit.holds,
		sourceLeftMl:
			unit.left !== undefined && unit.left < unit.source ? unit.left : null,
		ageMin: file.age,
	};
}

export function resolveCare(file: ScenarioFile["care"]): Care {
	const { response, dressingChange: change } = file;
	return {
		response: {
			dayMin: response.day,
			nightMin: response.night,
			spread: response.spread,
		},
		roundsClockMin: [...file.rounds].sort((a, b) => a - b),
		turningMin: file.turning === "none" ? null : file.turning,
		nurses: file.nurses === "unlimited" ? null : file.nurses,
		dressingChange:
			change === "none"
				? null
				: Array.isArray(change)
					? { atMin: [...change].sort((a, b) => a - b) }
					: { everyMin: change },
		avoid: file.avoid,
	};
}

function resolveSweep({
	dressing,
	...axes
}: NonNullable<ScenarioFile["sweep"]>): SweepGrid {
	return { dressing: dressing ?? null, axes: given(axes) };
}

function resolveHappening({
	at: atMin,
	dressing,
	what,
	size = 0,
	share = 0,
	for: forMin = 0,
	volume: volumeMl = 0,
}: ScenarioFile["happenings"][number]): Happening {
	switch (what) {
		case "breach":
			return { atMin, dressing, what, size };
		case "clog":
			return { atMin, dressing, what, share };
		case "off":
			return { atMin, dressing, what, forMin };
		case "bleed":
			return { atMin, dressing, what, volumeMl, forMin };
		default:
			return { atMin, dressing, what };
	}
}

function pricesOf({
	currency,
	asOf,
	...items
}: NonNullable<ScenarioFile["prices"]>): NonNullable<Scenario["prices"]> {
	return { currency, asOf, items: given(items) };
}

/** Today as a weekday: 0 is Monday. */
export function weekdayOf(start: string): number {
	return (new Date(`${start.slice(0, 10)}T00:00:00Z`).getUTCDay() + 6) % 7;
}

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** Without the keys that hold nothing. */
function given<T extends object>(map: T): Given<T> {
	return Object.fromEntries(
		Object.entries(map).filter(([, value]) => value !== undefined),
	) as Given<T>; // fromEntries forgets the keys
}
