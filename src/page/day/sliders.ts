import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { DressingSummary } from "../../results/index.ts";
import { depthWords, durationWords, plainNumber, volumeWords } from "../../words/index.ts";

type RegimenSettings = DressingSummary["regimens"][number];

/** What a slider turns: where it stands for a regimen, its bounds, and how its value is written in a file and in words. */
interface Setting {
	readonly label: string;
	readonly of: "dwellMin" | "suctionMin" | "fillMl" | "depthMmHg";
	readonly from: number;
	/** null: by the foam. */
	readonly to: number | null;
	/** As far as a person sets it in one go. */
	readonly by: number;
	readonly file: (value: number) => string;
	readonly words: (value: number) => string;
}

const minutes = (min: number) => `${min} min`;
const hours = (min: number) => (min % 30 === 0 ? `${min / 60} h` : minutes(min));
const millilitres = (ml: number) => (ml === 0 ? "none" : `${ml} mL`);
const fillWords = (ml: number) => (ml === 0 ? "none" : volumeWords(ml));
const below = (mmHg: number) => `-${plainNumber(mmHg, 2)} mmHg`;

const settings = {
	dwell: { label: "Dwell", of: "dwellMin", from: 1, to: 30, by: 1, file: minutes, words: durationWords },
	suction: { label: "Suction period", of: "suctionMin", from: 30, to: 480, by: 15, file: hours, words: durationWords },
	fill: { label: "Fill", of: "fillMl", from: 0, to: null, by: 5, file: millilitres, words: fillWords },
	depth: { label: "Depth", of: "depthMmHg", from: 25, to: 200, by: 5, file: below, words: depthWords },
} as const satisfies Record<string, Setting>;
export type SettingName = keyof typeof settings;
const names = Object.keys(settings) as readonly SettingName[]; // keys forgets the names it lists

/** Somewhat more than a foam takes before it pools, so that pooling can be seen. */
const mostFill = (capacityMl: number) => Math.max(20, capacityMl * 1.5);

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
	const sliders = names.map((name) => {
		const setting: Setting = settings[name];
		const input = html("input", { type: "range", id: `${id}-${name}` });
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
			drag(name, setting.file(value));
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
				const value = regimen === null ? null : regimen[setting.of];
				input.disabled = value === null;
				if (value === null) {
					output.textContent = "none";
					input.removeAttribute("aria-valuetext");
					continue;
				}
				const { from, by: step } = setting;
				const whole = (size: number, round: (share: number) => number) => String(round(size / step) * step);
				// Whole steps, also where the value of a file stands between two: the words beside it say that, and a move leaves it.
				const least = Math.min(from, value);
				input.min = least === from ? String(least) : whole(least, Math.floor);
				input.max = whole(Math.max(setting.to ?? mostFill(capacityMl), value), Math.ceil);
				input.step = String(step);
				input.value = String(value);
				say(value);
			}
		},
	};
}
