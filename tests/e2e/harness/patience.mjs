/*
 * Nothing is timed by these: they end what hangs. A step takes seconds where nothing else runs, and a machine three
 * times slower that does other work besides still has time to spare.
 */

/** How long one step may wait for what it waits for. */
export const STEP_MS = 60_000;

/** How long a whole test may take; a step that hangs is told of before. */
export const TEST_MS = 240_000;
