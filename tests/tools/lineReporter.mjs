import { appendFileSync } from 'node:fs';

/**
 * One line of what a run says as it goes: a test that ended, a file that ended (with its errors outside of tests), or
 * the end of the run.
 *
 * @typedef {{ kind: 'begins', name: string }
 *   | { kind: 'test', name: string, state: string }
 *   | { kind: 'file', name: string, tests: number, errors: number }
 *   | { kind: 'end', reason: string, errors: number }} Line
 */

/** Writes each line at once to the file that REPORT_LINES names: what is there counts, however the run ends. */
export default class LineReporter {
  /** @param {import('vitest/node').TestCase} test */
  onTestCaseReady(test) {
    write({ kind: 'begins', name: nameOf(test) });
  }

  /** @param {import('vitest/node').TestCase} test */
  onTestCaseResult(test) {
    write({ kind: 'test', name: nameOf(test), state: test.result().state });
  }

  /** @param {import('vitest/node').TestModule} file */
  onTestModuleEnd(file) {
    const tests = [...file.children.allTests()].length;
    write({ kind: 'file', name: file.relativeModuleId, tests, errors: errorsOf(file) });
  }

  /**
   * @param {readonly import('vitest/node').TestModule[]} _
   * @param {readonly unknown[]} errors outside of any test
   * @param {string} reason
   */
  onTestRunEnd(_, errors, reason) {
    write({ kind: 'end', reason, errors: errors.length });
  }
}

/** @param {import('vitest/node').TestCase} test */
const nameOf = (test) => `${test.module.relativeModuleId} > ${test.fullName}`;

/**
 * Errors of hooks and of the file itself, which belong to no test.
 *
 * @param {import('vitest/node').TestModule} file
 */
function errorsOf(file) {
  const suites = [...file.children.allSuites()];
  return suites.reduce((sum, suite) => sum + suite.errors().length, file.errors().length);
}

/** @param {Line} line */
function write(line) {
  const file = process.env.REPORT_LINES;
  if (file !== undefined) appendFileSync(file, `${JSON.stringify(line)}\n`);
}
