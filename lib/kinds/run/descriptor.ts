import { workLinks } from '@/lib/kinds/workLinks';
import type { KindFacts, Link } from '@/lib/stored/registry';
import type { Run } from '@/shared/schemas/making/run';

export const run: KindFacts<Run, 'draft'> = {
  nature: 'draft',
  word: 'run',
  version: 1,
  steps: {},
  linksOf: ({ works, sizesFirst }) => [
    ...works.flatMap((work, at) => workLinks(work, ['works', at])),
    ...sizesFirst.map(({ jobId }, at): Link => ({ to: 'job', id: jobId, path: ['sizesFirst', at, 'jobId'] })),
  ],
};
