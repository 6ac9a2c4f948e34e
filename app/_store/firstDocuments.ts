import { dayOf } from '@/app/_clock/dayOf';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { NewDocument } from './newDocuments';

/** The examples a first visit finds, dated from that visit; their code is fetched only then. */
export async function firstDocuments(visit: Date): Promise<readonly NewDocument<DocumentBodies>[]> {
  const { exampleDocuments } = await import('@/lib/examples/exampleDocuments');
  return exampleDocuments(dayOf(visit));
}
