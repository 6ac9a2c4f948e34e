import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { OpenItem } from '@/shared/schemas/order';
import { dueWords, shortDay } from './orderDayWords';

export const ofWhomWords: Readonly<Record<OpenItem['ofWhom'], string>> = {
  customer: 'The customer',
  maker: 'You',
  supplier: 'The supplier',
};

export function itemsAnswer(items: readonly OpenItem[]): AnswerWords {
  const open = items.filter(({ doneOn }) => doneOn === null).length;
  if (open > 0)
    return {
      key: `${withCapital(spelledNumber(open))} open`,
      after: `${items.length > open ? `, ${spelledNumber(items.length - open)} done` : ''}`,
    };
  return items.length === 0 ? { key: 'Nothing noted' } : { key: 'All is there' };
}

/** @returns of whom it is awaited and by when, or when it came. */
export function itemLineWords(
  { ofWhom, doneBy, doneOn }: OpenItem,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  if (doneOn !== null) return `done ${shortDay(doneOn, today, locale)}`;
  const of = ofWhomWords[ofWhom].toLowerCase();
  return doneBy === null
    ? `of ${of}`
    : `of ${of}, by ${shortDay(doneBy, today, locale)}, ${dueWords(doneBy, today, formatter)}`;
}
