import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { node, vitest } from '../stages.mjs';
import { sameEverywhere } from './sameEverywhere.mjs';

/**
 * @typedef {import('../countResults.mjs').Count} Count
 * @typedef {import('./moments.mjs').Moment} Moment
 */

/**
 * Runs the tests that touch days with the clock set to other days, in other zones. The zone has to be there when
 * the program starts; the clock is set by `tests/setup.ts`.
 *
 * @param {import('../stages.mjs').Setting} setting
 * @param {readonly Moment[]} moments
 * @returns {Promise<Count>}
 */
export async function otherDays({ root, seed }, moments) {
  const list = join(root, 'tests', '.output', 'dayTests.json');
  const listed = await node(root, [
    'node_modules/tsx/dist/cli.mjs',
    'tests/tools/clock/listDayTests.ts',
    list,
  ]);
  if (listed.code !== 0)
    return { passed: 0, failed: 1, why: 'the tests that touch days could not be listed' };
  /** @type {readonly string[]} */
  const files = JSON.parse(readFileSync(list, 'utf8'));
  // A tenth of the random cases: the other cases are drawn where the clock is not in question.
  const env = { PROPERTY_SEED: seed, DRAWS: '0.1' };
  return runAt(root, moments, { config: 'tests/vitest.config.ts', files, env });
}

/**
 * @param {string} root
 * @param {readonly Moment[]} moments
 * @param {{ config: string, files: readonly string[], env?: Record<string, string> }} tests
 * @returns {Promise<Count>}
 */
export async function runAt(root, moments, { config, files, env }) {
  const runs = [];
  for (const moment of moments) {
    console.log(`\n${moment.clock} in ${moment.zone}`);
    const at = { ...env, TEST_CLOCK: moment.clock, TZ: moment.zone };
    runs.push({ moment, count: await vitest(root, 'otherDays', config, at, files) });
  }
  return sameEverywhere(runs);
}
