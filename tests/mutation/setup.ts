import fc from "fast-check";

/**
 * A mutant that fails a property has failed: its counterexample need not be made small. Ten thousand days for each of
 * a thousand mutants are too many: a property stops after ten seconds, which only
 * theirs takes. Where it names no seed it has always the same.
 */
fc.configureGlobal({ endOnFailure: true, interruptAfterTimeLimit: 10_000, seed: 1 });
