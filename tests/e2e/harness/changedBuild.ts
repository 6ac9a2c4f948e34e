import { cp, mkdir, readdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

const CHUNK = /static\/chunks\/([\w.~-]+)\.(js|css)/g;
const TEXT = /\.(?:js|mjs|cjs|json|html|body|meta|rsc|css|map)$|BUILD_ID$/;

/**
 * A copy of the build as the next version would be: another name, and no script or style under its old address. Parts
 * that are asked for by it are its own alone.
 *
 * @param name a folder for it among the tests' output
 * @param chunks whether scripts and styles get other names; without it only the build has
 * @param change what else is another in it: is given each of its texts
 * @returns the folder, to be served while the test runs, and the build's name
 */
export async function changedBuild(
  name: string,
  {
    chunks = true,
    change = (text) => text,
  }: Readonly<{ chunks?: boolean; change?: (text: string) => string }> = {},
): Promise<{ readonly folder: string; readonly build: string }> {
  const folder = join(process.cwd(), 'tests', '.output', `build-${name}`);
  const drop = () => rm(folder, { recursive: true, force: true });
  await drop();
  onTestFinished(drop);
  await mkdir(folder, { recursive: true });
  const built = join(folder, '.next');
  await cp('.next', built, {
    recursive: true,
    // Links to packages, and what only the next build uses.
    filter: (source) =>
      !/\.next\/(?:cache|dev|types|node_modules|turbopack|trace|diagnostics|lock)/.test(source),
  });
  await cp('public', join(folder, 'public'), { recursive: true });
  await cp('package.json', join(folder, 'package.json'));
  await symlink(join(process.cwd(), 'node_modules'), join(folder, 'node_modules'));
  const before = (await readFile(join(built, 'BUILD_ID'), 'utf8')).trim();
  // Of the same length, for texts that are sent with theirs.
  const build = `${name}${before}`.slice(0, before.length);
  for (const entry of await readdir(built, { recursive: true, withFileTypes: true })) {
    const file = join(entry.parentPath, entry.name);
    if (!entry.isFile() || !TEXT.test(file)) continue;
    const text = await readFile(file, 'utf8');
    const named = change(text).replaceAll(before, build);
    const changed = chunks ? named.replace(CHUNK, 'static/chunks/$1x.$2') : named;
    if (changed !== text) await writeFile(file, changed);
  }
  await rename(join(built, 'static', before), join(built, 'static', build));
  if (chunks) await renameChunks(join(built, 'static', 'chunks'));
  return { folder, build };
}

async function renameChunks(folder: string): Promise<void> {
  for (const file of await readdir(folder)) {
    const [, stem, ending] = file.match(/^(.+)\.(js|css)$/) ?? [];
    if (stem !== undefined) await rename(join(folder, file), join(folder, `${stem}x.${ending}`));
  }
}
