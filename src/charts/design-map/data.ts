/** A grid of regimens: columns along one axis, rows along the other, both named by what is varied. */
export interface DesignMapData {
	readonly title: string;
	/** 'dwell'; values in words from left to right: '5 min', '10 min'. */
	readonly x: DesignMapAxis;
	/** 'suction period'; values from the bottom up. */
	readonly y: DesignMapAxis;
	/** In the order of drawing: those of one measure follow each other and share their scale of shades. */
	readonly maps: readonly DesignMapPanel[];
	/** Only these maps are drawn, first and last but one; shades are those of all. */
	readonly only?: readonly [number, number];
	/** Names of the two marked regimens for the key; by default 'the current regimen' and 'the site's usual regimen'. */
	readonly currentName?: string;
	readonly usualName?: string;
	/** What the crossed-out cells break: 'night calls under 0.5'. */
	readonly constraints?: string;
	/** What is best in the efficient cells: 'washes and leaks'. */
	readonly efficientIn?: string;
}

interface DesignMapAxis {
	readonly label: string;
	readonly values: readonly string[];
}

/** One heat map: one measure, at one setting of whatever else is varied. */
export interface DesignMapPanel {
	/** 'Washes'; panels of the same name share their scale. */
	readonly measure: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	/** Digits after the point in the cells. */
	readonly decimals: number;
	/** 'fill 50 mL, depth −125 mmHg'; '' where nothing else is varied. */
	readonly facet: string;
	/** Any order; cells may be missing. */
	readonly cells: readonly DesignMapCell[];
}

export interface DesignMapCell {
	/** Places in the values of the axes, from 0. */
	readonly x: number;
	readonly y: number;
	/** Null where it could not be worked out. */
	readonly value: number | null;
	/** The regimen that the reader has now: a heavy outline with a dot. */
	readonly current?: boolean;
	/** The site's usual one: a diamond. */
	readonly usual?: boolean;
	/** Outside the usual range of the tissue: hatched. */
	readonly outside?: boolean;
	/** Breaks a constraint: crossed out. */
	readonly broken?: boolean;
	/** In the efficient set: a ticked corner. */
	readonly efficient?: boolean;
}
