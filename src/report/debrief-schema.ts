/** JSON Schema (draft 2020-12) of the format `slackwater/debrief@1`. Objects may gain keys; those named here keep their meaning. */
interface Schema {
	readonly [keyword: string]: unknown;
	readonly properties?: { readonly [key: string]: Schema };
	readonly items?: Schema;
}

const number: Schema = { type: "number" };
const text: Schema = { type: "string" };
const minutes: Schema = { type: "number", minimum: 0 };
const minutesOrNull: Schema = { type: ["number", "null"], minimum: 0 };
const share: Schema = { type: "number", minimum: 0, maximum: 1 };
const oneOf = (...values: readonly (string | null)[]): Schema => ({
	enum: values,
});
const list = (items: Schema): Schema => ({ type: "array", items });
const object = (properties: { readonly [key: string]: Schema }): Schema => ({
	type: "object",
	properties,
	required: Object.keys(properties),
});

const places = [
	"dressing",
	"suction-line",
	"fill-line",
	"canister",
	"source",
	"port",
	"edge",
	"unit",
];
const acts = [
	"free-suction-line",
	"free-fill-line",
	"change-canister",
	"change-source",
	"new-port",
	"patch-edge",
	"pause",
	"resume",
	"new-dressing",
	"call-help",
];
const cause = oneOf(
	"fill-line-kinked",
	"suction-line-kinked",
	"port-clogged",
	"canister-full",
	"source-empty",
	"seal-breach",
	"dressing-dislodged",
	"left-off",
	"bleeding",
);
const likelihoods: Schema = object({
	causes: list(object({ cause, probability: share })),
	nothing: share,
	courses: { type: "number", minimum: 1 },
});
const span = { startMin: minutes, endMin: minutes };

export const debriefJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:debrief:1",
	title: "slackwater/debrief@1",
	description:
		"What a rehearsal came to. Minutes count from the start of the shift, volumes are mL, depth is positive below ambient.",
	...object({
		format: { const: "slackwater/debrief@1" },
		case: object({
			title: text,
			brief: text,
			seed: text,
			start: text,
			startClockMin: minutes,
			horizonMin: minutes,
			endedMin: minutes,
			ended: oneOf("shift-over", "handed-over", "left"),
			revealed: list(oneOf("ended-early", "opened-on-bench", "run-again")),
		}),
		facts: list(text),
		causes: list(
			object({
				cause,
				words: text,
				onsetMin: minutesOrNull,
				signMin: minutesOrNull,
				noticedMin: minutesOrNull,
				foundMin: minutesOrNull,
				foundAt: oneOf(...places, null),
				endMin: minutesOrNull,
				endedBy: oneOf("mended", "by-itself", "handed-over", null),
				minutesToNotice: minutesOrNull,
				minutesToFind: minutesOrNull,
				minutesToMend: minutesOrNull,
			}),
		),
		help: object({
			needed: { type: "boolean" },
			calledMin: minutesOrNull,
			cameMin: minutesOrNull,
			afterMin: {
				type: ["number", "null"],
				description: "Negative where help was called before it was needed.",
			},
		}),
		bleeding: {
			anyOf: [
				object({
					therapyMin: minutes,
					washes: { type: "integer", minimum: 0 },
					therapyAfterFoundMin: minutesOrNull,
					stopped: { type: "boolean" },
				}),
				{ type: "null" },
			],
		},
		offSuction: object({
			minutes,
			limitMin: minutes,
			spells: list(object(span)),
		}),
		log: list(
			object({
				kind: oneOf("look", "act"),
				what: oneOf(...places, ...acts),
				...span,
				clock: text,
				span: text,
				answer: text,
				needless: text,
				belief: { anyOf: [likelihoods, { type: "null" }] },
				believed: text,
			}),
		),
		search: object({
			stages: list(
				object({
					startMin: minutes,
					sign: { type: "boolean" },
					steps: list(
						object({
							place: oneOf(...places),
							startMin: minutes,
							minutes,
							chance: share,
							code: { type: "integer", minimum: 0, maximum: 3 },
							before: likelihoods,
							after: likelihoods,
						}),
					),
					deeds: list(object({ act: oneOf(...acts), ...span })),
					mendedMin: minutesOrNull,
				}),
			),
			sentences: list(text),
			note: text,
		}),
		day: object({
			id: text,
			regimen: object({ depthMmHg: minutes, fillMl: minutes }),
			phases: list(object({ phase: text, ...span })),
			alarms: list(object({ condition: text, priority: text, ...span })),
			curve: object({
				atMin: list(number),
				depthMmHg: list(number),
				liquidMl: list(number),
				canisterMl: list(number),
				sourceMl: list(number),
			}),
			totals: { type: "object", additionalProperties: number },
		}),
		assumptions: list(
			object({
				name: text,
				value: number,
				unit: text,
				provenance: oneOf("published", "common practice", "assumed"),
				source: text,
			}),
		),
		cautions: list(text),
	}),
};
