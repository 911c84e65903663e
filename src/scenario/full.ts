import { Document, isCollection, isScalar, type Node, Scalar, YAMLMap } from "yaml";
import { constantFacts, constantNames, type Provenance } from "../physics/index.ts";
import type { Load } from "./expand-kinds.ts";
import { filledDefaults } from "./filled-defaults.ts";
import { written } from "./keys/assumptions.ts";
import { checkData, isWardData, type ReadOptions } from "./read.ts";
import { checkWard, isWard } from "./read-ward.ts";
import { type Keys, UnusableInput } from "./reading/problem.ts";
import { asMap } from "./reading/raw.ts";

const heading = [
	" yaml-language-server: $schema=schema.json",
	" Every value that this scenario runs on. A comment behind a value says that it was not in the file, and where it",
	" comes from; what has no comment was given. Assumed: a placeholder until a site calibrates it.",
].join("\n");

/**
 * A scenario as YAML with every default and every constant filled in, each with its provenance. Reads back to the same
 * scenario. Throws UnusableInput with every problem. Comments and anchors of the original are not kept.
 */
export function fullScenario(text: string, options: ReadOptions & { readonly load?: Load } = {}): string {
	const data = isWard(text) ? soundWard(text, options.load) : soundDay(text, options);
	const document = new Document(data, { aliasDuplicateObjects: false });
	for (const { keys, default: fallback } of filledDefaults(data)) put(document, keys, fallback.write, remark(fallback));
	for (const [key, empty] of isWardData(data) ? [] : absent)
		if (!document.has(key)) put(document, [key], empty, " nothing by default");
	fillAssumptions(document, data);
	arrange(document.contents, "");
	document.commentBefore = heading;
	return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

function soundDay(text: string, options: ReadOptions): unknown {
	const { checked, data } = checkData(text, options);
	if (checked.scenario === null) throw new UnusableInput(checked.problems);
	return data;
}

/** A ward is printed with the dressings of other files written out, so that it stands alone. */
function soundWard(text: string, load: Load | undefined): unknown {
	const { ward, problems, data } = checkWard(text, load);
	if (ward === null) throw new UnusableInput(problems);
	return data;
}

const absent = [
	["happenings", []],
	["compare", {}],
	["packs", {}],
] as const;

function put(document: Document, keys: Keys, value: unknown, comment: string) {
	const node = document.createNode(value) as Node; // createNode of data gives a node
	if (isCollection(node)) {
		node.flow = true;
		for (const item of node.items) if (isScalar(item)) item.type = Scalar.QUOTE_DOUBLE;
	}
	node.comment = comment;
	document.setIn(keys, node);
}

/** Every constant that the file does not override, in the order of the model. */
function fillAssumptions(document: Document, data: unknown) {
	const { assumptions, solution } = asMap(data);
	const given = asMap(assumptions);
	const map = new YAMLMap();
	for (const name of constantNames) {
		const fact = constantFacts[name];
		if (given[name] !== undefined) {
			const node = document.createNode(given[name]) as Node; // as above
			node.comment = ` ${fact.meaning}; ${written(fact.value, fact.unit)} by default`;
			map.set(name, node);
		} else if (name !== "source.hang" || asMap(solution).hang === undefined) {
			const node = document.createNode(value(fact)) as Node; // as above
			node.comment = `${remark(fact)}; ${fact.meaning}`;
			map.set(name, node);
		}
	}
	document.set("assumptions", map);
}

const value = ({ value, unit }: { value: number; unit: string }) => (unit === "" ? value : written(value, unit));

/** ` default of the project`, ` common practice, no source`, ` assumed`, ` published (…)`. */
function remark(origin: { provenance: Provenance; source: string }): string {
	const { provenance, source } = origin;
	if (source === "default of the project" || source.startsWith(provenance)) return ` ${source}`;
	return provenance === "assumed" ? " assumed" : ` ${provenance} (${source})`;
}

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
function rankOf(key: string): number {
	const rank = inOrder.indexOf(key);
	return rank < 0 ? inOrder.length : rank;
}

/** Keys in the order of the schema, whatever order the file had; names that the author chose keep theirs. */
function arrange(node: unknown, within: string) {
	if (!isCollection(node)) return;
	if (!(node instanceof YAMLMap)) {
		for (const item of node.items) arrange(item, within);
		return;
	}
	if (within !== "compare" && within !== "assumptions")
		node.items.sort((a, b) => rankOf(keyOf(a.key)) - rankOf(keyOf(b.key)));
	for (const { key, value } of node.items) arrange(value, within === "" ? keyOf(key) : "inner");
}

const keyOf = (key: unknown) => String(isScalar(key) ? key.value : key);
