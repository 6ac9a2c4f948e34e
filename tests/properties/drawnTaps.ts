import fc from 'fast-check';
import type { EarlierPlan } from '@/lib/stall/count/putOutBefore';
import type { Entry } from '@/shared/schemas/happened';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goodsOf, saleOf } from '@/tests/fixtures/stallTaps';

/* What two phones may tap at the fair, in three currencies, by the plan that counts and by the one before it. */

const plans: Readonly<Record<'USD' | 'CHF' | 'EUR', StallPlan>> = {
  USD: fairPlan,
  CHF: { ...fairPlan, currency: 'CHF' },
  EUR: { ...fairPlan, currency: 'EUR', taxMode: 'added', tax: 0.19 },
};

/** Of the first goods it brought two less, of the next ones three more. */
export const earlierPlan: EarlierPlan = {
  id: 'earlier',
  body: {
    goods: fairPlan.goods.map((one, at) => ({ ...one, bring: one.bring + ([-2, 3][at] ?? 0) })),
  },
};

const goods = fc.constantFrom(...fairPlan.goods);
/** Those that are spoiled, sold as seconds and put out most, so that all comes together on some. */
const few = fc.constantFrom(...fairPlan.goods.slice(0, 3));
const pay = fc.constantFrom('cash', 'card');
const minor = fc.integer({ min: 0, max: 9999 });
const words = fc.constantFrom('', 'youth sizes', 'black shirt');
const sale = fc.record({ one: goods, pay }).map(({ one, pay: by }): Tap => saleOf(one, by));
const tap: fc.Arbitrary<Tap> = fc.oneof(
  { arbitrary: sale, weight: 8 },
  { arbitrary: fc.constant<Tap>({ what: 'next' }), weight: 4 },
  fc.record({
    what: fc.constant('sale'),
    goods: goods.map(goodsOf),
    minor,
    isOwnPrice: fc.constant(true),
    pay,
  }),
  fc.record({ what: fc.constant('set'), setId: fc.constant('two-shirts'), minor, pay }),
  fc.record({
    what: fc.constant('exchange'),
    back: goods.map(goodsOf),
    out: goods.map(goodsOf),
    minor: fc.integer({ min: -3000, max: 3000 }),
    pay,
  }),
  fc.record({ what: fc.constant('refund'), goods: goods.map(goodsOf), minor, pay }),
  fc.record({ what: fc.constant('given'), goods: goods.map(goodsOf) }),
  fc.record({ what: fc.constant('damaged'), goods: few.map(goodsOf), isSecond: fc.boolean() }),
  fc.record({ what: fc.constant('asked'), goods: fc.option(goods.map(goodsOf)), words }),
  fc.record({ what: fc.constant('pay'), pay }),
  fc.record({ what: fc.constant('tin'), cause: fc.constantFrom('skimmed', 'added', 'spent'), minor, words }),
  fc.record({ what: fc.constant('note'), words }),
  fc.record({ what: fc.constant('lead'), words }),
  fc.record({ what: fc.constant('refill'), goods: few.map(goodsOf), pieces: fc.integer({ min: 1, max: 9 }) }),
  fc.record({ what: fc.constant('putBack'), goods: fc.option(goods.map(goodsOf)) }),
  fc.record({ what: fc.constant('visitors'), count: fc.integer({ min: 1, max: 10 }) }),
  fc.record({ what: fc.constant('weather'), weatherId: fc.constantFrom('dry', 'showers', 'wet') }),
  fc.record({
    what: fc.constant('sale'),
    goods: few.map(goodsOf),
    minor,
    isSecond: fc.constant(true),
    pay,
  }),
) as fc.Arbitrary<Tap>;

/** What two phones tapped, clocks running as they like, and what was taken back of it. */
export const drawnTaps = (maxLength: number) =>
  fc
    .record({
      currency: fc.constantFrom<keyof typeof plans>('USD', 'CHF', 'EUR'),
      /** Seconds from before of the first goods. */
      kept: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 3, maxLength: 3 }),
      taps: fc.array(
        fc.record({
          tap,
          device: fc.constantFrom('phone000', 'tablet00'),
          at: fc.integer({ min: 0, max: 25_000_000 }),
          planId: fc.constantFrom('plan', 'plan', earlierPlan.id),
          isUndo: fc.integer({ min: 0, max: 9 }).map((drawn) => drawn === 0),
        }),
        { maxLength },
      ),
    })
    .map(({ currency, kept, taps }) => {
      const entries: Entry[] = [];
      for (const { device, at, planId, isUndo, tap: one } of taps) {
        const own = entries.filter((entry) => entry.device === device);
        const last = own.findLast(({ kind }) => kind === 'stallTap');
        const count = own.length + 1;
        const told = { id: `${device}-${count}`, device, count, at, version: 1 };
        entries.push(
          isUndo && last !== undefined
            ? { ...told, kind: 'takeBack', body: { entryId: last.id } }
            : {
                ...told,
                kind: 'stallTap',
                body: { stallDayId: 'spring-fair', planId, currency, tap: one },
              },
        );
      }
      const plan = plans[currency];
      const along = plan.goods.map((one, at) => ({ ...one, ...secondsOf(kept[at]) }));
      return { entries, plan: { ...plan, secondsShare: 0.5, goods: along } };
    });

// Helpers

/** A plan leaves out goods of which there are none. */
const secondsOf = (seconds = 0): { readonly seconds?: number } => (seconds === 0 ? {} : { seconds });
