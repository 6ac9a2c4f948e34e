import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { readSource, type Source } from './source';

/** Every source file of the three floors, and the framework's own files at the top level. */
export function projectSources(root: string): readonly Source[] {
  const inFolders = ['shared', 'lib', 'app'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      // The folder of a route may be named like a file.
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => relative(root, join(parentPath, name)).split(sep).join('/')),
  );
  return [...inFolders, 'proxy.ts', 'next.config.ts', 'instrumentation-client.ts']
    .filter((path) => /\.(ts|tsx|mts|mjs|js|jsx)$/.test(path))
    .sort()
    .map((path) => readSource(path, readFileSync(join(root, path), 'utf8')));
}
