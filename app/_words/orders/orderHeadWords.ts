import { wantedDayWords } from '@/app/_words/docket/jobWords';
import { type PieceWord, pieceWords } from '@/app/_words/docket/pieceWords';
import type { Formatter } from '@/app/_words/formatter';
import { daysBetween } from '@/shared/days';
import { orderNumberText } from '@/shared/orderNumberText';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { OrderNumber } from '@/shared/schemas/orderEvents';
import { wantedPieces } from '@/shared/wantedPieces';
import { dueName } from './orderDayWords';

interface OrderHead {
  /** Null until the enquiry has one. */
  readonly number: OrderNumber | null;
  readonly jobs: readonly Job[];
  readonly blanks: Readonly<Record<string, Blank>>;
  /** As they said it, where no job says how many. */
  readonly askedPieces: number | null;
  readonly wantedOn: string | null;
  /** The day to keep (`dayToKeep`). */
  readonly dueOn: string | null;
}

/** @example 'order 26-014A, 37 shirts, wanted Monday, 14 December' */
export function orderLineWords(
  { number, jobs, blanks, askedPieces, wantedOn, dueOn }: OrderHead,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  const lines = jobs.flatMap((job) => job.lines);
  const pieces = wantedPieces(lines);
  const word = oneWord(lines.map(({ blankId }) => pieceWords(blanks[blankId])));
  const many =
    pieces > 0
      ? formatter.count(pieces, word.one, word.many)
      : askedPieces === null
        ? null
        : `about ${formatter.count(askedPieces, 'piece')} asked for`;
  return [
    number === null ? 'order without a number' : `order ${orderNumberText(number)}`,
    ...(many === null ? [] : [many]),
    dueOn === null ? 'no day agreed' : `${dueName(dueOn, wantedOn)} ${wantedDayWords(dueOn, today, locale)}`,
  ].join(', ');
}

/** @returns what is wrong with the day to keep, and what to do; null where it can still be kept. */
export function dueDayProblem(
  { dueOn, wantedOn }: Pick<OrderHead, 'dueOn' | 'wantedOn'>,
  isMade: boolean,
  today: string,
  formatter: Formatter,
): { readonly sentence: string; readonly detail: string } | null {
  if (dueOn === null || isMade) return null;
  const days = daysBetween(dueOn, today);
  if (days <= 0) return null;
  const past = `${formatter.day(dueOn)}, ${formatter.count(days, 'day')} ago.`;
  return dueOn === wantedOn
    ? {
        sentence: `It was wanted on ${past}`,
        detail: 'No quote can promise that day and nothing can be planned for it. Agree on another one.',
      }
    : {
        sentence: `It was promised for ${past}`,
        detail:
          'Nothing can be planned for that day. Agree on another one, and set it as the day it is wanted.',
      };
}

function oneWord(words: readonly PieceWord[]): PieceWord {
  const [first, ...others] = words;
  return first !== undefined && others.every(({ many }) => many === first.many)
    ? first
    : pieceWords(undefined);
}
