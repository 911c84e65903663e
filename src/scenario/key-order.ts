/** Keys of a scenario file in the order in which a reader wants them, level by level. */
const inOrder = [
	"$schema slackwater title seed start horizon replications chance",
	"ward stores dressings care happenings rehearsal compare usual sweep home solution packs prices assumptions",
	"kinds units full arrivals length census beds warmUp",
	"id patient wound foam from regimen unit age",
	"tissue area thickness exudate slough difficulty outflow total bursts",
	"canister holds source left",
	"begin depth fill dwell suction drawdown",
	"response day night spread rounds turning nurses dressingChange avoid handOver meals smallHours",
	"at dressing what size share volume for start apart to by",
	"brief transfer told pace help hides says cause within lasts",
	"name hang currency asOf kit line port",
	"item stock pack price weight shelf lead leadSpread orderDays cutOff review reorder upTo service substitute",
].flatMap((line) => line.split(" "));

/** Place of a key among the others; keys that are not known come last. */
export function rankOf(key: string): number {
	const rank = inOrder.indexOf(key);
	return rank < 0 ? inOrder.length : rank;
}
