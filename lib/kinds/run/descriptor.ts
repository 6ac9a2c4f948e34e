import { workLinks } from '@/lib/kinds/workLinks';
import type { KindDescriptor, Link } from '@/lib/stored/registry';
import { type Run, runSchema } from '@/shared/schemas/run';

export const run: KindDescriptor<Run, 'draft'> = {
  nature: 'draft',
  word: 'run',
  version: 1,
  schema: runSchema,
  steps: {},
  linksOf: ({ works, sizesFirst }) => [
    ...works.flatMap((work, at) => workLinks(work, ['works', at])),
    ...sizesFirst.map(({ jobId }, at): Link => ({ to: 'job', id: jobId, path: ['sizesFirst', at, 'jobId'] })),
  ],
};
