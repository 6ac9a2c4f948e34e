import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { goodsKey } from '@/lib/stall/goodsKey';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { saleOf } from '@/tests/fixtures/stallTaps';
import { cases } from '@/tests/tools/cases';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { drawnTaps, earlierPlan } from './drawnTaps';

const wallAt: WallClock = (at) => ({ day: TEST_DAY, minute: 600 + Math.floor(at / 60_000) });
const inForce = (entries: readonly Entry[]): readonly TappedEntry[] =>
  // Each is one by the way it is written above.
  entriesInForce(entries).filter(({ kind }) => kind === 'stallTap') as readonly TappedEntry[];

const folded = (plan: StallPlan, taps: readonly TappedEntry[]) => foldTaps(plan, taps, wallAt, [earlierPlan]);

const isSecondOf = (tap: Tap, goods: StallGoods): boolean =>
  tap.what === 'sale' && tap.isSecond === true && goodsKey(tap.goods) === goodsKey(goods);

const rankOf = ({ kind }: Entry): number => (kind === 'takeBack' ? 0 : 1);

describe('a sales count of two phones', () => {
  it('comes to the same in whatever order the taps are brought together, and however often one comes', () => {
    fc.assert(
      fc.property(
        drawnTaps(80).chain(({ entries, plan }) => {
          const taps = inForce(entries);
          return fc.record({
            taps: fc.constant(taps),
            plan: fc.constant(plan),
            mixed: fc.shuffledSubarray([...taps], { minLength: taps.length }),
            again: fc.shuffledSubarray([...taps]),
          });
        }),
        ({ taps, plan, mixed, again }) => {
          expect(folded(plan, [...again, ...mixed])).toEqual(folded(plan, taps));
        },
      ),
      cases(300),
    );
  });

  it('comes to the same where what takes a tap back comes before the tap itself', () => {
    fc.assert(
      fc.property(
        drawnTaps(80).chain(({ entries, plan }) =>
          fc.record({
            entries: fc.constant(entries),
            plan: fc.constant(plan),
            mixed: fc.shuffledSubarray([...entries], { minLength: entries.length }),
          }),
        ),
        ({ entries, plan, mixed }) => {
          const inTurn = folded(plan, inForce(entries));
          expect(folded(plan, inForce(mixed))).toEqual(inTurn);
          // All that takes back, before all that is taken back.
          const undone = mixed.toSorted((one, other) => rankOf(one) - rankOf(other));
          expect(folded(plan, inForce(undone))).toEqual(inTurn);
        },
      ),
      cases(300),
    );
  });

  it('adds up: cash and card to the takings and their rounding, goods to the takings before sets, pieces to what is gone', () => {
    fc.assert(
      fc.property(drawnTaps(120), ({ entries, plan }) => {
        const taps = inForce(entries);
        const count = folded(plan, taps);
        const sum = <Of>(all: readonly Of[], of: (one: Of) => number) =>
          all.reduce((total, one) => total + of(one), 0);
        expect(count.cashMinor + count.cardMinor).toBe(count.grossMinor + count.cashRoundingMinor);
        expect(sum(count.goods, ({ revenueMinor }) => revenueMinor) - count.reductionsMinor).toBe(
          count.writtenMinor,
        );
        // Half a cent a ticket and way of paying is all that rounding its tax may do.
        const share = plan.taxMode === 'added' ? plan.tax : 0;
        expect(Math.abs(count.grossMinor - count.writtenMinor * (1 + share))).toBeLessThanOrEqual(
          count.tickets.length + 1e-6,
        );
        expect(sum(count.tickets, (one) => one.cashMinor)).toBe(count.cashMinor);
        expect(sum(count.tickets, (one) => one.cardMinor)).toBe(count.cardMinor);
        expect(sum(count.tickets, ({ pieces }) => pieces)).toBe(count.pieces);
        const sales = taps.filter(({ body }) => body.tap.what === 'sale').length;
        expect(sum(count.hours, ({ pieces }) => pieces)).toBe(sales);
        for (const one of count.goods) {
          const own = taps.filter(({ body: { tap } }) => isSecondOf(tap, one));
          // Seconds from before lay beside the firsts: those that were sold took none of these off the table.
          const before = Math.min(
            plan.goods.find((other) => goodsKey(other) === goodsKey(one))?.seconds ?? 0,
            own.length,
          );
          expect(one.brought - (one.sold - before) - one.given - one.damaged).toBe(one.left);
        }
      }),
      cases(300),
    );
  });

  it('tells what was put out, put back, asked to be made and who came, second sales among the sold', () => {
    fc.assert(
      fc.property(drawnTaps(120), ({ entries, plan }) => {
        const taps = inForce(entries);
        const count = folded(plan, taps);
        const all = taps.map(({ body }) => body);
        const those = <What extends Tap['what']>(what: What) =>
          all.flatMap(({ planId, tap }) =>
            tap.what === what ? [{ planId, ...(tap as Extract<Tap, { what: What }>) }] : [],
          );
        const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
        expect(count.visitors).toBe(sum(those('visitors').map((one) => one.count)));
        expect(count.putBack).toBe(those('putBack').length);
        expect(count.leads).toHaveLength(those('lead').length);
        expect(count.weatherId).toBe(those('weather').at(-1)?.weatherId ?? null);
        const isOf = (key: string) => (one: { readonly goods: StallGoods | null }) =>
          one.goods !== null && goodsKey(one.goods) === key;
        for (const [at, goods] of count.goods.entries()) {
          const own = isOf(goodsKey(goods));
          const [before, after] = ['earlier', 'plan'].map((id) =>
            sum(
              those('refill')
                .filter((one) => one.planId === id && own(one))
                .map(({ pieces }) => pieces),
            ),
          );
          // What the plan of now brings more than the one before is out of that one's refills.
          const more = [2, -3][at] ?? 0;
          const carried = Math.min(before ?? 0, Math.max(0, (before ?? 0) - more));
          expect(goods.brought).toBe((plan.goods[at]?.bring ?? 0) + carried + (after ?? 0));
          const spoiled = those('damaged').filter(own);
          const secondsSold = all.filter(({ tap }) => isSecondOf(tap, goods)).length;
          const keptAs = spoiled.filter(({ isSecond }) => isSecond).length;
          // Those from before go first, then those spoiled on the day.
          const fromBefore = Math.min(plan.goods[at]?.seconds ?? 0, secondsSold);
          const fromKept = Math.min(keptAs, secondsSold - fromBefore);
          expect(goods.keptSold).toBe(fromBefore);
          expect([goods.damaged, goods.seconds]).toEqual([spoiled.length - fromKept, keptAs - fromKept]);
          expect(goods.putBack).toBe(those('putBack').filter(own).length);
        }
      }),
      cases(200),
    );
  });

  it('pays each ticket in coins: in francs every cash ticket is a multiple of five and at most two from what was written', () => {
    fc.assert(
      fc.property(drawnTaps(80), ({ entries, plan }) => {
        const { tickets, cashRoundingMinor } = folded(plan, inForce(entries));
        if (plan.currency !== 'CHF') {
          expect(cashRoundingMinor).toBe(0);
          return;
        }
        for (const { cashMinor } of tickets) expect(Math.abs(cashMinor % 5)).toBe(0);
        expect(Math.abs(cashRoundingMinor)).toBeLessThanOrEqual(2.5 * tickets.length);
      }),
      cases(200),
    );
  });

  it('loses nothing of 500 taps of a thumb that undoes now and then', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ at: fc.nat(fairPlan.goods.length - 1), does: fc.integer({ min: 0, max: 9 }) }), {
          minLength: 500,
          maxLength: 500,
        }),
        (thumb) => {
          const entries: Entry[] = [];
          // Reckoned beside it: a stack of pieces, the last on top.
          const sold: { readonly minor: number }[] = [];
          const undoable: { readonly id: string; readonly isSale: boolean }[] = [];
          for (const [at, { at: tile, does }] of thumb.entries()) {
            const told = { id: `phone000-${at + 1}`, device: 'phone000', count: at + 1, at, version: 1 };
            const body = { stallDayId: 'spring-fair', planId: 'plan', currency: 'USD' };
            const one = fairPlan.goods[tile];
            const last = undoable.at(-1);
            if (does === 0 && last !== undefined) {
              entries.push({ ...told, kind: 'takeBack', body: { entryId: last.id } });
              undoable.pop();
              if (last.isSale) sold.pop();
            } else if (does === 1 || one === undefined) {
              entries.push({ ...told, kind: 'stallTap', body: { ...body, tap: { what: 'next' } } });
              undoable.push({ id: told.id, isSale: false });
            } else {
              entries.push({ ...told, kind: 'stallTap', body: { ...body, tap: saleOf(one) } });
              undoable.push({ id: told.id, isSale: true });
              sold.push({ minor: one.price });
            }
          }
          const count = foldTaps(fairPlan, inForce(entries), wallAt);
          expect(count.pieces).toBe(sold.length);
          expect(count.grossMinor).toBe(sold.reduce((total, { minor: paid }) => total + paid, 0));
        },
      ),
      cases(20),
    );
  });
});
