const short = "scenarios/thigh-short-dwell.yaml";
const bend = (text, ...pairs) => pairs.reduce((bent, [from, to]) => bent.replace(from, to), text);

/** Input that cannot be used: lines, with the files and the standard input that they find. */
export function wrong(textOf) {
	const day = textOf("thigh-short-dwell.yaml");
	const ward = textOf("ward/hospital.yaml").replaceAll("../", "scenarios/");
	const files = {
		"typos.yaml": bend(day, ["tissue:", "tisue:"], [/dwell: .*/u, "dwell: 5"], ["slackwater: 1", "slackwater: 9"]),
		"not-yaml.yaml": "a: [1, 2\nb: }",
		"empty.yaml": "",
		"list.json": "[1, 2]",
		"doubled.yaml": `${day}\ntitle: another\n`,
		"deep.yaml": bend(day, [/depth: .*/u, "depth: 125 mmHg"]),
		"long.yaml": bend(day, [/horizon: .*/u, "horizon: 90 d"]),
		"ward.yaml": bend(ward, ["units: 10", "units: ten"], ["rate:", "rates:"], ["foot-awkward-seal", "no-such-file"]),
		"part.json": '{ "format": "slackwater/supply-part@1" }',
		"acts.txt": "look nose\ndance\nwait -3\nact new-port now please\n",
		"here.txt": "a file",
	};
	const lines = [
		"describe",
		"dya x.yaml",
		"day",
		"day no-such-file.yaml",
		"day scenarios",
		`day ${short} ${short}`,
		`day ${short} --replicatons 3 --sed b`,
		`day ${short} --replications 0 --workers 900 --horizon 48 --chance perhaps --draw -1`,
		`day ${short} --replications 3 --draw 3`,
		`day ${short} --precision cups=3`,
		`day ${short} --seed`,
		`day ${short} --out here.txt`,
		`day ${short} --out .`,
		"day scenarios/ward/hospital.yaml",
		`day ${short} --horizon "40 d"`,
		`compare ${short}`,
		"compare scenarios/compare-thigh.yaml --between short,lng --measures washs --precision x --rests-on no",
		"compare scenarios/compare-thigh.yaml --between short",
		`sweep ${short}`,
		`sweep ${short} --dwell "5, 10" --suction "5 min, 300 s" --depth "125 mmHg, -100 mmHg"`,
		`sweep ${short} --apart "0 min, 30 min"`,
		`sweep ${short} --dwell "5 min, 6 min" --keep nightcall<1 --efficient nurseMin --curve fill`,
		`sweep ${short} --dwell "5 min, 6 min" --efficient nurseMin,wetMin --keep nightCalls --measures a`,
		`sweep ${short} --dwell "1 min to 1000 min by 0.001 min"`,
		`supply ${short}`,
		"supply scenarios/ward/hospital.yaml --shard 4/3 --horizon 36h",
		"supply scenarios/ward/hospital.yaml --rules-only --shard 1/2 --rules part.json",
		"supply ward.yaml",
		"gather",
		"gather part.json empty.yaml no-such-part.json",
		`drill ${short}`,
		"drill scenarios/rehearse-02.yaml --script acts.txt",
		"drill scenarios/rehearse-02.yaml --script no-such-acts.txt --seed",
		"drill #case=abc",
		"drill - --script -",
		"drill scenarios/evening-hand-over.yaml --generate",
		`page ${short} ${short}`,
		"page typos.yaml --out here.txt --frce",
		...["check", "check --json", "check --full"].flatMap((command) =>
			Object.keys(files).map((file) => `${command} ${file}`),
		),
		`check ${short} --full --json`,
		"check no-such-file.yaml scenarios",
		"check",
		...["day", "compare", "sweep", "drill", "supply", "page"].map((command) => `${command} typos.yaml`),
	];
	return [
		...lines.map((line) => ({ line, files })),
		{ line: "check -", input: "title: 3\n", as: " (a title alone)" },
		{ line: "drill scenarios/rehearse-02.yaml", input: files["acts.txt"], as: " (acts that are none)" },
	];
}
