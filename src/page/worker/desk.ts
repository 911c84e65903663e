/** What an order's work is given: how to answer, and whether a newer order has come meanwhile. */
export interface Desk<A> {
	/** Sends an answer that is not the last. */
	readonly say: (answer: A) => void;
	/** Lets newer orders be heard; false where one has come and this one is of no use any more. */
	readonly goOn: () => Promise<boolean>;
}

/** There is nothing to run: the text has problems, or fewer than two regimens to compare. */
export interface Nothing {
	readonly kind: "nothing";
}

/** A fault of the program, or a rehearsal that cannot be had. */
export interface Fault {
	readonly kind: "fault";
	readonly words: string;
}

/** Replications of a ward that are done, or assumptions that have been tried. */
export interface Progress {
	readonly kind: "progress";
	readonly done: number;
	readonly of: number;
}
