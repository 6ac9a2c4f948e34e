import type { Formatter } from '@/app/_words/formatter';
import type { TrackStage } from '@/lib/orders/orderTrack';
import { dueWords, shortDay } from './orderDayWords';

export const stageWords: Readonly<Record<TrackStage['stage'], string>> = {
  enquiry: 'Enquiry',
  quoted: 'Quoted',
  agreed: 'Approval and deposit',
  making: 'Making',
  delivered: 'Delivered',
  paid: 'Paid',
};

/** @returns the day under a stage; empty where nobody noted or promised one. */
export function stageDayWords(
  { place, on, by }: TrackStage,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  if (place === 'past') return on === null ? '' : shortDay(on, locale);
  if (by === null) return on === null ? '' : `since ${shortDay(on, locale)}`;
  const due = `by ${shortDay(by, locale)}`;
  return place === 'present' ? `${due}, ${dueWords(by, today, formatter)}` : due;
}
