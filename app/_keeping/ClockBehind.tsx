'use client';

import { dayOf } from '@/app/_clock/dayOf';
import { Advice } from '@/app/_controls/Advice';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { clockBehindWords } from '@/app/_words/store/deviceWords';
import type { ReadyWorkspace } from './WithWorkspace';

/** Says that the clock of the device stands before what was noted on it, wherever days come from the clock. */
export function ClockBehind({ clockBehind }: Pick<ReadyWorkspace, 'clockBehind'>) {
  const formatter = formatterFor(useTextContext());
  if (clockBehind === null) return null;
  const { deviceClock, lastEntry } = clockBehind;
  const days = { clockDay: dayOf(new Date(deviceClock)), notedDay: dayOf(new Date(lastEntry)) };
  return <Advice severity="caution">{clockBehindWords(days, formatter)}</Advice>;
}
