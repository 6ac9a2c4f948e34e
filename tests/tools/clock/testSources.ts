import { projectSources } from '@/tests/tools/floors/projectSources';
import type { Source } from '@/tests/tools/floors/source';
import { testFiles } from '@/tests/tools/floors/testFiles';

/** The unit tests with all that they can import; the end-to-end tests have a clock of their own. */
export function testSources(root: string): readonly Source[] {
  return [
    ...projectSources(root),
    ...testFiles(root, (path) => !path.endsWith('.mjs') && !path.startsWith('tests/e2e/')),
  ];
}
