import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { projectSources } from '@/tests/tools/floors/projectSources';
import { readSource, type Source } from '@/tests/tools/floors/source';

/** The unit tests with all that they can import; the end-to-end tests have a clock of their own. */
export function testSources(root: string): readonly Source[] {
  const tests = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
    .map((path) => ['tests', ...path.split(sep)].join('/'))
    .filter((path) => /(?<!\.d)\.tsx?$/.test(path) && !path.startsWith('tests/e2e/'))
    .sort();
  return [
    ...projectSources(root),
    ...tests.map((path) => readSource(path, readFileSync(join(root, path), 'utf8'))),
  ];
}
