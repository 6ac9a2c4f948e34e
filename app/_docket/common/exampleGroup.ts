import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { exampleThingIds } from '@/lib/examples/exampleThingIds';

/**
 * Blanks and pictures of the examples are listed apart on a job of the maker's own, after theirs.
 *
 * @returns the name of their group; undefined for what is the maker's own, and on the examples themselves
 */
export const exampleGroup = (jobId: string, thingId: string): string | undefined =>
  exampleThingIds.includes(thingId) && !exampleJobIds.includes(jobId) ? 'From the examples' : undefined;
