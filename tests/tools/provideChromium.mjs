import { runChild } from '../../app/_commands/runChild.mjs';
import { findChromium } from './findChromium.mjs';

/** A download that takes longer is given up; another way may do. */
const STILL = { afterMs: 20 * 60_000 };

/**
 * Finds a Chromium, and installs one where there is none.
 *
 * @param {string} root the folder of package.json
 * @returns {Promise<{ path: string } | { problem: string }>}
 */
export async function provideChromium(root) {
  const found = await findChromium();
  if (found !== undefined) return { path: found };
  if (process.env.CHROMIUM_PATH) {
    return { problem: `CHROMIUM_PATH names ${process.env.CHROMIUM_PATH}, and that does not start.` };
  }
  for (const steps of waysToInstall()) {
    for (const [program = '', ...args] of steps) {
      console.log(`Installing Chromium: ${[program, ...args].join(' ')}`);
      const env = { DEBIAN_FRONTEND: 'noninteractive' };
      if ((await runChild(program, args, { cwd: root, env, still: STILL })).code !== 0) break;
    }
    const installed = await findChromium();
    if (installed !== undefined) return { path: installed };
  }
  return {
    problem:
      'The end-to-end tests need Chromium, and it could not be installed. Install it by hand (on Debian: apt-get install chromium) or set CHROMIUM_PATH to its program.',
  };
}

/** @returns {readonly (readonly (readonly string[])[])[]} */
function waysToInstall() {
  const own = [[process.execPath, 'node_modules/playwright-core/cli.js', 'install', 'chromium']];
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return [own];
  const system = (/** @type {string} */ name) => [
    ['apt-get', 'update'],
    ['apt-get', 'install', '-y', '--no-install-recommends', name],
  ];
  return [system('chromium-headless-shell'), system('chromium'), own];
}
