import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runChild } from '../../app/_commands/runChild.mjs';
import { awkwardMoment } from './clock/moments.mjs';
import { countResults, readLines } from './countResults.mjs';
import { provideChromium } from './provideChromium.mjs';

/**
 * @typedef {import('./countResults.mjs').Count} Count
 * @typedef {{ root: string, seed: string, draws?: string }} Setting
 */

const MINUTE_MS = 60_000;
/*
 * No stage has a time to end in: a slow or busy machine takes as long as it takes. Every test has a bound of its own,
 * far below the time after which a run without one test ended stands still; of one program only its end is seen.
 */
const TESTS_STILL_MS = 10 * MINUTE_MS;
const PROGRAM_STILL_MS = 30 * MINUTE_MS;
const NEXT = 'node_modules/next/dist/bin/next';

/** @param {Setting} setting */
export async function formatAndLint({ root }) {
  const biome = ['node_modules/@biomejs/biome/bin/biome', 'ci', '--error-on-warnings'];
  // It paints whatever it is told; a log is read without colours.
  const colours = process.stdout.isTTY ? [] : ['--colors=off'];
  return once(await node(root, [...biome, ...colours, '.']));
}

/** @param {Setting} setting */
export async function types({ root }) {
  const before = settings(root);
  // A fresh clone has no types of its routes yet.
  const typegen = await node(root, [NEXT, 'typegen']);
  if (typegen.code !== 0) return once(typegen);
  const checked = once(await node(root, ['node_modules/typescript/bin/tsc', '--noEmit']));
  return unchanged(root, before, checked);
}

/** @param {Setting} setting */
export function unitTests({ root, seed, draws = '1' }) {
  const { clock, zone } = awkwardMoment;
  const env = { PROPERTY_SEED: seed, DRAWS: draws, TEST_CLOCK: clock, TZ: zone };
  return vitest(root, 'unit', 'tests/vitest.config.ts', env);
}

/** @param {Setting} setting */
export async function build({ root }) {
  const before = settings(root);
  return unchanged(root, before, once(await node(root, [NEXT, 'build'])));
}

/** @param {Setting} setting */
export async function endToEndTests({ root, seed }) {
  const chromium = await provideChromium(root);
  if ('problem' in chromium) return { passed: 0, failed: 1, why: chromium.problem };
  const env = { PROPERTY_SEED: seed, CHROMIUM_PATH: chromium.path };
  return vitest(root, 'e2e', 'tests/e2e/vitest.config.ts', env);
}

/**
 * @param {string} root
 * @param {string} name of the report
 * @param {string} config
 * @param {Record<string, string>} env
 * @param {readonly string[]} [files] all unless told
 * @returns {Promise<Count>}
 */
export async function vitest(root, name, config, env, files = []) {
  const folder = join(root, 'tests', '.output');
  const file = join(folder, `${name}.jsonl`);
  mkdirSync(folder, { recursive: true });
  // The lines of an earlier run would be taken for this one's.
  writeFileSync(file, '');
  const reporters = ['--reporter=default', '--reporter=./tests/tools/lineReporter.mjs'];
  // A forgotten `.only` would leave the rest of its file out.
  const args = [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    config,
    '--allowOnly=false',
    ...reporters,
    ...files,
  ];
  const still = { afterMs: TESTS_STILL_MS, mark: () => statSync(file).size };
  const ended = await node(root, args, { ...env, REPORT_LINES: file }, still);
  return countResults(readLines(readFileSync(file, 'utf8')), ended);
}

/**
 * @param {string} root
 * @param {readonly string[]} args
 * @param {Record<string, string>} [env]
 * @param {import('../../app/_commands/runChild.mjs').Still} [still]
 */
export function node(root, args, env, still = { afterMs: PROGRAM_STILL_MS }) {
  return runChild(process.execPath, args, { cwd: root, still, ...(env && { env }) });
}

/**
 * @param {import('../../app/_commands/runChild.mjs').Ended} ended
 * @returns {Count}
 */
function once({ code, stalled }) {
  if (code === 0) return { passed: 1, failed: 0 };
  return { passed: 0, failed: 1, why: stalled ? 'it stood still and was ended' : `code ${code}` };
}

/**
 * The framework edits tsconfig.json to its taste; an edit left uncommitted would come back on every machine.
 *
 * @param {string} root
 * @param {string} before
 * @param {Count} count
 * @returns {Count}
 */
function unchanged(root, before, count) {
  if (settings(root) === before) return count;
  return { passed: 0, failed: 1, why: 'the framework edited tsconfig.json; look at the edit and commit it' };
}

/** @param {string} root */
function settings(root) {
  return readFileSync(join(root, 'tsconfig.json'), 'utf8');
}
