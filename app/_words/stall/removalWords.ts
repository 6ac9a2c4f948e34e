import type { Formatter } from '@/app/_words/formatter';
import type { DayRemoval } from '@/lib/stall/car/dayRemoval';

const refused = {
  notClosed:
    'Something was counted for this day. Close it in the evening first: else what was sold stays in the stock and its money is in no sum. You can put the day away.',
  tapsSince:
    'Taps came or went after its close. Close it again first: else they are in no stock and no sum. You can put the day away.',
} as const;

/** Why a stall day stays. */
export const removalRefused = (removal: DayRemoval): string | undefined =>
  removal.kind === 'refused' ? refused[removal.why] : undefined;

/** What goes with a stall day that is removed, and what stays of it; null where there is nothing to tell. */
export function removalWords(removal: DayRemoval, { count }: Formatter): string | null {
  if (removal.kind === 'refused') return null;
  if (removal.isClosed)
    return 'If it is removed, its close stays: what it booked, and what it teaches the next fairs.';
  const { pieces, seconds } = removal;
  if (pieces === 0) return null;
  const among = seconds === 0 ? '' : `, ${count(seconds, 'second')} among them,`;
  return `If it is removed, ${count(pieces, 'piece')} in the car for it${among} ${pieces === 1 ? 'lies' : 'lie'} at home again.`;
}
