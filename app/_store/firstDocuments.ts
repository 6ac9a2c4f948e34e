import { dayOf } from '@/app/_clock/dayOf';
import { addWorkingDays } from '@/shared/days';
import type { DocumentBodies } from './documentRegistry';
import type { NewDocument } from './newDocuments';

/** Working days the example's club leaves until its event. */
const EVENT_IN_WORKING_DAYS = 12;

/** The examples a first visit finds, dated from that visit; their code is fetched only then. */
export const firstDocuments = async (visit: Date): Promise<readonly NewDocument<DocumentBodies>[]> => {
  const { exampleDocuments } = await import('@/lib/examples/exampleDocuments');
  const day = dayOf(visit);
  return exampleDocuments(day, addWorkingDays(day, EVENT_IN_WORKING_DAYS));
};
