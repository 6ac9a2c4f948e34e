import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import type { Order } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';

/** @returns what was asked or typed and is not on the quote, for the bench could not keep it, and days that cross. */
export function quoteDayCautions(
  { leadDays: typed }: Pick<Order, 'leadDays'>,
  { wantedOn, validUntil, dates }: Pick<Quote, 'wantedOn' | 'validUntil' | 'dates'>,
  formatter: Formatter,
): readonly Wording[] {
  const { ready, leadDays, approveBy } = dates;
  const says = ready === null ? 'The quote names no day.' : `The quote says ${formatter.day(ready)}.`;
  const isLate = wantedOn !== null && (ready === null || ready > wantedOn);
  const isShort = typed !== null && leadDays !== null && leadDays > typed;
  return [
    ...(isLate
      ? [
          wording(
            `It is wanted on ${formatter.day(wantedOn)}, and that cannot be kept beside what was accepted.`,
            `${says} Agree on another day, or free more hours at the bench.`,
          ),
        ]
      : []),
    ...(isShort
      ? [
          wording(
            `A lead time of ${formatter.count(typed, 'working day')} is shorter than the bench can keep.`,
            `It takes ${formatter.count(leadDays, 'working day')}. ${says}`,
          ),
        ]
      : []),
    ...(approveBy !== null && ready !== null && validUntil > approveBy
      ? [
          wording(
            `It is valid until ${formatter.day(validUntil)}, and its answer may come after ${formatter.day(approveBy)}, the last day to approve.`,
            `${formatter.day(ready)} cannot be kept then. Let it be valid for fewer days, or agree on a later day.`,
          ),
        ]
      : []),
  ];
}
