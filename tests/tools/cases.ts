/** How a law is tried on random cases. */
export interface Cases {
  readonly numRuns: number;
  readonly seed?: number;
}

/**
 * The settings of a property test: `fc.assert(fc.property(…), cases(1_000))`. The seed is that of the whole
 * run, which `npm test` prints, so that a failure can be drawn again; alone, each test draws its own.
 *
 * @param seed PROPERTY_SEED unless told
 */
export function cases(numRuns: number, seed = process.env.PROPERTY_SEED): Cases {
  if (seed === undefined || seed === '') return { numRuns };
  if (!/^\d{1,10}$/.test(seed))
    throw new Error(`PROPERTY_SEED is ${JSON.stringify(seed)}, not a whole number.`);
  return { numRuns, seed: Number(seed) };
}
