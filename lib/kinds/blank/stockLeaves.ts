import { heldSizeNameSchema } from '@/lib/kinds/heldShapes';
import { isPlainObject } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';
import type { Parting } from '@/lib/stored/leaving';
import type { StockCount } from '@/shared/schemas/stock';
import { z } from '@/shared/schemas/z';

/** What a size of version 3 held of its stock. */
const onHandSchema = z.int().min(0).max(100_000);

/**
 * Version 3 to 4: what is on hand is entries. A figure that cannot be read stays where it is, so that the blank is
 * refused and kept as it was found.
 */
export const blankWithoutStock = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        sizes: eachEntry(body.sizes, ({ onHand, ...size }) =>
          onHand === undefined || onHandSchema.safeParse(onHand).success ? size : { ...size, onHand },
        ),
      }
    : body;

/**
 * The stock of version 3: a figure a size, which counts as counted when the blank was last written. A 0 stood
 * wherever nobody had counted, so it tells nothing.
 */
export const stockLeaves: Parting = (body, { id, at }) => {
  const sizes: readonly unknown[] = isPlainObject(body) && Array.isArray(body.sizes) ? body.sizes : [];
  return {
    entries: sizes.flatMap((size) => {
      if (!isPlainObject(size)) return [];
      const name = heldSizeNameSchema.safeParse(size.name);
      const onHand = onHandSchema.safeParse(size.onHand);
      if (!name.success || !onHand.success || onHand.data === 0) return [];
      const count: StockCount = {
        item: { kind: 'blank', blankId: id, size: name.data, lot: null },
        place: { kind: 'home' },
        grade: 'first',
        quantity: onHand.data,
      };
      return [{ kind: 'stockCount', version: 1, at, body: count }];
    }),
    papers: [],
  };
};
