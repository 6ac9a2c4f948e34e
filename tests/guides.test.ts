import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The guides of the project and of its rooms. */
const guides = ['', 'app', 'lib', 'shared', 'tests'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: folder !== '', encoding: 'utf8' })
    .filter((path) => /(^|[\\/])(README|DEVELOPERS)\.md$/.test(path))
    .map((path) => join(folder, path)),
);

/** Files and folders a guide names, from the top level. */
const namedPaths = (guide: string): readonly string[] =>
  [...guide.matchAll(/`((?:app|lib|shared|tests|public)\/[\w./[\]-]*\w\/?)`/g)].map(([, path]) => path ?? '');

describe('a guide', () => {
  test('stands in the rooms that need one', () => expect(guides.length).toBeGreaterThan(20));

  test.each(guides)('%s names files and folders that are there', (guide) => {
    const gone = namedPaths(readFileSync(join(root, guide), 'utf8')).filter(
      (path) => !existsSync(join(root, path)),
    );
    expect(gone).toEqual([]);
  });

  test('that names one that is gone is found', () => {
    expect(namedPaths('See `lib/grid/` and `lib/gone/file.ts`, not `app`.')).toEqual([
      'lib/grid/',
      'lib/gone/file.ts',
    ]);
  });
});

test('the guide for whoever carries the work on stays short enough to be read', () => {
  expect(Buffer.byteLength(readFileSync(join(root, 'DEVELOPERS.md')))).toBeLessThanOrEqual(12_000);
});
