/** What a trainee can do. */
export const acts = [
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
] as const;

export type Act = (typeof acts)[number];

/** What doing it means, as it stands in a list of what can be done. */
export const actWords: { readonly [A in Act]: string } = {
	"free-suction-line": "straighten the suction line and lay it free",
	"free-fill-line": "straighten the fill line and lay it free",
	"change-canister": "change the canister",
	"change-source": "hang a new source of solution",
	"new-port": "set a new port with a new line beside the old one",
	"patch-edge": "dry the edge and patch it with film",
	pause: "stop the therapy",
	resume: "start the therapy again, and clear what no longer has a cause",
	"new-dressing": "take the dressing off and put a new one on",
	"call-help": "call for help",
};

export const isAct = (text: string): text is Act =>
	acts.some((act) => act === text);
