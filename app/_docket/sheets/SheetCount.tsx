'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { leastSheetsWords } from '@/app/_words/docket/sheetWords';
import { formatterFor } from '@/app/_words/formatter';
import { rollWords } from '@/app/_words/rollWords';
import type { RollUsed } from '@/lib/grid/rollUsed';
import type { SheetsPlan } from '@/lib/layout/plannedSheets';

type SheetCountProps = Readonly<{
  plan: SheetsPlan;
  /** Whole sheets the job is expected to use. */
  expected: number;
  /** Of a roll, what the whole job uses up. */
  used: RollUsed | null;
  newRollMm: number | null;
}>;

/** How the sheets of the good pieces come to those the job takes, and how far they are from the least possible. */
export function SheetCount({ plan, expected, used, newRollMm }: SheetCountProps) {
  const formatter = formatterFor(useTextContext());
  const { count, roll } = plan;
  return (
    <p>
      {roll !== null
        ? `${metres(roll.lengthMm)} of roll for the good pieces, in ${formatter.count(count, 'print')}; ${metres(roll.leastMm)} is the least possible.`
        : `${formatter.count(count, 'sheet')} for the good pieces; ${leastSheetsWords(plan, formatter)}.`}{' '}
      {used === null
        ? `With what is spoiled, rejected and tested it is ${formatter.number(expected, 0)}.`
        : `With what is spoiled, rejected and tested it is ${rollWords(used, newRollMm, formatter)}.`}
    </p>
  );

  function metres(mm: number): string {
    return `${formatter.number(mm / 1000, 2)} m`;
  }
}
