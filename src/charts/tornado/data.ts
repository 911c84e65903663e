export interface TornadoData {
	/** 'Washes a day, short − long: what the difference rests on'. */
	readonly title: string;
	/** Names of the regimens; the difference is a − b. */
	readonly a: string;
	readonly b: string;
	/** 'mL', 'a day'; '' for a bare count. */
	readonly unit: string;
	/** Most digits after the point of its numbers; by default three figures of the largest. */
	readonly decimals?: number;
	/** The difference with every assumption as it is. */
	readonly base: number;
	/** Any order; they are sorted by reach, the widest at the top. */
	readonly rows: readonly TornadoRow[];
	/** How many are drawn at most, those that turn the verdict first kept; 12 by default. The rest are counted in words. */
	readonly top?: number;
}

export interface TornadoRow {
	/** What is assumed: 'rate of breaches of a dry seal'. */
	readonly label: string;
	/** Its value in words: '0.004 /h'. */
	readonly value: string;
	/** The difference at half and at twice the value; null where that setting cannot be run. */
	readonly half: number | null;
	readonly twice: number | null;
	/** The verdict is another one at half or at twice. */
	readonly turns: boolean;
}
