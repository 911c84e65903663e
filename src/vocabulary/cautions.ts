/** What every report, page and rehearsal says of itself. */
export const cautionInALine =
	"For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's instructions and local policy come first.";

export const cautionSentences: readonly string[] = [
	cautionInALine,
	"Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now.",
	"Nothing here has been validated on patients, and numbers marked assumed are placeholders until a site calibrates them.",
];
