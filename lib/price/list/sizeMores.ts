import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { type MinorUnits, toMinor, toPriceEnding } from '@/shared/money';
import type { ListedSize } from './lineList';
import type { LineNeeds } from './lineNeeds';
import type { OrderRange } from './listFigures';

interface SizeMores {
  /** What the sums ask for: the most that any order needs, never below 0. */
  readonly suggested: readonly ListedSize[];
  /** What stands: typed up-charges where the list has prices of the maker's own. */
  readonly standing: readonly ListedSize[];
  /** What a typed up-charge of the base size adds to own prices. */
  readonly ownBase: MinorUnits;
}

/**
 * One charge a size over the whole list: the largest that any order needs, lifted to the step of up-charges. A list
 * whose charges moved with its breaks could not be told in one line of a paper. Up-charges that the maker typed belong
 * to prices of their own and stand in a list that has any; a typed one of the base size goes into the price itself.
 */
export function sizeMores(
  job: ResolvedJob,
  { line }: ResolvedLine,
  { sizes, base }: LineNeeds,
  { from, to }: OrderRange,
  hasOwn: boolean,
): SizeMores {
  const { currency, policy } = job.workshop;
  const step = policy.upChargeStep ?? policy.priceStep;
  const suggested = sizes.map(({ size, written }): ListedSize => {
    if (line.upCharging === 'averaged' || size === base.size) return { size: size.size, more: NOTHING };
    let most = 0;
    for (let n = from; n <= to; n += 1) most = Math.max(most, written(n) - base.written(n));
    // Two sums of one amount differ by noise: a step more for a millionth of a coin is none.
    return { size: size.size, more: toPriceEnding(most > 1e-9 ? most : 0, step, currency) };
  });
  if (!hasOwn || line.upCharging === 'averaged') return { suggested, standing: suggested, ownBase: NOTHING };
  const typed = new Map<string, number>();
  for (const { size, amount } of line.upCharges) typed.set(size, (typed.get(size) ?? 0) + amount);
  const baseTyped = typed.get(base.size.size);
  const ownBase = baseTyped === undefined ? NOTHING : toMinor(baseTyped, currency);
  const standing = suggested.map(({ size, more }): ListedSize => {
    const own = typed.get(size);
    if (own === undefined || size === base.size.size) return { size, more };
    return { size, more: (toMinor(own, currency) - ownBase) as MinorUnits };
  });
  return { suggested, standing, ownBase };
}

const NOTHING = 0 as MinorUnits;
