import { type ChartOptions, chartStyle, comparisonStyle, themeRules } from "../../src/charts/index.ts";
import { htmlMaker } from "../../src/report/kit/html-element.ts";
import type { Example } from "./example.ts";

const policy = "default-src 'none'; style-src 'unsafe-inline'";

const pageStyle = `${themeRules(":root")}
${chartStyle}
${comparisonStyle}
:root{color-scheme:light dark}
*{box-sizing:border-box}
body{margin:0;padding:1rem clamp(1rem,3vw,2.5rem) 3rem;background:var(--sw-paper);color:var(--sw-ink);font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","DejaVu Sans",sans-serif;overflow-wrap:break-word}
main{max-width:64rem;margin:0 auto}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .5rem}
h2{font-size:1rem;color:var(--sw-muted);font-weight:400;margin:0 0 .75rem}
p{max-width:72ch}
section{border-top:1px solid var(--sw-rule);padding:1.25rem 0 1.75rem}
.scroll{overflow-x:auto;max-width:100%}
svg{display:block;max-width:100%;height:auto}
.scroll svg{max-width:none}
.narrow{display:none}
:focus-visible{outline:3px solid var(--sw-water);outline-offset:2px}
@media (max-width:44rem){.wide{display:none}.narrow{display:block;width:100%;max-width:30rem}}
@media print{:root{color-scheme:light}section{break-inside:avoid}.scroll{overflow:visible}.scroll svg{max-width:100%}}
`;

/** Every example of a chart on one page without script, from which nothing is asked for outside it. */
export function galleryPage(examples: readonly Example[], document: Document): string {
	const element = htmlMaker(document);
	const sections = examples.map(({ name, draw, narrowPx }) => {
		const drawn = (className: string, options: Partial<ChartOptions>): SVGSVGElement => {
			const chart = draw(document, { idPrefix: `${name}-${className}`, styled: false, ...options });
			chart.classList.add(className);
			return chart;
		};
		const charts =
			narrowPx === undefined
				? [
						element(
							"div",
							{ class: "scroll", role: "region", tabindex: "0", "aria-labelledby": `${name}-heading` },
							drawn("whole", {}),
						),
					]
				: [drawn("wide", {}), drawn("narrow", { widthPx: narrowPx })];
		return element("section", { id: name }, element("h2", { id: `${name}-heading` }, name), ...charts);
	});
	const page = element(
		"html",
		{ lang: "en" },
		element(
			"head",
			{},
			element("meta", { charset: "utf-8" }),
			element("meta", { "http-equiv": "Content-Security-Policy", content: policy }),
			element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
			element("meta", { name: "color-scheme", content: "light dark" }),
			element("title", {}, "Gallery of charts"),
			element("style", {}, pageStyle),
		),
		element(
			"body",
			{},
			element(
				"main",
				{},
				element("h1", {}, "Gallery of charts"),
				element(
					"p",
					{},
					"Each chart as a tiny example. Numbers are invented, nothing here is simulated, and nothing is advice for a patient.",
				),
				...sections,
			),
		),
	);
	return `<!DOCTYPE html>\n${page.outerHTML}\n`;
}
