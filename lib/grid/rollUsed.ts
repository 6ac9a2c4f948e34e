import { rollWorthMm } from '@/lib/layout/rollWorth';
import type { Sheet } from '@/shared/schemas/workshop';
import { type CostSheet, wholeJob } from './costSheet';

/** Roll that a job uses up, spoiled pieces and tests included. */
export interface RollUsed {
  readonly lengthMm: number;
  /** Of a new roll; null where it is not said what one holds. */
  readonly rolls: number | null;
}

/** @returns null for cut sheets. */
export function rollUsed(
  costs: CostSheet,
  paper: Pick<Sheet, 'form' | 'widthMm' | 'rollLengthMm'>,
): RollUsed | null {
  if (paper.form === 'cut') return null;
  const lengthMm = wholeJob(costs, 'sheets') * rollWorthMm(paper.widthMm);
  return { lengthMm, rolls: paper.rollLengthMm === null ? null : lengthMm / paper.rollLengthMm };
}
