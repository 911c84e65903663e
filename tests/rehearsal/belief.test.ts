import { describe, expect, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { Belief } from "../../src/rehearsal/belief/belief.ts";
import { courseBank } from "../../src/rehearsal/belief/course-bank.ts";
import { Bedside } from "../../src/rehearsal/shift/bedside.ts";
import { drawCauses, hazardsOf } from "../../src/rehearsal/shift/draw-case.ts";
import { type Finding, findingAt } from "../../src/rehearsal/shift/findings.ts";
import { shiftOf } from "../../src/rehearsal/shift/shift.ts";
import { type Shown, shownAt } from "../../src/rehearsal/shift/view.ts";
import { type CauseName, causeNames, type Place } from "../../src/vocabulary/index.ts";
import { hiding } from "./cases.ts";

// A shift whose dressing clogs, is moved and is turned, so that every kind of cause has a chance.
const of = hiding([], { transferMin: 130 }, {});
const heavy = { ...of, dressings: of.dressings.map((dressing) => ({ ...dressing, slough: "heavy" as const })) };
const cases = 20_000;
const size = { perCause: 600, pairs: 3000 };
const looks: readonly Place[] = ["suction-line", "port", "edge", "unit", "canister"];
const lookMin = 3;

interface Seen {
	readonly shown: Shown;
	readonly finding: Finding | null;
	/** What somebody has to see to now. */
	readonly wrong: ReadonlySet<CauseName>;
}

/** What one case shows at `atMin`, and at each look after it: the case is drawn at random and played on its own. */
function observe(bedside: Bedside, atMin: number): Seen[] {
	return [null, ...looks].map((place, index) => {
		bedside.advance(atMin + lookMin * index);
		return {
			shown: shownAt(bedside),
			finding: place === null ? null : findingAt(place, bedside),
			wrong: new Set(
				bedside.troubles
					.filter(({ cause, onsetMin, endMin }) =>
						// No clinician comes in these cases: what has bled, stopped or not, stays to be seen to.
						cause === "bleeding" ? onsetMin !== null : onsetMin !== null && endMin === null,
					)
					.map(({ cause }) => cause),
			),
		};
	});
}

const key = ({ shown, finding }: Seen) => `${shown.signs}/${shown.depth === "held"}/${finding?.code}`;

describe("what may be believed agrees with a count over 20,000 drawn cases", () => {
	const hazards = hazardsOf(heavy);
	const bedside = new Bedside(shiftOf(heavy));
	const times = [150, 300, 420];
	const counted = times.map(() => new Map<string, { seen: Seen; hits: Map<string, number>; n: number }>());
	for (let i = 0; i < cases; i++) {
		const stream = new Substream(`case ${i}`, "count", 0);
		bedside.begin(drawCauses(hazards, () => stream.uniform()));
		times.forEach((atMin, t) => {
			let history = "";
			for (const seen of observe(bedside, atMin)) {
				history += `|${key(seen)}`;
				const entry = counted[t].get(history) ?? { seen, hits: new Map<string, number>(), n: 0 };
				entry.n++;
				const names = seen.wrong.size === 0 ? ["nothing"] : [...seen.wrong];
				for (const name of names) entry.hits.set(name, (entry.hits.get(name) ?? 0) + 1);
				counted[t].set(history, entry);
			}
		});
	}
	const bank = courseBank(heavy, size);

	/** The weight of one course of the kind that has the heaviest. */
	const grain = Math.max(
		...bank.slice(1).map(({ weight }) => weight), // the first is the one in which nothing is wrong
	);

	/** The belief after a history, and whether the bank knew it; histories are prefixes of each other. */
	function believe(t: number, history: string): Belief | null {
		const belief = new Belief(bank);
		const parts = history.split("|").slice(1);
		for (let i = 1; i <= parts.length; i++) {
			const entry = counted[t].get(`|${parts.slice(0, i).join("|")}`);
			if (entry === undefined) return null;
			if (!belief.see(entry.seen.shown)) return null;
			const { finding, shown } = entry.seen;
			if (finding !== null && !belief.find(finding, shown.atMin)) return null;
		}
		return belief;
	}

	test.each(times.map((atMin, t) => [atMin, t]))("in minute %i of the shift, before and after each look", (_, t) => {
		let [compared, worst, looked, where] = [0, 0, 0, ""];
		for (const [history, { seen, hits, n }] of counted[t]) {
			if (n < 40) continue;
			const belief = believe(t, history);
			expect(belief, history).not.toBeNull();
			if (belief === null) continue;
			const { causes, nothing } = belief.at(seen.shown.atMin);
			const believed = new Map<string, number>([
				...causes.map(({ cause, probability }) => [cause, probability] as const),
				["nothing", nothing],
			]);
			for (const name of [...causeNames, "nothing"]) {
				const p = believed.get(name) ?? 0;
				const share = (hits.get(name) ?? 0) / n;
				// Both are estimates: the count of n cases (half a case is the least doubt), and the bank, in which one
				// course more or less of a kind makes a grain.
				const ofCount = Math.max(p * (1 - p), 0.5 / n) / n;
				const ofBank = Math.max((p * (1 - p)) / belief.effectiveCourses, (grain / belief.ofAllSeen) ** 2);
				const doubt = Math.sqrt(ofCount + ofBank);
				const z = Math.abs(share - p) / doubt;
				if (z > worst) [worst, where] = [z, `${name} after ${history}: ${p} believed, ${share} of ${n}`];
				compared++;
			}
			if (history.split("|").length > 2) looked++;
		}
		expect(looked).toBeGreaterThan(15);
		expect(compared).toBeGreaterThan(150);
		// The greatest of some hundreds of standard normals: 4.5 is passed once in 500 such tests.
		expect(worst, where).toBeLessThan(4.5);
	});

	test("a bank with a wrong rate would be noticed", () => {
		const wrong = { ...heavy, constants: { ...heavy.constants, "kink.suctionShare": 0.5 } };
		const belief = new Belief(courseBank(wrong, size));
		const right = new Belief(bank);
		const p = (of: Belief) => of.at(420).causes.find(({ cause }) => cause === "suction-line-kinked")?.probability ?? 0;
		const doubt = Math.sqrt(p(right) / cases);
		expect(Math.abs(p(right) - p(belief)) / doubt).toBeGreaterThan(4.5);
	});
});
