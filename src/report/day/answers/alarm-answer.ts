import {
	clockTime,
	conditionWords,
	counted,
	numberWord,
	type Piece,
	percentWords,
	plainNumber,
	rangeWords,
	type Sentence,
	sentenceStart,
	strong,
	timeRange,
} from "../../../words/index.ts";
import type { DressingParts } from "../dressing/dressing-parts.ts";

const mostNamed = 3;

/** Another window is named where it is at least this part of the likeliest one. */
const nextToPeak = 0.5;

/** When chance is likeliest to bring an alarm, and of what; honest words where nothing stands out; the alarms themselves where nothing varies. */
export function alarmAnswer(parts: DressingParts): Sentence {
	const { projection, clock, replications, happenings } = parts;
	if (!parts.varies) return tracedAnswer(parts);
	const byPeak = projection.alarms
		.flatMap(({ condition, windows }) => windows.map((window) => ({ ...window, condition })))
		.sort((a, b) => b.peakProbability - a.peakProbability || a.startMin - b.startMin);
	const [peak, next] = byPeak;
	const byChance = happenings.length > 0 ? " by chance" : "";
	if (peak !== undefined) {
		const named = (window: typeof peak): Piece[] => [
			strong(timeRange(window.startMin, window.endMin, clock)),
			`: ${conditionWords[window.condition]}, up to `,
			strong(percentWords(window.peakProbability)),
			" in a half-hour",
		];
		const second =
			next !== undefined && next.peakProbability >= nextToPeak * peak.peakProbability
				? ["; then ", ...named(next)]
				: [];
		return [`An alarm${byChance} is likeliest `, ...named(peak), ...second, "."];
	}
	const [commonest] = projection.alarms.toSorted((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay);
	if (commonest === undefined || commonest.byChance.meanPerDay === 0)
		return [strong(`No alarm came${byChance}`), ` in any of ${counted(replications, "replication")}.`];
	const { meanPerDay, halfWidth95 } = commonest.byChance;
	return [
		strong(`No time stands out for alarms${byChance}`),
		`: no half-hour passes 5 %. The commonest is ${conditionWords[commonest.condition]}, ${perDay(meanPerDay, halfWidth95)}.`,
	];
}

/** The alarms of the one day there is. */
function tracedAnswer({ day, clock }: DressingParts): Sentence {
	const { alarms } = day;
	if (alarms.length === 0) return [strong("No alarm comes"), "."];
	const named = alarms
		.slice(0, mostNamed)
		.map((alarm) => `${clockTime(alarm.startMin, clock)} ${conditionWords[alarm.condition]}`);
	const more = alarms.length > mostNamed ? ` and ${numberWord(alarms.length - mostNamed)} more` : "";
	const count = alarms.length === 1 ? "One alarm" : `${sentenceStart(numberWord(alarms.length))} alarms`;
	return [strong(count), `: ${named.join(", ")}${more}.`];
}

/** 'about 0.3 in 24 h (between 0.2 and 0.4)'. */
function perDay(mean: number, halfWidth95: number | null): string {
	const number = (value: number): string => plainNumber(value, value < 1 ? 2 : 1);
	if (halfWidth95 === null) return `${number(mean)} in 24 h`;
	return `about ${number(mean)} in 24 h (${rangeWords(Math.max(0, mean - halfWidth95), mean + halfWidth95, number)})`;
}
