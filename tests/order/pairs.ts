import type { Pair } from "./coincidence.ts";

/** Pairs of kinds that may fall on one instant and whose order may change the day: which goes first, and why. */
export const deciding: Readonly<Partial<Record<Pair, string>>> = {
	"boundary < round":
		"a round sees the canister, the source and the leak as the physics has just left them",
	"boundary < kink":
		"a burst meets the level and the phase that the instant has brought",
	"boundary < scripted":
		"what a script does meets the phase that has just begun: a move at the end of a fill meets a dwell",
	"boundary < expiry":
		"a source expires after the fill that ends now, not in the middle of it",
	"boundary < turn": "a turn meets the phase that has just begun",
	"boundary < alarmTimer":
		"a condition that ends at the instant at which its timer runs out raises no alarm",
	"boundary < call":
		"a nurse who comes meets the dressing as the instant has left it",
	"boundary < fillStart":
		"a canister that is at capacity now stops the pump, and with it the fill",
	"boundary < exudateBlock":
		"the exudate of the next hours meets the phase that has just begun",
	"repair < call": "what is mended now needs no other nurse who would come now",
	"repair < debris":
		"what suction alone has loosened until now is counted into the port that is set now",
	"repair < expiry": "a source that a nurse has just renewed does not expire",
	"repair < round":
		"a round does not change or patch what a nurse has just mended",
	"repair < scripted": "a script acts on what has been mended",
	"repair < fillStart":
		"an alarm that is mended now no longer withholds the fill",
	"repair < alarmTimer":
		"what is mended at the instant at which another timer runs out raises no alarm",
	"round < expiry":
		"a source that the round has renewed does not expire at that round",
	"round < scripted":
		"a script acts after the round: a leak that comes at the time of a round waits for the next",
	"round < turn":
		"a breach by a turn at the time of a round waits for the next",
	"round < alarmTimer":
		"a leak that the round patches at that instant raises no alarm",
	"round < call": "what a round mends needs no nurse who would come now",
	"round < fillStart":
		"a canister that the round changes stops the pump for a minute, and the fill waits",
	"expiry < scripted":
		"a source that expires is renewed before a script changes it again",
	"expiry < fillStart":
		"a source is renewed before the fill that is due, not after it",
	"expiry < alarmTimer":
		"a source that is renewed leaves nothing for a timer of the fill to find",
	"scripted < kink": "a script comes before chance",
	"scripted < turn": "a script comes before chance",
	"scripted < alarmTimer":
		"a fault or a mending by script counts at the instant at which a timer runs out",
	"scripted < call": "what a script mends needs no nurse who would come now",
	"scripted < observer":
		"a source that a script changes now is not noted as low",
	"scripted < fillStart":
		"a fault by script at the instant of a fill may withhold it",
	"kink < fillStart": "a kink or burst now comes before the fill that is due",
	"turn < fillStart":
		"a turn at the instant of a fill meets a dressing that is still held",
	"alarmTimer < fillStart": "an alarm that is due now withholds the fill",
	"alarmTimer < call":
		"an alarm that is raised now is queued before a nurse is sent to another",
};
