/**
 * What is wrong with the layout of a page, one sentence each. Where the page says that its charts are `alone`, as files of their own, they are as small as they are shown, and may shorten a long name. Runs inside the page, so it brings along all that it uses.
 */
export function layoutFaults(): string[] {
	const alone = document.documentElement.dataset.charts === "alone";
	const faults: string[] = [];
	const page = document.scrollingElement;
	if (page !== null && page.scrollWidth > innerWidth)
		faults.push(`the page scrolls sideways: ${page.scrollWidth} px in ${innerWidth}`);

	/** What is folded away has a place all the same. */
	const seen = (element: Element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true });

	const called = (element: Element) => {
		const near = element.closest("[id]");
		const text = (element.textContent ?? "").trim().slice(0, 40);
		return `"${text}" (${element.localName} under #${near?.id ?? "?"})`;
	};

	// 6.5 pt on paper, 10 px on a screen: smaller letters of a chart are not read.
	const leastLetterPx = matchMedia("print").matches ? (6.5 * 96) / 72 : 10;

	for (const svg of document.querySelectorAll("svg")) {
		if (svg.parentElement?.closest("svg")) continue;
		const frame = svg.getBoundingClientRect();
		if (frame.width === 0) continue;
		const texts = [...svg.querySelectorAll("text")]
			.filter((text) => seen(text))
			.map((text) => ({ text, box: text.getBoundingClientRect() }))
			.filter(({ box }) => box.width > 0 && box.height > 0);
		for (const [i, { text, box }] of texts.entries()) {
			const letterPx = Number.parseFloat(getComputedStyle(text).fontSize) * (text.getScreenCTM()?.d ?? 1);
			if (!alone && letterPx < leastLetterPx - 0.01)
				faults.push(`${called(text)} has letters of ${letterPx.toFixed(2)} px, less than ${leastLetterPx.toFixed(2)}`);
			if (!alone && text.textContent?.endsWith("…")) faults.push(`${called(text)} is cut by its chart`);
			const out = Math.max(
				frame.left - box.left,
				box.right - frame.right,
				frame.top - box.top,
				box.bottom - frame.bottom,
			);
			if (out > 1) faults.push(`${called(text)} leaves its drawing by ${out.toFixed(1)} px`);
			for (const other of texts.slice(i + 1)) {
				const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
				const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
				if (across > 1 && down > 1)
					faults.push(`${called(text)} overlaps ${called(other.text)} by ${across.toFixed(1)} × ${down.toFixed(1)} px`);
			}
		}
	}

	for (const element of document.querySelectorAll("body *")) {
		const { overflowX, textOverflow } = getComputedStyle(element);
		// What is for screen readers alone is one pixel wide.
		if (!(element instanceof HTMLElement) || element.clientWidth <= 1) continue;
		const cut = overflowX === "hidden" || overflowX === "clip" || textOverflow === "ellipsis";
		// The text of a field is measured in whole px, its frame is not.
		const slackPx = element instanceof HTMLInputElement ? 1 : 0;
		if (cut && element.scrollWidth > element.clientWidth + slackPx)
			faults.push(`${called(element)} is cut: ${element.scrollWidth} px in ${element.clientWidth}`);
	}

	// Text of the page itself: no two boxes of words lie on each other.
	const words = [...document.querySelectorAll("h1,h2,h3,p,li,td,th,caption,figcaption,summary,dt,dd")]
		.filter((element) => seen(element) && !element.querySelector("p,li,td,th,svg"))
		.flatMap((element) => {
			const range = document.createRange();
			range.selectNodeContents(element);
			return [...range.getClientRects()]
				.filter((box) => box.width > 1 && box.height > 1)
				.map((box) => ({ element, box }));
		})
		.sort((a, b) => a.box.top - b.box.top);
	for (const { element, box } of words) {
		const own = element.getBoundingClientRect();
		const out = Math.max(own.left - box.left, box.right - own.right);
		// What is for screen readers alone is moved out of sight.
		if (out > 1 && own.right > 0) faults.push(`${called(element)} leaves its box by ${out.toFixed(1)} px`);
	}
	for (const [i, { element, box }] of words.entries())
		for (const other of words.slice(i + 1)) {
			if (other.box.top > box.bottom - 3) break;
			if (other.element === element) continue;
			const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
			const down = Math.min(box.bottom, other.box.bottom) - other.box.top;
			if (across > 2 && down > 3)
				faults.push(
					`${called(element)} lies on ${called(other.element)}: ${across.toFixed(1)} × ${down.toFixed(1)} px`,
				);
		}
	return faults;
}
