import { constantFacts, constantNames } from "../physics/index.ts";
import { defaults } from "./defaults.ts";
import { filledDefaults, writtenDefault } from "./fill.ts";
import { asList, asMap } from "./lenient.ts";
import { laidOver, resolveRegimen } from "./merge.ts";
import { pathText } from "./path.ts";
import {
	constantsOf,
	foamVolumeMl,
	regimensOf,
	resolveCare,
	resolveDressing,
	weekdayOf,
} from "./resolve.ts";
import type { Dressing } from "./scenario.ts";
import { clockMin } from "./schema-clock.ts";
import { dressing as dressingSchema } from "./schema-dressing.ts";
import type { WardFile } from "./schema-ward.ts";
import {
	type Policy,
	type StoreItem,
	type TherapyLength,
	type WardScenario,
	weekdays,
} from "./ward.ts";

/** A sound file as the ward that it means. `data` is the file with every dressing written out. */
export function resolveWard(file: WardFile, data: unknown): WardScenario {
	const constants = constantsOf(file);
	const { ward } = file;
	const written = asList(asMap(asMap(data).ward).kinds).map((raw) => {
		const { share: _, solution: __, ...worn } = asMap(raw);
		return dressingSchema.parse(worn);
	});
	const kinds = ward.kinds.map((kind, i) => ({
		id: kind.id,
		share: kind.share,
		dressing: {
			...resolveDressing(written[i], constants),
			canisterHoldsMl: 0,
			sourceLeftMl: null,
		},
		solution: kind.solution ?? file.solution.name,
	}));
	const place = (id: string) => kinds.findIndex((kind) => kind.id === id);
	const policies = Object.entries(file.compare).map(
		([name, { dressing: named, canister, source, ...patch }]): Policy => ({
			name,
			dressings: kinds.map(({ id, dressing }, i): Dressing => {
				if (named !== undefined && named !== id) return dressing;
				const fills = dressing.regimens.some(({ fillMl }) => fillMl > 0);
				const regimens = laidOver(fills ? patch : {}, regimensOf(written[i]));
				return {
					...dressing,
					canisterMl: canister ?? dressing.canisterMl,
					sourceMl: source ?? dressing.sourceMl,
					regimens: regimens.map((regimen) =>
						resolveRegimen(regimen, foamVolumeMl(written[i]), constants),
					),
				};
			}),
		}),
	);
	return {
		title: file.title,
		seed: file.seed,
		start: file.start,
		startClockMin: clockMin(file.start.slice(11)) ?? 0,
		startWeekday: weekdayOf(file.start),
		horizonMin: file.horizon,
		warmUpMin: ward.warmUp,
		replications: file.replications,
		chance: file.chance,
		kinds,
		units: ward.units === "unlimited" ? null : ward.units,
		full: ward.full,
		arrivals:
			ward.arrivals === undefined
				? null
				: {
						perDay: ward.arrivals.rate,
						factors: weekdays.map((day) => ward.arrivals?.weekdays[day] ?? 1),
					},
		length: ward.length === undefined ? null : lengthOf(ward.length),
		census: kinds.map(({ id }) => ward.census[id] ?? 0),
		beds: ward.beds.map(({ id, kind, start, end }) => ({
			id,
			kind: place(kind),
			startMin: start,
			endMin: end,
		})),
		care: resolveCare({ ...file.care, nurses: "unlimited" }),
		shifts: shiftsOf(file.care.nurses),
		stores: storesOf(file),
		policies,
		solution: {
			name: file.solution.name,
			named: file.solution.name !== defaults["solution.name"].write,
		},
		prices: file.prices ?? null,
		constants,
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

function lengthOf(
	length: NonNullable<WardFile["ward"]["length"]>,
): TherapyLength {
	if (Array.isArray(length))
		return {
			form: "table",
			rows: length.map((row) => ({ lengthMin: row.length, share: row.share })),
		};
	return "mean" in length
		? { form: "exponential", meanMin: length.mean }
		: { form: "lognormal", medianMin: length.median, spread: length.spread };
}

function shiftsOf(nurses: WardFile["care"]["nurses"]): WardScenario["shifts"] {
	if (Array.isArray(nurses))
		return nurses
			.map(({ from, nurses: count }) => ({ fromClockMin: from, nurses: count }))
			.sort((a, b) => a.fromClockMin - b.fromClockMin);
	const count = nurses === "unlimited" ? null : nurses;
	// Day and night are the shifts of a ward that names none.
	return [
		{ fromClockMin: 7 * 60, nurses: count },
		{ fromClockMin: 19 * 60, nurses: count },
	];
}

const plainNames = {
	canister: "canister",
	kit: "dressing kit",
	port: "suction port",
	line: "fill line",
} as const;

function storesOf(file: WardFile): StoreItem[] {
	const solutionOf = (item: WardFile["stores"][number]) =>
		item.item === "solution" ? (item.solution ?? file.solution.name) : null;
	return file.stores.map((item): StoreItem => {
		const sizeMl = item.size ?? null;
		const solution = solutionOf(item);
		const lead =
			item.item === "solution" ? String(solution) : plainNames[item.item];
		const other = file.stores.findIndex(
			(one) =>
				one.item === item.item &&
				solutionOf(one) === solution &&
				one.size === item.substitute,
		);
		return {
			name: sizeMl === null ? lead : `${lead} ${sizeMl} mL`,
			kind: item.item,
			sizeMl,
			solution,
			stock: item.stock === "unlimited" ? null : item.stock,
			pack: item.pack,
			price: item.price ?? null,
			weightG: item.weight ?? null,
			shelfMin: item.shelf === "unlimited" ? null : item.shelf,
			lead: { medianMin: item.lead, spread: item.leadSpread },
			orderDays:
				item.orderDays === "any"
					? null
					: [
							...new Set(item.orderDays.map((day) => weekdays.indexOf(day))),
						].sort((a, b) => a - b),
			cutOffClockMin: item.cutOff,
			reviewMin: item.review === "continuous" ? null : item.review,
			reorder: item.reorder ?? null,
			upTo:
				item.reorder === undefined
					? null
					: (item.upTo ?? item.reorder + item.pack),
			service: item.service,
			substitute: item.substitute === undefined ? null : other,
		};
	});
}
