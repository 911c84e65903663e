import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("../../scenarios/", import.meta.url);

/** Names of the scenarios of a day that the project keeps. */
export const keptFiles = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

/** The text of a scenario that the project keeps, also of one in a folder of its own. */
export const keptText = (name: string) => readFileSync(new URL(name, folder), "utf8");
