import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { runChild } from '../../app/_commands/runChild.mjs';
import { countResults } from './countResults.mjs';
import { provideChromium } from './provideChromium.mjs';

/**
 * @typedef {import('./countResults.mjs').Count} Count
 * @typedef {{ root: string, seed: string, draws?: string }} Setting
 */

const MINUTE_MS = 60_000;
const NEXT = 'node_modules/next/dist/bin/next';

/** @param {Setting} setting */
export async function formatAndLint({ root }) {
  const biome = ['node_modules/@biomejs/biome/bin/biome', 'ci', '--error-on-warnings'];
  // It paints whatever it is told; a log is read without colours.
  const colours = process.stdout.isTTY ? [] : ['--colors=off'];
  return once(await node(root, [...biome, ...colours, '.'], 2));
}

/** @param {Setting} setting */
export async function types({ root }) {
  const before = settings(root);
  // A fresh clone has no types of its routes yet.
  const typegen = await node(root, [NEXT, 'typegen'], 2);
  if (typegen.code !== 0) return once(typegen);
  const checked = once(await node(root, ['node_modules/typescript/bin/tsc', '--noEmit'], 3));
  return unchanged(root, before, checked);
}

/** @param {Setting} setting */
export function unitTests({ root, seed, draws = '1' }) {
  const env = { PROPERTY_SEED: seed, DRAWS: draws };
  return vitest(root, 'unit', 'tests/vitest.config.ts', env, 8 * Number(draws));
}

/** @param {Setting} setting */
export async function build({ root }) {
  const before = settings(root);
  return unchanged(root, before, once(await node(root, [NEXT, 'build'], 3)));
}

/** @param {Setting} setting */
export async function endToEndTests({ root, seed }) {
  const chromium = await provideChromium(root);
  if ('problem' in chromium) return { passed: 0, failed: 1, why: chromium.problem };
  const env = { PROPERTY_SEED: seed, CHROMIUM_PATH: chromium.path };
  return vitest(root, 'e2e', 'tests/e2e/vitest.config.ts', env, 8);
}

/**
 * @param {string} root
 * @param {string} name of the report
 * @param {string} config
 * @param {Record<string, string>} env
 * @param {number} minutes
 * @param {readonly string[]} [files] all unless told
 * @returns {Promise<Count>}
 */
export async function vitest(root, name, config, env, minutes, files = []) {
  const folder = join(root, 'tests', '.output');
  const file = join(folder, `${name}.json`);
  mkdirSync(folder, { recursive: true });
  // The report of an earlier run would be taken for this one's, should the runner crash.
  rmSync(file, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
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
  const ended = await node(root, args, minutes, env);
  return countResults(readReport(file), ended);
}

/**
 * @param {string} root
 * @param {readonly string[]} args
 * @param {number} minutes
 * @param {Record<string, string>} [env]
 */
export function node(root, args, minutes, env) {
  return runChild(process.execPath, args, { cwd: root, limitMs: minutes * MINUTE_MS, ...(env && { env }) });
}

/**
 * @param {import('../../app/_commands/runChild.mjs').Ended} ended
 * @returns {Count}
 */
function once({ code, timedOut }) {
  if (code === 0) return { passed: 1, failed: 0 };
  return { passed: 0, failed: 1, why: timedOut ? 'it did not end in the time it is given' : `code ${code}` };
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

/**
 * @param {string} file
 * @returns {import('./countResults.mjs').Report | undefined}
 */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
