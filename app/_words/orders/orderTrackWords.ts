import type { Formatter } from '@/app/_words/formatter';
import type { TrackStage } from '@/lib/orders/orderTrack';
import { dueWords, shortDay } from './orderDayWords';

/** @returns the day under a stage; empty where nobody noted or promised one. */
export function stageDayWords(
  { place, on, by }: TrackStage,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  if (place === 'past') return on === null ? '' : shortDay(on, today, locale);
  if (by === null) return on === null ? '' : `since ${shortDay(on, today, locale)}`;
  const due = `by ${shortDay(by, today, locale)}`;
  return place === 'present' ? `${due}, ${dueWords(by, today, formatter)}` : due;
}
