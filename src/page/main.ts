import { openWorkbench } from "./workbench.ts";
import { answerOrders, type Line } from "./worker/answer-orders.ts";

/**
 * The page and its worker are one script: the page starts the worker from its own text, so that the one file holds the
 * engine once.
 */
if (typeof document === "undefined")
	answerOrders(globalThis as unknown as Line); // a worker's global scope is its end of the line
else {
	const own = document.currentScript?.textContent ?? "";
	const address = URL.createObjectURL(new Blob([own], { type: "text/javascript" }));
	openWorkbench(document, address);
}
