'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { rollWords } from '@/app/_words/rollWords';
import type { RollUsed } from '@/lib/grid/rollUsed';
import type { SheetsPlan } from '@/lib/layout/plannedSheets';

type SheetCountProps = Readonly<{
  plan: SheetsPlan;
  /** Of a roll, what the whole job uses up. */
  used: RollUsed | null;
  newRollMm: number | null;
}>;

/** How many sheets the good pieces take, and how far that is from the least that is possible. */
export function SheetCount({ plan, used, newRollMm }: SheetCountProps) {
  const formatter = formatterFor(useTextContext());
  const { count, lowerBound, wasteShare, roll } = plan;
  const sheets = formatter.count(count, 'sheet');
  return (
    <p>
      {roll !== null
        ? `${metres(roll.lengthMm)} of roll for the good pieces, in ${formatter.count(count, 'print')}; ${metres(roll.leastMm)} is the least possible.`
        : lowerBound >= count
          ? `${sheets} for the good pieces; no layout needs fewer.`
          : `${sheets} for the good pieces; ${formatter.number(lowerBound, 0)} is the least possible.`}{' '}
      {formatter.share(wasteShare)} of their paper is left over.{' '}
      {used === null
        ? 'Spoiled pieces and tests come on top.'
        : `With spoiled pieces and tests it is ${rollWords(used, newRollMm, formatter)}.`}
      {roll !== null && ' What the printer needs for a sheet is counted by area: a letter sheet is one.'}
    </p>
  );

  function metres(mm: number): string {
    return `${formatter.number(mm / 1000, 2)} m`;
  }
}
