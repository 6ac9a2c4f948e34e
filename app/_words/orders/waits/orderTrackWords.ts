import type { Formatter } from '@/app/_words/formatter';
import { dueWords, shortDay } from '@/app/_words/orders/orderDayWords';
import type { TrackStage } from '@/lib/orders/orderTrack';

/** @returns the day under a stage; empty where nobody noted or promised one. */
export function stageDayWords(
  { stage, place, on, by }: TrackStage,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  if (place === 'past') return on === null ? '' : shortDay(on, today, locale);
  // Goods go out against the balance, where no invoice names a day.
  if (stage === 'paid' && by === null && place === 'ahead') return 'at hand-over';
  if (by === null) return on === null ? '' : `since ${shortDay(on, today, locale)}`;
  const due = `by ${shortDay(by, today, locale)}`;
  return place === 'present' ? `${due}, ${dueWords(by, today, formatter)}` : due;
}
