/** '18 %', '<1 %', '>99 %'; exact 0 and 1 are written as they are. */
export function percentWords(probability: number): string {
	if (probability > 0 && probability < 0.01) return "<1 %";
	if (probability < 1 && probability > 0.99) return ">99 %";
	return `${Math.round(probability * 100)} %`;
}
