import type { KeyItem } from "./chart-key.ts";
import type { EfficientSetData } from "./efficient-set.ts";
import { efficientMark, paleMark } from "./efficient-set-marks.ts";
import {
	currentMark,
	currentWords,
	usualMark,
	usualWords,
} from "./regimen-mark.ts";

const nameless = { label: "" };

/** What the marks of the scatter mean, those that occur. */
export function efficientKey(
	data: EfficientSetData,
	document: Document,
): KeyItem[] {
	const has = (
		mark: (point: EfficientSetData["points"][number]) => boolean | undefined,
	): boolean => data.points.some((point) => mark(point) === true);
	const items: (KeyItem | null)[] = [
		has((point) => point.efficient)
			? {
					words:
						"no other regimen betters it in one measure without being worse in another",
					sample: (x, y) => efficientMark(document, { x, y }, nameless),
				}
			: null,
		has((point) => !point.efficient && !point.broken)
			? {
					words: "another regimen is better all round",
					sample: (x, y) => paleMark(document, { x, y }, nameless),
				}
			: null,
		has((point) => !point.efficient && point.broken)
			? {
					words:
						data.constraints === undefined
							? "breaks a limit"
							: `does not keep: ${data.constraints}`,
					sample: (x, y) =>
						paleMark(document, { x, y }, { label: "", broken: true }),
				}
			: null,
		has((point) => point.current)
			? { words: currentWords, sample: (x, y) => currentMark(document, x, y) }
			: null,
		has((point) => point.usual)
			? { words: usualWords, sample: (x, y) => usualMark(document, x, y) }
			: null,
	];
	return items.filter((item) => item !== null);
}
