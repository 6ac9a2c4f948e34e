/**
 * @typedef {{ passed: number, failed: number, why?: string }} Count
 * @typedef {import('./lineReporter.mjs').Line} Line
 */

/**
 * What the lines of a test runner come to. A runner can end badly without a failed test: a file that does not load
 * holds no tests, an error outside of any test belongs to none, and a crash or a standstill ends it early. Each of
 * those counts as one failure beside the tests that did pass, or it would go by in silence.
 *
 * @param {readonly Line[]} lines as the runner wrote them while it ran
 * @param {import('../../app/_commands/runChild.mjs').Ended} ended
 * @returns {Count}
 */
export function countResults(lines, ended) {
  const passed = tests(lines, 'passed').length;
  const failed = tests(lines, 'failed').length;
  /** @param {string} why */
  const oneMore = (why) => ({ passed, failed: failed + 1, why });
  if (ended.stalled) return oneMore(`it stood still${underWay(lines)} and was ended`);
  const end = lines.find((line) => line.kind === 'end');
  if (end === undefined) return oneMore(`it ended with code ${ended.code} before its end${underWay(lines)}`);
  const unread = lines.flatMap((line) =>
    line.kind === 'file' && line.tests === 0 && line.errors > 0 ? [line.name] : [],
  );
  if (unread.length > 0) {
    return { passed, failed: failed + unread.length, why: `not loaded: ${unread.join(', ')}` };
  }
  if (passed + failed === 0) return oneMore('it ran no test at all');
  const isWell = ended.code === 0 && end.reason === 'passed' && end.errors === 0;
  if (failed === 0 && !isWell) return oneMore(`it ended with code ${ended.code} though no test failed`);
  return { passed, failed };
}

/**
 * @param {string} text the file of lines; a last line cut short is left out
 * @returns {readonly Line[]}
 */
export function readLines(text) {
  return text
    .split('\n')
    .slice(0, -1)
    .map((line) => JSON.parse(line));
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
 * @param {readonly Line[]} lines
 * @param {string} state
 */
const tests = (lines, state) => lines.filter((line) => line.kind === 'test' && line.state === state);

/**
 * The tests that began and did not end, in words.
 *
 * @param {readonly Line[]} lines
 */
function underWay(lines) {
  const ended = new Set(lines.flatMap((line) => (line.kind === 'test' ? [line.name] : [])));
  const open = lines.flatMap((line) => (line.kind === 'begins' && !ended.has(line.name) ? [line.name] : []));
  return open.length === 0 ? '' : ` in “${open.join('”, “')}”`;
}
