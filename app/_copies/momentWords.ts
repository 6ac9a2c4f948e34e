import { wallAt } from '@/app/_clock/wallAt';
import { clockWords } from '@/app/_words/clockWords';
import type { TextContext } from '@/app/_words/formatter';
import { formatterFor } from '@/app/_words/formatter';

/** @returns a moment by the maker's own calendar and clock: “14 Nov 2026, 20:10”. */
export function momentWords(at: number, context: TextContext): string {
  const { day, minute } = wallAt(at);
  return `${formatterFor(context).day(day)}, ${clockWords(minute, context.locale)}`;
}
