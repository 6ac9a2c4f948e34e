import { byDayWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import type { ProofOf, StallDue } from '@/lib/stall/days/duesOf';
import { firstDayOf, lastDayOf } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';

export const stageWords: Readonly<Record<StallDay['stage'], string>> = {
  idea: 'only an idea',
  applied: 'applied for',
  accepted: 'accepted',
  refused: 'refused',
  calledOff: 'called off',
};

const proofNames: Readonly<Record<ProofOf, string>> = {
  permit: 'permit',
  insurance: 'proof of insurance',
};

/** @returns when it is: “Sat 24 Apr”, or “Sat 24 Apr to Sun 25 Apr” */
export function stallDaysWords(stallDay: Pick<StallDay, 'days'>, today: string, locale: string): string {
  const [first, last] = [firstDayOf(stallDay), lastDayOf(stallDay)];
  if (first === null || last === null) return 'no day yet';
  const from = nearDayWords(first, today, locale);
  return first === last ? from : `${from} to ${nearDayWords(last, today, locale)}`;
}

/** What is due, in few words, and whether it is late. */
interface DueTold {
  readonly words: string;
  readonly isLate: boolean;
}

/** @returns what is to be done or asked, as a row of the calendar says it: “Apply by Mon 30 Nov” */
export function stallDueWords(due: StallDue, today: string, locale: string): DueTold {
  switch (due.kind) {
    case 'day':
      return { words: 'Which day is it?', isLate: false };
    case 'apply':
      return due.by < today
        ? { words: `Apply: the last day was ${nearDayWords(due.by, today, locale)}`, isLate: true }
        : { words: `Apply ${byDayWords(due.by, today, locale)}`, isLate: false };
    case 'answer':
      return due.by < today
        ? {
            words: `Ask for the answer, which was due ${nearDayWords(due.by, today, locale)}`,
            isLate: true,
          }
        : { words: `The answer is due ${byDayWords(due.by, today, locale)}`, isLate: false };
    case 'fee':
      return { words: `Is “${due.what}” paid?`, isLate: false };
    case 'proof':
      return due.state === 'unset'
        ? { words: `Is a ${proofNames[due.of]} asked for?`, isLate: false }
        : { words: `A ${proofNames[due.of]} is asked for and not here yet`, isLate: false };
    case 'proofEnds':
      return {
        words: `The ${proofNames[due.of]} ends ${nearDayWords(due.on, today, locale)}, before the stall does`,
        isLate: false,
      };
    default:
      return due satisfies never;
  }
}
