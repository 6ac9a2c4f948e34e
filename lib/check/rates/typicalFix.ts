import type { Scene } from '@/lib/check/rule';
import { changeAt, typicalRate } from '@/lib/job/missingRate';
import type { Fix } from '@/shared/finding';
import type { AlikeRates } from './alikeRates';

/** @returns the button that writes the typical figure in every place; null where none is typical. */
export function typicalFix(
  { used, wheres }: Pick<AlikeRates, 'used' | 'wheres'>,
  { resolved }: Scene,
): Fix | null {
  const rate = typicalRate(used, resolved.asOf, resolved.workshop.currency);
  if (rate === null) return null;
  return {
    label: 'useTypical',
    facts: { typical: rate.value, unit: rate.unit },
    changes: wheres.flatMap((where) => changeAt(where, rate)),
  };
}
