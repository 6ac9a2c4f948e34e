import type { z } from 'zod';
import type { BuyingAsked, BuyingWork } from '@/lib/buying/buyingAsked';
import type { Pile } from '@/lib/stock/foldStock';
import {
  buyingListSchema,
  type Consumable,
  consumableSchema,
  type Supplier,
  type SupplyItem,
  supplierSchema,
} from '@/shared/schemas/making/supply';
import type { JobInput } from '@/shared/schemas/request';
import { club, TODAY } from '@/tests/fixtures/clubJob';

export const work = (input: JobInput = club(), more: Partial<BuyingWork> = {}): BuyingWork => ({
  ...{ jobId: 'club', orderId: null, name: 'Club shirts', input, pressOn: null },
  ...more,
});

export const shirt = (size: string): SupplyItem => ({ kind: 'blank', blankId: 'white-shirt', size });

export const supplier = (
  id: string,
  fields: z.input<typeof supplierSchema>,
): { id: string; supplier: Supplier } => ({
  id,
  supplier: supplierSchema.parse(fields),
});

export const consumable = (
  id: string,
  fields: z.input<typeof consumableSchema>,
): { id: string; consumable: Consumable } => ({ id, consumable: consumableSchema.parse(fields) });

/** So many at home, counted. */
export const lying = (item: SupplyItem, quantity: number): Pile => ({
  item: item.kind === 'blank' ? { ...item, lot: null } : item,
  ...{ place: { kind: 'home' }, grade: 'first', quantity, lots: [], counted: null },
});

/** A list for the worked example alone, at what its job knows. */
export function asked(
  fields: Partial<Omit<BuyingAsked, 'list'>> & {
    readonly list?: Partial<z.input<typeof buyingListSchema>>;
  } = {},
): BuyingAsked {
  const { list, ...more } = fields;
  const works = more.works ?? [work()];
  return {
    ...{ asOf: TODAY, currency: 'USD', consumables: [], suppliers: [], piles: [], reserved: [] },
    ...more,
    works,
    list: buyingListSchema.parse({
      name: 'Next week',
      works: works.map(({ jobId, orderId }) => ({ jobId, orderId })),
      ...list,
    }),
  };
}
