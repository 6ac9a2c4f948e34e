import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { readSource, type Source } from './source';

/**
 * What is written below `tests`, without what runs leave there: whole builds among it, with links to every package.
 *
 * @param wanted whether a file is read, by its path from the project's root
 */
export function testFiles(root: string, wanted: (path: string) => boolean): readonly Source[] {
  const folders = readdirSync(join(root, 'tests'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map(({ name }) => name);
  const below = folders.flatMap((folder) =>
    readdirSync(join(root, 'tests', folder), { recursive: true, encoding: 'utf8' }).map((path) =>
      join(folder, path),
    ),
  );
  return [...readdirSync(join(root, 'tests')), ...below]
    .map((path) => ['tests', ...path.split(sep)].join('/'))
    .filter((path) => /(?<!\.d)\.(tsx?|mjs)$/.test(path) && wanted(path))
    .sort()
    .map((path) => readSource(path, readFileSync(join(root, path), 'utf8')));
}
