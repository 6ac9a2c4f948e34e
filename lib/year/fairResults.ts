import { closesInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { compareText } from '@/shared/compareText';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { dayOfClose } from './takingRows';
import { type DaySpan, isWithin } from './yearSpan';

/** A day of selling as its close says it came out, currency units. */
export interface FairResult {
  readonly stallDayId: string;
  readonly title: string;
  readonly day: string;
  readonly currency: string;
  readonly takingsMinor: number;
  readonly profit: number | null;
  readonly payPerHour: number | null;
}

/** @returns those that paid most an hour first, those of which nobody knows last; other currencies among them. */
export const fairResults = (
  closes: readonly DayPaper<'dayClose', DayClose>[],
  span: DaySpan,
): readonly FairResult[] =>
  [...closesInForce(closes).values()]
    .filter(({ body }) => isWithin(span, dayOfClose(body)))
    .map(({ body }): FairResult => {
      const { stallDayId, title, currency, money, result } = body;
      const { profit, payPerHour } = result;
      return {
        stallDayId,
        title,
        day: dayOfClose(body),
        currency,
        takingsMinor: money.gross,
        profit,
        payPerHour,
      };
    })
    .toSorted(
      (one, other) =>
        (other.payPerHour ?? Number.NEGATIVE_INFINITY) - (one.payPerHour ?? Number.NEGATIVE_INFINITY) ||
        compareText(one.day, other.day) ||
        compareText(one.stallDayId, other.stallDayId),
    );
