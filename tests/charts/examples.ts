import { beginTimesExamples } from "./begin-times-examples.ts";
import { countBandExamples } from "./count-band-examples.ts";
import { dayExamples } from "./day-examples.ts";
import { designMapExamples } from "./design-map-examples.ts";
import { differenceExamples } from "./difference-examples.ts";
import { efficientSetExamples } from "./efficient-set-examples.ts";
import type { Example } from "./example.ts";
import { responseCurveExamples } from "./response-curve-examples.ts";
import { shiftExamples } from "./shift-examples.ts";
import { tornadoExamples } from "./tornado-examples.ts";

/** The charts of a comparison. Plausible shapes, invented numbers, nothing simulated. */
export const comparisonExamples: readonly Example[] = [
	...differenceExamples,
	...designMapExamples,
	...efficientSetExamples,
	...responseCurveExamples,
	...tornadoExamples,
	...beginTimesExamples,
];

/** The page of the gallery, from its top. */
export const galleryExamples: readonly Example[] = [...dayExamples, ...comparisonExamples];

/** All charts; those of stores and rehearsals are seen in reports of their own. */
export const examples: readonly Example[] = [...galleryExamples, ...countBandExamples, ...shiftExamples];
