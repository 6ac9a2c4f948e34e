/** How a law is tried on random cases. */
export interface Cases {
  readonly numRuns: number;
  readonly seed?: number;
}

/**
 * The settings of a property test: `fc.assert(fc.property(…), cases(1_000))`. The seed is that of the whole
 * run, which `npm test` prints, so that a failure can be drawn again; alone, each test draws its own.
 *
 * @param usual how many cases `npm test` draws
 * @param seed PROPERTY_SEED unless told
 */
export function cases(usual: number, seed = process.env.PROPERTY_SEED): Cases {
  const numRuns = draws(usual);
  if (seed === undefined || seed === '') return { numRuns };
  if (!/^\d{1,10}$/.test(seed))
    throw new Error(`PROPERTY_SEED is ${JSON.stringify(seed)}, not a whole number.`);
  return { numRuns, seed: Number(seed) };
}

/**
 * How often something random is drawn: the one place that sets it. `npm run test:deep` draws ten times as often.
 *
 * @param usual in `npm test`
 * @param times DRAWS unless told
 */
export const draws = (usual: number, times = process.env.DRAWS): number =>
  Math.max(1, Math.round(usual * timesOf(times)));

/** Time for a test whose work grows with its draws, in milliseconds. */
export const patience = (usualMs: number, times = process.env.DRAWS): number =>
  usualMs * Math.max(1, timesOf(times));

function timesOf(times: string | undefined): number {
  if (times === undefined || times === '') return 1;
  if (!/^\d{1,3}(\.\d+)?$/.test(times) || Number(times) === 0)
    throw new Error(`DRAWS is ${JSON.stringify(times)}, not how many times as many random cases to draw.`);
  return Number(times);
}
