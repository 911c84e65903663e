import type { Caution } from "../../results/index.ts";
import type { Dressing } from "../../scenario/index.ts";

/** What every report says. */
export const generalCautions: readonly Caution[] = [
	{
		code: "planning-only",
		text: "For planning and teaching, not for setting a device or treating a patient. The prescription, the maker's instructions and local policy come first.",
	},
	{
		code: "call-a-clinician",
		text: "Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now.",
	},
	{
		code: "not-validated",
		text: "Nothing here has been validated on patients; numbers marked assumed are placeholders until a site calibrates them.",
	},
];

/** Wherever a day is played with chance on. */
export const cloggingAssumed: Caution = {
	code: "clogging-assumed",
	text: "How debris closes a port is assumed from end to end, its direction too: no judgement on clogging may rest on these defaults.",
};

/** Where any of these dressings has a regimen with fill. */
export const solutionLabel = (dressings: readonly Pick<Dressing, "regimens">[]): Caution[] =>
	dressings.some(({ regimens }) => regimens.some(({ fillMl }) => fillMl > 0))
		? [
				{
					code: "solution-label",
					text: "How long an opened source may hang, and which solution may dwell in a wound, follow the solution's label, the prescription and local policy.",
				},
			]
		: [];
