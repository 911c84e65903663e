export interface ResponseCurveData {
	readonly title: string;
	/** What is varied. */
	readonly x: {
		/** 'Dwell'. */
		readonly label: string;
		readonly unit: string;
		/** The value of the reader's own regimen; null where it has none. */
		readonly current: number | null;
		/** That of the site's usual regimen. */
		readonly usual?: number | null;
		/** True where values are minutes, so that ticks fall on hours and quarters of them. */
		readonly inMinutes?: boolean;
		/** How a value on the axis is written; by default a plain number. */
		readonly words?: (value: number) => string;
	};
	/** One panel a measure, from the top. */
	readonly curves: readonly ResponseCurvePanel[];
}

export interface ResponseCurvePanel {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	/** Any order. */
	readonly points: readonly {
		readonly x: number;
		readonly mean: number;
		/** 95 % interval of the mean; null where none could be given. */
		readonly low: number | null;
		readonly high: number | null;
	}[];
}
