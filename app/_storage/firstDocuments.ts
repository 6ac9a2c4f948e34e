import type { DocumentBodies } from './documentRegistry';
import type { NewDocument } from './newDocuments';

/** Working days the example's club leaves until its event. */
const EVENT_IN_WORKING_DAYS = 12;

/** The examples a first visit finds, dated from that visit; their code is fetched only then. */
export const firstDocuments = async (visit: Date): Promise<readonly NewDocument<DocumentBodies>[]> => {
  const { exampleDocuments } = await import('@/lib/examples/exampleDocuments');
  return exampleDocuments(dayOf(visit), dayOf(workingDaysAfter(visit, EVENT_IN_WORKING_DAYS)));
};

/** @returns the day some working days later, Monday to Friday counted. */
const workingDaysAfter = (start: Date, workingDays: number): Date => {
  const day = new Date(start);
  for (let left = workingDays; left > 0; ) {
    day.setDate(day.getDate() + 1);
    if (day.getDay() !== 0 && day.getDay() !== 6) left -= 1;
  }
  return day;
};

/** The day on the maker's own calendar, not the one in Greenwich. */
const dayOf = (date: Date): string =>
  [
    String(date.getFullYear()).padStart(4, '0'),
    String(date.getMonth() + 1).padStart(2, '0'),
    String(date.getDate()).padStart(2, '0'),
  ].join('-');
