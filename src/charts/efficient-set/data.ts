export interface EfficientSetData {
	readonly title: string;
	readonly x: EfficientSetMeasure;
	readonly y: EfficientSetMeasure;
	/** A third measure, written beside the points of the set. */
	readonly third?: EfficientSetMeasure;
	readonly points: readonly EfficientSetPoint[];
	/** What the crossed-out points break: 'night calls under 0.5'. */
	readonly constraints?: string;
}

export interface EfficientSetMeasure {
	/** 'Washes'. */
	readonly label: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	readonly decimals: number;
	readonly better: "lower" | "higher";
}

export interface EfficientSetPoint {
	/** The regimen in few words: '5 min, 2 h'. */
	readonly label: string;
	readonly x: number;
	readonly y: number;
	readonly third?: number;
	/** In the set: no other point betters it in one measure without being worse in another. */
	readonly efficient: boolean;
	readonly current?: boolean;
	readonly usual?: boolean;
	/** Breaks a constraint. */
	readonly broken?: boolean;
}
