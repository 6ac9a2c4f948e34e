import type { Parting } from '@/lib/stored/leaving';
import { isPlainObject } from '@/lib/stored/sameValue';
import type { StockCount } from '@/shared/schemas/stock';

/**
 * What version 3 of a blank held of its stock: a figure a size, which counts as counted when the blank was last
 * written. A 0 stood wherever nobody had counted, so it tells nothing.
 */
export const stockLeaving: Parting = (body, { id, at }) => {
  const sizes: readonly unknown[] = isPlainObject(body) && Array.isArray(body.sizes) ? body.sizes : [];
  return {
    entries: sizes.flatMap((size) => {
      if (!isPlainObject(size) || typeof size.name !== 'string') return [];
      const { name, onHand } = size;
      if (typeof onHand !== 'number' || onHand <= 0) return [];
      const count: StockCount = {
        item: { kind: 'blank', blankId: id, size: name.trim(), lot: null },
        place: { kind: 'home' },
        grade: 'first',
        quantity: onHand,
      };
      return [{ kind: 'stockCount', version: 1, at, body: count }];
    }),
    papers: [],
  };
};
