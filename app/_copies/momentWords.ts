import { dayOf } from '@/app/_clock/dayOf';
import type { TextContext } from '@/app/_words/formatter';
import { formatterFor } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';

/** @returns a moment by the maker's own calendar and clock: “14 Nov 2026, 20:10”. */
export function momentWords(at: number, context: TextContext): string {
  const moment = new Date(at);
  const time = new Intl.DateTimeFormat(usableLocale(context.locale), { hour: '2-digit', minute: '2-digit' });
  return `${formatterFor(context).day(dayOf(moment))}, ${time.format(moment)}`;
}
