import type { Consumable } from '@/shared/schemas/making/supply';
import { rateThings } from '@/shared/tables/rateThings';
import type { BuyingWork } from './buyingAsked';
import type { RateUse } from './rateUse';
import type { WorkNeeds } from './workNeeds';

type Needs = readonly (WorkNeeds | null)[];
type Works = readonly Pick<BuyingWork, 'orderId'>[];

/** Noise of a sum. */
const NOISE = 1e-9;

/**
 * What works use of things that their jobs reckon with by a rate; what costs nothing is not used. Jobs of one order are
 * packed once, at the first one's rate.
 */
export function usedByRates(needs: Needs, works: Works): readonly RateUse[] {
  const uses = needs.flatMap((one) => one?.use ?? []);
  const presses = uses.flatMap(({ pressesBy }) => pressesBy);
  const ofPress = (thing: 'tape' | 'protectivePaper'): RateUse => {
    const used = presses.filter((one) => one[thing] > 0);
    return {
      ...{ thing, name: rateThings[thing].name, packagingId: null },
      quantity: Math.ceil(sumOf(used.map(({ count }) => count)) - NOISE),
      cost: sumOf(used.map((one) => one.count * one[thing])),
    };
  };
  const packed = uses.flatMap(({ piecesBy }) => piecesBy);
  const packagingIds = [...new Set(packed.flatMap(({ packagingId }) => packagingId ?? []))];
  const orders = needs.flatMap((one, at) => (one !== null && isFirstOfOrder(works, at) ? [one.use] : []));
  return [
    ofPress('tape'),
    ofPress('protectivePaper'),
    ...packagingIds.map((packagingId): RateUse => {
      const own = packed.filter((one) => one.packagingId === packagingId && one.packaging !== null);
      return {
        ...{ thing: 'packaging', packagingId, name: own[0]?.packaging?.name ?? '' },
        quantity: sumOf(own.map(({ count }) => count)),
        cost: sumOf(own.map(({ count, packaging }) => count * (packaging?.each ?? 0))),
      };
    }),
    {
      thing: 'order' as const,
      ...{ name: rateThings.order.name, packagingId: null },
      quantity: orders.length,
      cost: sumOf(orders.map(({ packedFor }) => packedFor)),
    },
  ].filter(({ quantity, cost }) => quantity > 0 && cost > 0);
}

/**
 * What of it no consumable stands for, so that it is in no row. Whatever is used with each piece of a packaging, or with
 * each order, stands for what they are packed in. Tape and protective paper both go by the press: the name tells which
 * one a consumable is; two of them are both.
 */
export function notSetUp(
  needs: Needs,
  works: Works,
  consumables: readonly { readonly consumable: Consumable }[],
): readonly RateUse[] {
  const all = consumables.map(({ consumable }) => consumable);
  const byPress = all.filter(({ uses }) => uses.some(({ per }) => per === 'press'));
  return usedByRates(needs, works).filter((rate) => {
    if (rate.thing === 'tape' || rate.thing === 'protectivePaper') {
      const { called } = rateThings[rate.thing];
      return byPress.length < 2 && !byPress.some(({ name }) => called.test(name));
    }
    return !all.some((consumable) => isOf(consumable, rate));
  });
}

/** @returns whether a consumable is used by what drives a rate. */
export const isOf = ({ uses }: Pick<Consumable, 'uses'>, { thing, packagingId }: RateUse): boolean =>
  uses.some(({ per, packagingIds }) =>
    thing === 'packaging'
      ? per === 'piece' && (packagingIds === null || packagingIds.includes(packagingId ?? ''))
      : per === rateThings[thing].per,
  );

/** Jobs of one order are packed together; a job of none is packed alone. */
export function isFirstOfOrder(works: Works, at: number): boolean {
  const orderId = works[at]?.orderId ?? null;
  return orderId === null || works.findIndex((work) => work.orderId === orderId) === at;
}

// Helpers

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
