import { Histogram, InBlockOrder, mergeEach, VectorMoments } from "../../statistics/index.ts";
import { pairsOf, type Study, type StudyPart, type StudyTask } from "./study.ts";

/** What a group comes to over all its replications. */
export interface GroupSums {
	readonly arms: readonly VectorMoments[];
	readonly pairs: readonly PairSums[];
	/** By arm, then value; empty where the study is not detailed. */
	readonly armCounts: readonly (readonly Histogram[])[];
}

export interface PairSums {
	/** Places in the group. */
	readonly places: readonly [number, number];
	readonly moments: VectorMoments;
	readonly higher: Float64Array;
	readonly lower: Float64Array;
	/** By value; empty where the study is not detailed. */
	readonly counts: readonly Histogram[];
}

/** Blocks that a task of a study holds at the most. */
const studyTaskBlocks = 10;

/** The tasks of the blocks `first` … `last` − 1 of every group. */
export function studyTasks(study: Study, first: number, last: number): StudyTask[] {
	return study.groups.flatMap((_, group) => {
		const tasks: StudyTask[] = [];
		for (let at = first; at < last; at += studyTaskBlocks)
			tasks.push({ group, first: at, last: Math.min(at + studyTaskBlocks, last) });
		return tasks;
	});
}

/** Gathers the parts of a study, in whatever order they come; sums are merged by block. Throws RangeError where one is missing or comes twice. */
export class StudyGathering {
	readonly #groups: GroupGathering[];

	constructor(study: Study) {
		this.#groups = study.groups.map((group, i) => new GroupGathering(group.length, i));
	}

	add(part: StudyPart): void {
		const { group, first, last } = part.task;
		this.#groups[group].parts.add(first, last - first, part);
	}

	/** Replications of every group so far. */
	get replications(): number {
		return this.#groups[0].sums.arms[0]?.count ?? 0;
	}

	/** Throws RangeError where blocks below `blocks` are missing. */
	groups(blocks: number): GroupSums[] {
		return this.#groups.map(({ parts, sums }) => {
			parts.complete(blocks);
			return sums;
		});
	}
}

class GroupGathering {
	readonly parts: InBlockOrder<StudyPart>;
	readonly sums: { arms: VectorMoments[]; pairs: PairSums[]; armCounts: Histogram[][] } = {
		arms: [],
		pairs: [],
		armCounts: [],
	};
	readonly #places: readonly (readonly [number, number])[];

	constructor(size: number, group: number) {
		this.#places = pairsOf(size);
		this.parts = new InBlockOrder((part) => this.#take(part), ` of group ${group}`);
	}

	#take(part: StudyPart): void {
		const { sums } = this;
		if (sums.arms.length === 0) this.#begin(part);
		for (const block of part.blocks) {
			mergeEach(sums.arms, block.arms);
			block.pairs.forEach((moments, pair) => {
				sums.pairs[pair].moments.merge(moments);
				addAll(sums.pairs[pair].higher, block.higher[pair]);
				addAll(sums.pairs[pair].lower, block.lower[pair]);
			});
		}
		part.armCounts.forEach((counts, arm) => {
			mergeEach(sums.armCounts[arm], counts);
		});
		part.pairCounts.forEach((counts, pair) => {
			mergeEach(sums.pairs[pair].counts, counts);
		});
	}

	#begin(part: StudyPart): void {
		const { arms } = part.blocks[0];
		const length = arms[0].mean.length;
		const empty = (counts: StudyPart["armCounts"][number] | undefined) =>
			(counts ?? []).map(({ width }) => new Histogram(width));
		this.sums.arms = arms.map(() => new VectorMoments(length));
		this.sums.armCounts = part.armCounts.map(empty);
		this.sums.pairs = this.#places.map((places, pair) => ({
			places,
			moments: new VectorMoments(length),
			higher: new Float64Array(length),
			lower: new Float64Array(length),
			counts: empty(part.pairCounts[pair]),
		}));
	}
}

function addAll(into: Float64Array, values: readonly number[]): void {
	for (let i = 0; i < into.length; i++) into[i] += values[i];
}
