/** Elementary functions with the same bits in every engine: the host's own may differ in the last one. */
export { exp } from "./exp.ts";
export { ln } from "./ln.ts";
