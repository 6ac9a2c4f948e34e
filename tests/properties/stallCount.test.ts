import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import { drawnTap } from '@/tests/fixtures/drawnTaps';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { saleOf } from '@/tests/fixtures/stallTaps';
import { cases } from '@/tests/tools/cases';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const wallAt: WallClock = (at) => ({ day: TEST_DAY, minute: 600 + Math.floor(at / 60_000) });
const plans = {
  USD: fairPlan,
  CHF: { ...fairPlan, currency: 'CHF' },
  EUR: { ...fairPlan, currency: 'EUR', taxMode: 'added', tax: 0.19 },
} as const;

/** What two phones tapped, clocks running as they like, and what was taken back of it. */
const written = (maxLength: number) =>
  fc
    .record({
      currency: fc.constantFrom<keyof typeof plans>('USD', 'CHF', 'EUR'),
      taps: fc.array(
        fc.record({
          tap: drawnTap,
          device: fc.constantFrom('phone000', 'tablet00'),
          at: fc.integer({ min: 0, max: 25_000_000 }),
          isUndo: fc.integer({ min: 0, max: 9 }).map((drawn) => drawn === 0),
        }),
        { maxLength },
      ),
    })
    .map(({ currency, taps }) => {
      const entries: Entry[] = [];
      for (const { device, at, isUndo, tap: one } of taps) {
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
                body: { stallDayId: 'spring-fair', planId: 'plan', currency, tap: one },
              },
        );
      }
      return { entries, plan: plans[currency] };
    });

const inForce = (entries: readonly Entry[]): readonly TappedEntry[] =>
  // Each is one by the way it is written above.
  entriesInForce(entries).filter(({ kind }) => kind === 'stallTap') as readonly TappedEntry[];

describe('a sales count of two phones', () => {
  it('comes to the same in whatever order the taps are brought together, and however often one comes', () => {
    fc.assert(
      fc.property(
        written(80).chain(({ entries, plan }) => {
          const taps = inForce(entries);
          return fc.record({
            taps: fc.constant(taps),
            plan: fc.constant(plan),
            mixed: fc.shuffledSubarray([...taps], { minLength: taps.length }),
            again: fc.shuffledSubarray([...taps]),
          });
        }),
        ({ taps, plan, mixed, again }) => {
          expect(foldTaps(plan, [...again, ...mixed], wallAt)).toEqual(foldTaps(plan, taps, wallAt));
        },
      ),
      cases(300),
    );
  });

  it('adds up: cash and card to the takings and their rounding, goods to the takings before sets, pieces to what is gone', () => {
    fc.assert(
      fc.property(written(120), ({ entries, plan }) => {
        const taps = inForce(entries);
        const count = foldTaps(plan, taps, wallAt);
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
        for (const one of count.goods)
          expect(one.brought - one.sold - one.given - one.damaged).toBe(one.left);
      }),
      cases(300),
    );
  });

  it('pays each ticket in coins: in francs every cash ticket is a multiple of five and at most two from what was written', () => {
    fc.assert(
      fc.property(written(80), ({ entries, plan }) => {
        const { tickets, cashRoundingMinor } = foldTaps(plan, inForce(entries), wallAt);
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
