const places = "dressing suction-line fill-line canister source port edge unit".split(" ");
const mending =
	"free-suction-line free-fill-line change-canister change-source patch-edge pause resume new-port new-dressing call-help".split(
		" ",
	);
const looks = places.map((place) => `look ${place}\n`).join("");

/** A plain rehearsal: to the alarm, a look, what mends the commonest cause, and on. */
export const acts = "next # to the alarm\nlook suction-line\nact free-suction-line\nlook edge\nwait 60\n";

/** What is typed in the rehearsals of every case, by name. */
export const scripts = {
	nothing: "",
	looks: `${looks}next\n${looks}wait 30\n${looks}next\nend\n`,
	acts: `next\n${mending.map((act) => `act ${act}\nwait 5\n`).join("")}end\n`,
	waits: "wait 100\nwait 200\nnext\nnext\nnext\nwait 480\n",
};

/** What is typed at a terminal that asks. */
export const asked = `help\nlook\nlook nose\n${acts}dance\nend\n`;
