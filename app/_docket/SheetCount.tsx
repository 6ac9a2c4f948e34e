'use client';

import type { SheetsPlan } from '@/lib/sheets/plannedSheets';
import { useTextContext } from '../_fields/useTextContext';
import { speakerOf } from '../_text/speaker';

/** How many sheets the good pieces take, and how far that is from the least that is possible. */
export function SheetCount({ plan }: Readonly<{ plan: SheetsPlan }>) {
  const speak = speakerOf(useTextContext());
  const { count, lowerBound, wasteShare, roll } = plan;
  const sheets = speak.count(count, 'sheet');
  return (
    <p>
      {roll !== null
        ? `${metres(roll.lengthMm)} of roll for the good pieces, in ${speak.count(count, 'print')}; ${metres(roll.leastMm)} is the least possible.`
        : lowerBound >= count
          ? `${sheets} for the good pieces; no layout needs fewer.`
          : `${sheets} for the good pieces; ${speak.number(lowerBound, 0)} is the least possible.`}{' '}
      {speak.share(wasteShare)} of their paper is left over. Spoiled pieces and tests come on top.
      {roll !== null &&
        ' Paper, minutes and wear are counted in lengths with the area of a letter sheet, begun ones whole.'}
    </p>
  );

  function metres(mm: number): string {
    return `${speak.number(mm / 1000, 2)} m`;
  }
}
