/**
 * @typedef {{ passed: number, failed: number, why?: string }} Count
 * @typedef {{ numPassedTests?: number, numFailedTests?: number, success?: boolean,
 *   testResults?: readonly { name: string, status: string, assertionResults: readonly unknown[] }[] }} Report
 */

/**
 * What a test runner's report comes to. A runner can end badly without a failed test: a file that does not
 * load holds no tests, an error outside of any test belongs to none, and a crash leaves no report. Each of
 * those counts as one failure, or it would pass in silence.
 *
 * @param {Report | undefined} report the JSON the runner wrote, nothing when there is none
 * @param {{ code: number, timedOut: boolean }} ended
 * @returns {Count}
 */
export function countResults(report, ended) {
  if (ended.timedOut) return { ...numbers(report, 1), why: 'it did not end in the time it is given' };
  if (report === undefined) {
    return { passed: 0, failed: 1, why: `it ended with code ${ended.code} and without a report` };
  }
  const unread = (report.testResults ?? []).filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const count = numbers(report, unread.length);
  if (unread.length > 0)
    return { ...count, why: `not loaded: ${unread.map((file) => file.name).join(', ')}` };
  if (count.passed + count.failed === 0) return { passed: 0, failed: 1, why: 'it ran no test at all' };
  if (count.failed === 0 && (ended.code !== 0 || report.success !== true)) {
    return { ...count, failed: 1, why: `it ended with code ${ended.code} though no test failed` };
  }
  return count;
}

/**
 * @param {readonly Count[]} counts
 * @returns {string} the last line of a run
 */
export function totalLine(counts) {
  const passed = counts.reduce((sum, count) => sum + count.passed, 0);
  const failed = counts.reduce((sum, count) => sum + count.failed, 0);
  return `${passed} passed, ${failed} failed`;
}

/**
 * @param {Report | undefined} report
 * @param {number} more failures that the report does not count
 * @returns {Count}
 */
function numbers(report, more) {
  return { passed: report?.numPassedTests ?? 0, failed: (report?.numFailedTests ?? 0) + more };
}
