import { dayOf } from '@/app/_clock/dayOf';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { NewDocument } from './newDocuments';

/**
 * The examples a first visit finds, dated from that visit; their code is fetched only then.
 *
 * @param language of the visitor's device: the example is in the money, paper and units of that place
 */
export async function firstDocuments(
  visit: Date,
  language: string,
): Promise<readonly NewDocument<DocumentBodies>[]> {
  const [{ exampleDocuments }, { regionOf }] = await Promise.all([
    import('@/lib/examples/exampleDocuments'),
    import('@/lib/examples/regionOf'),
  ]);
  return exampleDocuments(dayOf(visit), regionOf(language));
}
