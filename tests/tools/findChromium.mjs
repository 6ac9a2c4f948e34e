import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/**
 * A Chromium that starts on this machine, or nothing.
 *
 * @param {NodeJS.ProcessEnv} [env]
 * @param {(path: string) => boolean} [works]
 * @returns {Promise<string | undefined>} the path of its program
 */
export async function findChromium(env = process.env, works = starts) {
  const places = [...usualPlaces(process.platform, env), await ownPlace()];
  return places.find((place) => place !== undefined && works(place));
}

/**
 * Where a Chromium usually lies; CHROMIUM_PATH comes first and, when set, alone: who names one wants no other.
 *
 * @param {NodeJS.Platform} platform
 * @param {NodeJS.ProcessEnv} env
 * @returns {readonly string[]}
 */
export function usualPlaces(platform, env) {
  if (env.CHROMIUM_PATH) return [env.CHROMIUM_PATH];
  if (platform === 'darwin') {
    return ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  }
  if (platform === 'win32') {
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].flatMap((folder) =>
      folder === undefined
        ? []
        : [
            join(folder, 'Chromium', 'Application', 'chrome.exe'),
            join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
            join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
          ],
    );
  }
  return [
    // The same browser without its windows and tabs: it has the machine to itself.
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/lib/chromium/chromium',
    '/snap/bin/chromium',
  ];
}

/** The one that playwright-core would install. */
async function ownPlace() {
  try {
    const { chromium } = await import('playwright-core');
    return chromium.executablePath();
  } catch {
    return undefined;
  }
}

/** @param {string} path */
function starts(path) {
  if (!existsSync(path)) return false;
  // There `--version` opens a window.
  if (process.platform === 'win32') return true;
  // Some systems put a script in its place that only tells how to install it.
  return spawnSync(path, ['--version'], { timeout: 20_000 }).status === 0;
}
