import { renamedRule } from '@/lib/kinds/renamedRule';
import { isPlainObject } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';

/**
 * Version 1 to 2: the rules of reckoning have new names. What went out keeps its meaning: a cap acted on the price of
 * each size, its charge included.
 */
export const priceListWithRules = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        versions: eachEntry(body.versions, (version) => ({
          ...version,
          items: eachEntry(version.items, ({ tariff, ...item }) => ({
            ...item,
            selling: renamedRule(item.selling),
            capOn: 'size',
            setUp: tariff,
          })),
        })),
      }
    : body;
