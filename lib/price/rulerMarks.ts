import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';

export type MarkId = 'outOfPocketFloor' | 'variableFloor' | 'fullCost' | 'target' | 'ceiling';

/** One of the five marks of the price ruler; averages over all good pieces of the job, without tax, unrounded. */
export interface RulerMark {
  readonly id: MarkId;
  readonly each: number;
}

/**
 * The marks a price is read against. The ceiling stands only where the maker has evidence of it.
 *
 * @returns marks in their fixed order, currency units a piece
 */
export function rulerMarks({ laidOut, sheet }: CostedJob): readonly RulerMark[] {
  const pieces = wholeJob(sheet, 'goodPieces');
  const each = (id: Exclude<MarkId, 'ceiling'>): RulerMark => ({ id, each: wholeJob(sheet, id) / pieces });
  const marks = [each('outOfPocketFloor'), each('variableFloor'), each('fullCost'), each('target')];
  const ceiling = averageCeiling(laidOut.job);
  return ceiling === null ? marks : [...marks, { id: 'ceiling', each: ceiling }];
}

function averageCeiling(job: CostedJob['laidOut']['job']): number | null {
  const taxed = job.channel.taxMode === 'inside' ? 1 + job.channel.tax.value : 1;
  let money = 0;
  let pieces = 0;
  for (const line of job.lines) {
    if (line.line.marketCeiling === null) return null;
    const quantity = line.sizes.reduce((sum, size) => sum + size.quantity, 0);
    money += (line.line.marketCeiling / taxed) * quantity;
    pieces += quantity;
  }
  return money / pieces;
}
