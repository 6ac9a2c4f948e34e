import type { CostedJob } from '@/lib/grid/costJob';
import { caseValue } from '@/lib/grid/costSheet';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { type MinorUnits, toMinor } from '@/shared/money';
import { writtenPrice } from './writtenPrice';

/**
 * What each size of a line adds to the maker's own price of any break: the up-charge that is typed for it, else what
 * its target adds to that of the first size in the batch as asked, lifted to the step of up-charges. It is the same
 * in every break and wherever breaks begin, so that a list that is clean stays so.
 *
 * @returns whole minor units, 0 for the first size unless one is typed for it; all 0 where one price covers all
 */
export function sizeCharges(
  { laidOut, sheet }: CostedJob,
  { line, sizes }: ResolvedLine,
): readonly MinorUnits[] {
  const { job } = laidOut;
  const { currency, policy } = job.workshop;
  const target = (name: string | undefined) =>
    caseValue(
      sheet,
      'target',
      sheet.cases.findIndex(({ lineId, size }) => lineId === line.id && size === name),
    );
  return sizes.map(({ size }) => {
    if (line.upCharging === 'averaged') return 0 as MinorUnits;
    const typed = line.upCharges.filter((charge) => charge.size === size);
    return typed.length > 0
      ? toMinor(
          typed.reduce((sum, { amount }) => sum + amount, 0),
          currency,
        )
      : writtenPrice(job, target(size) - target(sizes[0]?.size), policy.upChargeStep ?? policy.priceStep);
  });
}
