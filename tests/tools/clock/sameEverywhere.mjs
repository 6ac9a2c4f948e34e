/**
 * @typedef {import('../countResults.mjs').Count} Count
 * @typedef {import('./moments.mjs').Moment} Moment
 */

/**
 * What runs of the same tests at several moments come to together. A test that is left out on some day is no
 * failed one and still no same result, so each run has to pass as many.
 *
 * @param {readonly { moment: Moment, count: Count }[]} runs
 * @returns {Count}
 */
export function sameEverywhere(runs) {
  const passed = runs.reduce((sum, { count }) => sum + count.passed, 0);
  const failed = runs.reduce((sum, { count }) => sum + count.failed, 0);
  const most = Math.max(0, ...runs.map(({ count }) => count.passed + count.failed));
  const bad = runs.filter(({ count }) => count.failed > 0 || count.passed < most);
  if (bad.length === 0) return { passed, failed };
  const where = bad.map(({ moment, count }) => {
    const why = count.why === undefined ? '' : ` (${count.why})`;
    return `${moment.clock} ${moment.zone}: ${count.passed} of ${most} passed${why}`;
  });
  return { passed, failed: Math.max(1, failed), why: where.join('; ') };
}
