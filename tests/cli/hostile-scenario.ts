import { stringify } from "yaml";

/** Free texts that are hostile to whoever writes or reads them without care. */
export const hostileTitle = `</script></style></title><img src=x onerror=alert(1)><svg onload=alert(2)> ]]> "&' \u200f`;
export const hostileIds = ["../../etc\u200f", `=HYPERLINK("x","y")`, `"><b id=x onclick='alert(3)'>`];

/** A sound scenario whose every free text is hostile. */
export const hostileScenario = stringify({
	slackwater: 1,
	title: hostileTitle,
	seed: "'; DROP TABLE--",
	replications: 50,
	solution: { name: "+<i>saline</i>" },
	dressings: hostileIds.map((id) => ({
		id,
		patient: "@SUM(A1)<u>bed</u>",
		wound: { tissue: "soft-tissue", exudate: "160 mL/d" },
		foam: [{ area: "240 cm2", thickness: "1 cm" }],
		regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "2 h" },
		unit: { canister: "500 mL" },
	})),
	happenings: hostileIds.map((dressing, i) => ({ at: `${i + 1} h`, dressing, what: "kink-suction" })),
});
