import type { Paper } from '@/shared/schemas/happened';
import type { DayClose } from '@/shared/schemas/stallPapers';

/** A paper of a stall day as screens and copies have it. */
export type DayPaper<Kind extends 'stallPlan' | 'dayClose', Body> = Pick<Paper<Kind, Body>, 'id' | 'body'> & {
  readonly withdrawn: boolean;
};

/** @returns of each day that is closed the close that counts, by the id of the day */
export const closesInForce = <Close extends DayPaper<'dayClose', DayClose>>(
  closes: readonly Close[],
): ReadonlyMap<string, Close> =>
  new Map(
    closes.filter(({ withdrawn }) => !withdrawn).map((close) => [close.body.stallDayId, close] as const),
  );

/** @returns the close of a day that counts: the last that went out and was not withdrawn; null where it is open. */
export const closeInForce = <Close extends DayPaper<'dayClose', DayClose>>(
  closes: readonly Close[],
  stallDayId: string,
): Close | null =>
  closes.findLast(({ body, withdrawn }) => !withdrawn && body.stallDayId === stallDayId) ?? null;
