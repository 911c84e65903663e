import { expect, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { courseBank, usualBank } from "../../src/rehearsal/belief/course-bank.ts";
import { OrderlySearch, Player, playOrderly } from "../../src/rehearsal/search/orderly.ts";
import { drawCauses, hazardsOf } from "../../src/rehearsal/shift/draw-case.ts";
import { addTo, halfWidth, noMoments, variance } from "../../src/statistics/index.ts";
import { hiding } from "./cases.ts";

/** Looks in an order drawn from a stream. */
class RandomSearch extends OrderlySearch {
	readonly #stream: Substream;

	constructor(player: Player, stream: Substream) {
		super([], player.shown());
		this.#stream = stream;
		this.thorough = true;
	}

	override choose() {
		return [...this.left][Math.floor(this.#stream.uniform() * this.left.size)] ?? null;
	}

	override found() {}
}

test("over 1,000 drawn cases with an alarm an orderly search mends sooner on average than a random one", () => {
	const of = hiding([], { transferMin: 130 });
	const hazards = hazardsOf(of);
	const courses = courseBank(of);
	const sooner = noMoments();
	const [orderly, random] = [noMoments(), noMoments()];
	for (let i = 0, n = 0; n < 1000; i++) {
		const stream = new Substream(`drawn ${i}`, "search", 0);
		const placed = drawCauses(hazards, () => stream.uniform());
		const [inOrder] = playOrderly(of, placed, () => courses, 1);
		if (inOrder?.sign !== true) continue; // nothing calls for a search
		n++;
		const player = new Player(of, placed);
		player.seek(true);
		const atRandom = player.play(new RandomSearch(player, new Substream(`drawn ${i}`, "order of looks", 0)));
		expect(atRandom.startMin).toBe(inOrder.startMin);
		const minutes = ({ mendedMin, startMin }: typeof inOrder) => (mendedMin ?? of.horizonMin) - startMin;
		addTo(orderly, minutes(inOrder));
		addTo(random, minutes(atRandom));
		addTo(sooner, minutes(atRandom) - minutes(inOrder));
	}
	const half = halfWidth(sooner) ?? Number.NaN;
	console.info(
		`minutes from the alarm to its end: in order ${orderly.mean.toFixed(2)}, at random ${random.mean.toFixed(2)}; sooner by ${sooner.mean.toFixed(2)} ± ${half.toFixed(2)} (95 %, n = ${sooner.count}, sd ${Math.sqrt(variance(sooner)).toFixed(2)})`,
	);
	expect(sooner.mean - half).toBeGreaterThan(0);
});

test("the search looks first where a minute is likeliest to show the cause, and each finding moves it on", () => {
	const of = hiding([{ cause: "suction-line-kinked", atMin: 200, withinMin: 0, lastsMin: 4 }], { transferMin: 130 });
	const [hidden] = of.rehearsal.hides;
	const [search, more] = playOrderly(of, [{ ...hidden, onsetMin: 200 }], (deeds) => courseBank(of, usualBank, deeds));
	expect(more).toBeUndefined();
	const { steps = [], deeds = [], mendedMin = null } = search ?? {};
	expect(steps[0]?.place).toBe("suction-line"); // likely, and a minute
	for (const { chance, code, after, place } of steps) {
		expect(chance).toBeGreaterThan(0);
		expect(code).toBe(0);
		if (place === "suction-line")
			expect(after.causes.find(({ cause }) => cause === "suction-line-kinked")).toBeUndefined();
	}
	// The cause is gone: nothing is found, the alarm is cleared, nothing is changed.
	expect(deeds.map(({ act }) => act)).toEqual(["resume"]);
	expect(mendedMin).not.toBeNull();
});

test("a cause behind another is searched for in its turn, and what has been done is reckoned with", () => {
	const of = hiding([
		{ cause: "suction-line-kinked", atMin: 85, withinMin: 0, lastsMin: Number.POSITIVE_INFINITY },
		{ cause: "seal-breach", atMin: 86, withinMin: 0, size: 0.04 },
	]);
	const searches = playOrderly(
		of,
		of.rehearsal.hides.map((hidden) => ({ ...hidden, onsetMin: "atMin" in hidden ? hidden.atMin : 0 })),
		(deeds) => courseBank(of, usualBank, deeds),
	);
	expect(searches.map(({ deeds }) => deeds.map(({ act }) => act))).toEqual([["free-suction-line"], ["patch-edge"]]);
	expect(searches[1]?.steps[0]?.place).toBe("edge");
	expect(searches[1]?.steps[0]?.before.causes[0]?.cause).toBe("seal-breach");
});
