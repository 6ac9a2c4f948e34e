import type { UsedRate } from '@/lib/job/usedRate';
import type { Where } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';

/** Figures that are told in one finding and mended by one button. */
export interface AlikeRates {
  /** The first of them, with the names of all. */
  readonly used: UsedRate;
  readonly rate: Rate;
  readonly wheres: readonly Where[];
}

/**
 * Prices of one blank that are the same figure in several sizes were typed once and are told once. Every other rate
 * stands by itself.
 *
 * @param packOf pieces in a pack; sizes that are sold in other packs are not alike
 */
export function alikeRates(
  rates: readonly (readonly [UsedRate, Rate])[],
  packOf: (used: UsedRate) => number | null,
): readonly AlikeRates[] {
  const groups = new Map<string, AlikeRates>();
  for (const [used, rate] of rates) {
    const { document, id, path, size } = used.where;
    const isOfSize = document === 'blank' && path[0] === 'sizes' && path.at(-1) === 'price';
    const key = JSON.stringify(isOfSize ? [id, rate.value, rate.unit, packOf(used)] : used.where);
    const before = groups.get(key);
    groups.set(
      key,
      before === undefined
        ? { used, rate, wheres: [used.where] }
        : {
            used: {
              ...before.used,
              of: `${before.used.of}, ${size ?? used.of}`,
              where: wholeBlank(before.used.where),
            },
            rate,
            wheres: [...before.wheres, used.where],
          },
    );
  }
  return [...groups.values()];
}

const wholeBlank = ({ size: _, ...where }: Where): Where => where;
