/** A page's bundled script is the program itself, which may be arranged in another way. */
const script = /(<\/p>\n<script>).*(<\/script>\n<\/body>\n<\/html>\n)$/su;
const hash = /(script-src 'sha256-)[^']*'/u;
const notices = /(?<=<!-- )[^<]*(?= -->)/u;

/**
 * What a page of the workbench says beside its script: all of it, with the script's text and its hash cut out, and the
 * notices of licences, which come in the order of the bundle, put in order line by line. Any other text is handed back as it is.
 */
export const ownWords = (text) =>
	text.includes('id="workbench-data"')
		? text
				.replace(script, "$1(the script is cut out)$2")
				.replace(hash, "$1(cut out)'")
				.replace(notices, (all) => all.split("\n").sort().join("\n"))
		: text;
