/** Charts: one chart a file, data in, an SVG element made in the injected document out; and how times and quantities are written. */
export {
	type BeginTimesData,
	beginTimes,
} from "./begin-times.ts";
export { canisterChart } from "./canister-chart.ts";
export type { ChartOptions } from "./chart-root.ts";
export {
	type Clock,
	clockTime,
	dateWords,
	dayOffset,
	dayWords,
	everyDayWords,
	fullDate,
	isInstant,
	timeOfDay,
	timeRange,
	timeSpan,
} from "./clock.ts";
export { comparisonStyle } from "./comparison-style.ts";
export { type CountBandData, countBand } from "./count-band.ts";
export type { CycleSpan } from "./cycle-span.ts";
export { dayWidthPx, waterLineEdges } from "./day-root.ts";
export {
	type DesignMapCell,
	type DesignMapData,
	type DesignMapPanel,
	designMap,
} from "./design-map.ts";
export { mapsAPage } from "./design-map-layout.ts";
export { differenceMark } from "./difference-mark.ts";
export {
	type DifferenceRow,
	type DifferenceRowsData,
	differenceRows,
} from "./difference-rows.ts";
export { bothMeans, differenceWords, meansOf } from "./difference-words.ts";
export { durationWords } from "./duration.ts";
export {
	type EfficientSetData,
	type EfficientSetPoint,
	efficientSet,
} from "./efficient-set.ts";
export {
	heatStrip,
	shownConditions,
} from "./heat-strip.ts";
export { legalText } from "./legal-text.ts";
export { darkTheme, lightTheme, textPairs } from "./palette.ts";
export { percentWords } from "./probability.ts";
export {
	counted,
	depthWords,
	numberWord,
	plainNumber,
	volumeNumber,
	volumeWords,
} from "./quantity.ts";
export { rangeWords } from "./range.ts";
export { regimenWords } from "./regimen-words.ts";
export { rehearsalChart } from "./rehearsal-chart.ts";
export {
	type ResponseCurveData,
	responseCurve,
} from "./response-curve.ts";
export { shiftLine } from "./shift-line.ts";
export { shiftsBetween } from "./shifts.ts";
export { sparkline } from "./sparkline.ts";
export { svgElement } from "./svg-element.ts";
export { chartStyle, themeRules } from "./theme-style.ts";
export { type TornadoData, tornado } from "./tornado.ts";
export {
	conditionWords,
	pauseWords,
	phaseWords,
} from "./vocabulary.ts";
export {
	type WaterLineData,
	waterLineChart,
} from "./water-line-chart.ts";
export { waterLineLegend } from "./water-line-words.ts";
export { wrappedText } from "./wrapped-text.ts";
