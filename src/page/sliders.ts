import type { DressingSummary } from "../analysis/index.ts";
import {
	depthWords,
	durationWords,
	plainNumber,
	volumeWords,
} from "../charts/index.ts";
import { htmlElement } from "../report/html-element.ts";

type RegimenSettings = DressingSummary["regimens"][number];

export type SettingName = "dwell" | "suction" | "fill" | "depth";

/** What a slider turns: its bounds, where it stands for a regimen, and how its value is written in a file. */
interface Setting {
	readonly name: SettingName;
	readonly label: string;
	readonly least: number;
	readonly most: number;
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
		most: 30,
		step: 0.5,
		of: ({ dwellMin }) => dwellMin,
		written: (min) => `${min} min`,
		words: durationWords,
	},
	{
		name: "suction",
		label: "Suction period",
		least: 30,
		most: 480,
		step: 10,
		of: ({ suctionMin }) => suctionMin,
		written: (min) => (min % 30 === 0 ? `${min / 60} h` : `${min} min`),
		words: durationWords,
	},
	{
		name: "fill",
		label: "Fill",
		least: 0,
		most: 200,
		step: 1,
		of: ({ fillMl }) => fillMl,
		written: (ml) => (ml === 0 ? "none" : `${ml} mL`),
		words: (ml) => (ml === 0 ? "none" : volumeWords(ml)),
	},
	{
		name: "depth",
		label: "Depth",
		least: 25,
		most: 200,
		step: 5,
		of: ({ depthMmHg }) => depthMmHg,
		written: (mmHg) => `-${plainNumber(mmHg, 2)} mmHg`,
		words: depthWords,
	},
];

/** Four sliders for the settings of a regimen. */
export class Sliders {
	readonly element: HTMLElement;
	readonly #inputs: readonly {
		readonly setting: Setting;
		readonly input: HTMLInputElement;
		readonly output: HTMLElement;
	}[];

	/** `drag` is told a setting as it is to be written, again and again; `drop` that it stays. */
	constructor(
		document: Document,
		id: string,
		label: string,
		drag: (setting: SettingName, written: string) => void,
		drop: () => void,
	) {
		const element = htmlElement.bind(null, document);
		this.#inputs = settings.map((setting) => {
			const input = htmlElement(document, "input", {
				type: "range",
				id: `${id}-${setting.name}`,
			});
			const output = element("output", {
				for: input.id,
				// The slider itself says where it stands.
				"aria-live": "off",
			});
			input.addEventListener("input", () => {
				const value = Number(input.value);
				say(setting, input, output, value);
				drag(setting.name, setting.written(value));
			});
			input.addEventListener("change", drop);
			return { setting, input, output };
		});
		this.element = element(
			"div",
			{ class: "sliders", role: "group", "aria-label": label },
			...this.#inputs.map(({ setting, input, output }) =>
				element(
					"div",
					{ class: "slider" },
					element("label", { for: input.id }, setting.label),
					output,
					input,
				),
			),
		);
	}

	/** Puts the sliders where a regimen stands; a value outside a slider's range widens it. */
	show(regimen: RegimenSettings | null): void {
		for (const { setting, input, output } of this.#inputs) {
			const value = regimen === null ? null : setting.of(regimen);
			input.disabled = value === null;
			if (value === null) {
				output.textContent = "none";
				input.removeAttribute("aria-valuetext");
				continue;
			}
			input.min = String(Math.min(setting.least, value));
			input.max = String(Math.max(setting.most, value));
			// Steps count from the least value, so that it moves where the value stands between two steps.
			const off = (value - Number(input.min)) % setting.step;
			input.min = String(Number(input.min) + off);
			input.step = String(setting.step);
			input.value = String(value);
			say(setting, input, output, value);
		}
	}
}

function say(
	setting: Setting,
	input: HTMLInputElement,
	output: HTMLElement,
	value: number,
): void {
	const words = setting.words(value);
	output.textContent = words;
	input.setAttribute("aria-valuetext", words);
}
