import type { Scene } from '@/lib/check/rule';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { changeAt, typicalRate } from '@/lib/job/missingRate';
import type { Fix, Where } from '@/shared/finding';
import { isLargerSize } from '@/shared/isLargerSize';
import type { AlikeRates } from './alikeRates';

/** @returns the button that writes the typical figure in every place; null where none is typical. */
export function typicalFix(
  { used, wheres }: Pick<AlikeRates, 'used' | 'wheres'>,
  { resolved }: Scene,
): Fix | null {
  const rate = typicalRate(used, resolved.asOf, resolved.workshop.currency);
  if (rate === null || wheres.some((where) => isBelowSmaller(where, rate.value, resolved))) return null;
  return {
    label: 'useTypical',
    facts: { typical: rate.value, unit: rate.unit },
    changes: wheres.flatMap((where) => changeAt(where, rate)),
  };
}

/** A typical price under that of a smaller size would be asked about at once: then no button knows better. */
function isBelowSmaller(
  { document, id, path: [list, at] }: Where,
  typical: number,
  { lines }: ResolvedJob,
): boolean {
  if (document !== 'blank' || list !== 'sizes') return false;
  const sizes = lines.find(({ line }) => line.blankId === id)?.blank.sizes ?? [];
  const name = sizes[Number(at)]?.name ?? '';
  return sizes.some(
    (size) => size.price !== null && size.price.value > typical && isLargerSize(name, size.name),
  );
}
