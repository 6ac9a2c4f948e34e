// `npm test`: every check of the project in turn. Plain Node, because it runs before any package is installed.
// `npm run test:deep` (--deep) draws ten times the random cases and runs the tests that touch days on many days.
// The last line is `N passed, N failed`; the exit code is 1 when anything failed.
import { randomInt } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from '../../app/_commands/ensureInstalled.mjs';
import { forwardSignals } from '../../app/_commands/runChild.mjs';
import { allMoments } from './clock/moments.mjs';
import { otherDays } from './clock/otherDays.mjs';
import { totalLine } from './countResults.mjs';
import { build, endToEndTests, formatAndLint, types, unitTests } from './stages.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const isDeep = process.argv.includes('--deep');
const command = isDeep ? 'npm run test:deep' : 'npm test';
const seed = process.env.PROPERTY_SEED || String(randomInt(2 ** 31));

if (!process.stdout.isTTY) process.env.NO_COLOR = '1';

/** @type {({ name: string, seconds: number } & import('./countResults.mjs').Count)[]} */
const results = [];
let stopped = false;
forwardSignals(() => {
  stopped = true;
});

console.log(`Property seed ${seed}`);
const problem = await ensureInstalled(root);
if (problem === undefined && isDeep) {
  await stage('unit tests', (setting) => unitTests({ ...setting, draws: '10' }));
  await stage('on other days', (setting) => otherDays(setting, allMoments));
} else if (problem === undefined) {
  await stage('format and lint', formatAndLint);
  await stage('types', types);
  await stage('unit tests', unitTests);
  const built = await stage('build', build);
  // Without a build there is nothing to open.
  if (built) await stage('end-to-end tests', endToEndTests);
  else results.push({ name: 'end-to-end tests', seconds: 0, passed: 0, failed: 1, why: 'there is no build' });
} else {
  results.push({ name: 'packages', seconds: 0, passed: 0, failed: 1, why: problem });
}

console.log('');
for (const { name, seconds, passed, failed, why } of results) {
  const numbers = `${String(passed).padStart(5)} passed ${String(failed).padStart(4)} failed`;
  console.log(`${name.padEnd(18)}${numbers} ${seconds.toFixed(1).padStart(7)} s${why ? `   ${why}` : ''}`);
}
console.log(`To draw the same random cases again: PROPERTY_SEED=${seed} ${command}`);
console.log(totalLine(results));
process.exitCode = results.some((result) => result.failed > 0) ? 1 : 0;

/**
 * @param {string} name
 * @param {(setting: import('./stages.mjs').Setting) => Promise<import('./countResults.mjs').Count>} run
 * @returns {Promise<boolean>} whether it passed
 */
async function stage(name, run) {
  console.log(`\n── ${name} ──`);
  const start = performance.now();
  const count = stopped ? { passed: 0, failed: 1, why: 'stopped' } : await run({ root, seed });
  results.push({ name, seconds: (performance.now() - start) / 1000, ...count });
  return count.failed === 0;
}
