import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { KeptBuild } from './keptBuild';
import { shells } from './shells';

/* Runs while the app is built, when its files are there already and its pages are not yet. */

/** Of what lies in .next/static, what a page may ask for. */
const ASKED_FOR = /\.(?:js|css|woff2?|wasm)$/;

/** The service worker as one script, with the list of what it keeps. */
export async function workerScript(): Promise<string> {
  const root = process.cwd();
  const bundled = await build({
    absWorkingDir: root,
    entryPoints: ['app/_offline/worker/worker.ts'],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    target: 'es2022',
    define: {
      'process.env.NODE_ENV': '"production"',
      KEPT_BUILD: JSON.stringify(await keptBuild(root)),
    },
  });
  return bundled.outputFiles[0]?.text ?? '';
}

async function keptBuild(root: string): Promise<KeptBuild> {
  const built = join(/* turbopackIgnore: true */ root, '.next');
  const files = await filesIn(join(built, 'static'));
  const icons = await filesIn(join(/* turbopackIgnore: true */ root, 'public', 'icons'));
  return {
    build: buildOf(files),
    pages: shells.map(({ page }) => page),
    files: files.filter((file) => ASKED_FOR.test(file)).map((file) => `/_next/static/${file}`),
    named: await Promise.all([
      ...icons.map((file) => named(`/icons/${file}`, join(root, 'public', 'icons', file))),
      named('/icon.svg', join(root, 'app', 'icon.svg')),
      named('/manifest.webmanifest', join(root, 'app', 'manifest.ts')),
    ]),
  };
}

/** The framework's name for the build is a folder among the files; its file of that name is written later. */
function buildOf(files: readonly string[]): string {
  // A host that keeps several versions side by side names them itself, and the pages go by that. The bundler puts false
  // in its place where there is none.
  const given = process.env.NEXT_DEPLOYMENT_ID;
  if (given) return given;
  const [build] = files.find((file) => file.endsWith('/_buildManifest.js'))?.split('/') ?? [];
  if (build === undefined) throw new Error('There is no name of the build among its files.');
  return build;
}

async function named(url: string, source: string): Promise<KeptBuild['named'][number]> {
  const hash = createHash('sha256').update(await readFile(source));
  return { url, revision: hash.digest('hex').slice(0, 16) };
}

/** Paths with slashes, the same in every run. */
async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) =>
      join(parentPath, name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}
