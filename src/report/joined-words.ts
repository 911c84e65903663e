/** 'a, b and c', or with another word before the last. */
export const joinedWords = (
	parts: readonly string[],
	before = "and",
): string =>
	parts.length < 2
		? parts.join("")
		: `${parts.slice(0, -1).join(", ")} ${before} ${parts.at(-1)}`;
