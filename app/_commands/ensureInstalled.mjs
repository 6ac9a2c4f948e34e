import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { installNeeded } from './installNeeded.mjs';
import { nodeProblem } from './nodeProblem.mjs';
import { runChild } from './runChild.mjs';

/**
 * Sees to it that Node will do and that the packages named by the lockfile are there.
 *
 * @param {string} root the folder of package.json
 * @returns {Promise<string | undefined>} what is wrong, as a sentence; nothing when all is well
 */
export async function ensureInstalled(root) {
  const { engines } = readJson(join(root, 'package.json'));
  const problem = nodeProblem(process.versions.node, engines.node);
  if (problem !== undefined) return problem;

  const wanted = readJson(join(root, 'package-lock.json'));
  if (!installNeeded(wanted, readJson(join(root, 'node_modules', '.package-lock.json')))) return undefined;
  console.log('Installing the packages (npm ci) …');
  const [program, ...before] = npmCommand();
  // The build needs what is listed for development, whatever the machine's settings leave out.
  const args = [...before, 'ci', '--include=dev', '--no-audit', '--no-fund'];
  const { code } = await runChild(program, args, { cwd: root });
  if (code === 0) return undefined;
  return `The packages could not be installed (npm ci ended with code ${code}). The lines above say why; without a network connection nothing can be fetched.`;
}

/** @returns {[string, ...string[]]} */
function npmCommand() {
  const script = process.env.npm_execpath ?? '';
  // The npm that started this program, where there is one: it need not be on the path.
  return basename(script) === 'npm-cli.js' ? [process.execPath, script] : ['npm'];
}

/**
 * @param {string} file
 * @returns {any} nothing when the file is missing or half written
 */
function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
