'use client';

import type { SheetsPlan } from '@/lib/sheets/plannedSheets';
import { useTextContext } from '../_fields/useTextContext';
import { speakerOf } from '../_text/speaker';

/** How many sheets the good pieces take, and how far that is from the least that is possible. */
export function SheetCount({ plan }: Readonly<{ plan: SheetsPlan }>) {
  const speak = speakerOf(useTextContext());
  const { count, lowerBound, wasteShare } = plan;
  const sheets = speak.count(count, 'sheet');
  return (
    <p>
      {lowerBound >= count
        ? `${sheets} for the good pieces; no layout needs fewer.`
        : `${sheets} for the good pieces; ${speak.number(lowerBound, 0)} is the least possible.`}{' '}
      {speak.share(wasteShare)} of their paper is left over. Spoiled pieces and tests come on top.
    </p>
  );
}
