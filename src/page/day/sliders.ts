import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { DressingSummary } from "../../results/index.ts";
import { depthWords, durationWords, plainNumber, volumeWords } from "../../words/index.ts";

type RegimenSettings = DressingSummary["regimens"][number];

export type SettingName = "dwell" | "suction" | "fill" | "depth";

/** What a slider turns: its bounds, where it stands for a regimen, and how its value is written in a file. */
interface Setting {
	readonly name: SettingName;
	readonly label: string;
	readonly least: number;
	/** Where a foam of this capacity is filled. */
	readonly most: (capacityMl: number) => number;
	/** As far as a person sets it in one go. */
	readonly step: number;
	/** null where the regimen has none. */
	readonly of: (regimen: RegimenSettings) => number | null;
	readonly written: (value: number) => string;
	readonly words: (value: number) => string;
}

const settings: readonly Setting[] = [
	{
		name: "dwell",
		label: "Dwell",
		least: 1,
		most: () => 30,
		step: 1,
		of: ({ dwellMin }) => dwellMin,
		written: (min) => `${min} min`,
		words: durationWords,
	},
	{
		name: "suction",
		label: "Suction period",
		least: 30,
		most: () => 480,
		step: 15,
		of: ({ suctionMin }) => suctionMin,
		written: (min) => (min % 30 === 0 ? `${min / 60} h` : `${min} min`),
		words: durationWords,
	},
	{
		name: "fill",
		label: "Fill",
		least: 0,
		// Somewhat more than the foam takes before it pools, so that pooling can be seen.
		most: (capacityMl) => Math.max(20, capacityMl * 1.5),
		step: 5,
		of: ({ fillMl }) => fillMl,
		written: (ml) => (ml === 0 ? "none" : `${ml} mL`),
		words: (ml) => (ml === 0 ? "none" : volumeWords(ml)),
	},
	{
		name: "depth",
		label: "Depth",
		least: 25,
		most: () => 200,
		step: 5,
		of: ({ depthMmHg }) => depthMmHg,
		written: (mmHg) => `-${plainNumber(mmHg, 2)} mmHg`,
		words: depthWords,
	},
];

/**
 * Four sliders for the settings of a regimen. `drag` is told a setting as it is to be written, again and again; `drop` that
 * it stays.
 */
export function settingSliders(
	html: HtmlMaker,
	id: string,
	label: string,
	drag: (setting: SettingName, written: string) => void,
	drop: () => void,
) {
	const sliders = settings.map((setting) => {
		const input = html("input", { type: "range", id: `${id}-${setting.name}` });
		// The slider itself says where it stands.
		const output = html("output", { for: input.id, "aria-live": "off" });
		const say = (value: number) => {
			const words = setting.words(value);
			output.textContent = words;
			input.setAttribute("aria-valuetext", words);
		};
		input.addEventListener("input", () => {
			const value = Number(input.value);
			say(value);
			drag(setting.name, setting.written(value));
		});
		input.addEventListener("change", drop);
		return { setting, input, output, say };
	});
	return {
		element: html(
			"div",
			{ class: "sliders", role: "group", "aria-label": label },
			...sliders.map(({ setting, input, output }) =>
				html("div", { class: "slider" }, html("label", { for: input.id }, setting.label), output, input),
			),
		),
		/** Puts the sliders where a regimen on a foam of a capacity stands; a value outside a slider's range widens it. */
		show(regimen: RegimenSettings | null, capacityMl: number): void {
			for (const { setting, input, output, say } of sliders) {
				const value = regimen === null ? null : setting.of(regimen);
				input.disabled = value === null;
				if (value === null) {
					output.textContent = "none";
					input.removeAttribute("aria-valuetext");
					continue;
				}
				const { step } = setting;
				const whole = (size: number, round: (share: number) => number) => String(round(size / step) * step);
				// Whole steps, also where the value of a file stands between two: the words beside it say that, and a move leaves it.
				const least = Math.min(setting.least, value);
				input.min = least === setting.least ? String(least) : whole(least, Math.floor);
				input.max = whole(Math.max(setting.most(capacityMl), value), Math.ceil);
				input.step = String(step);
				input.value = String(value);
				say(value);
			}
		},
	};
}
