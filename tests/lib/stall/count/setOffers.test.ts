import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openTicket } from '@/lib/stall/count/openTicket';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, goodsOf, saleOf, type TapLog, tapOn } from '@/tests/fixtures/stallTaps';
import { cases } from '@/tests/tools/cases';

/* Shirts of the fair: S to XL at 28, 2XL and 3XL at 31. */

type StallSet = StallPlan['sets'][number];
const aSet = (id: string, pieces: number, price: number, sizes: readonly string[] | null): StallSet => ({
  ...{ id, name: id, pieces, price, rangeIds: ['shirts'] },
  sizes: sizes === null ? null : [...sizes],
});
const planOf = (...sets: readonly StallSet[]): StallPlan => ({ ...fairPlan, sets: [...sets] });

const shirt = (size: string) => fairGoods('fern', size);
const sold = (size: string): Tap => saleOf(shirt(size));
const cameBack = (size: string, minor = shirt(size).price): Tap => ({
  ...{ what: 'refund', goods: goodsOf(shirt(size)), minor, pay: 'card' },
});
const exchanged = (back: string, out: string, minor: number): Tap => ({
  ...{ what: 'exchange', back: goodsOf(shirt(back)), out: goodsOf(shirt(out)), minor, pay: 'card' },
});

function logOf(...taps: readonly Tap[]): TapLog {
  const log = aTapLog();
  for (const tap of taps) tapOn(log, tap);
  return log;
}
const ticketOf = (plan: StallPlan, taps: readonly TappedEntry[]) => openTicket(plan, taps, 'phone000');
const offersOf = (plan: StallPlan, taps: readonly TappedEntry[]) =>
  ticketOf(plan, taps).sets.map(({ setId, minor }) => [setId, minor]);
/** Taps the set, if it is offered. */
function pick(plan: StallPlan, log: TapLog, setId: string): void {
  const offer = ticketOf(plan, log.taps).sets.find((one) => one.setId === setId);
  if (offer === undefined) throw new Error(`${setId} is not offered`);
  tapOn(log, { what: 'set', setId, minor: offer.minor, pay: offer.pay });
}

describe('sets that may hold the same pieces', () => {
  const small = aSet('small', 2, 5000, ['S', 'M', 'L']);
  const large = aSet('large', 2, 5000, ['L', 'XL']);

  it.each([
    ['small', 'large'],
    ['large', 'small'],
  ])('do not block each other: S with L and L with XL are 100, the %s pair first', (first, then) => {
    const plan = planOf(small, large);
    const log = logOf(sold('L'), sold('L'), sold('S'), sold('XL'));
    // 28 and 28 for 50.
    expect(offersOf(plan, log.taps)).toEqual([
      ['small', 600],
      ['large', 600],
    ]);
    pick(plan, log, first);
    expect(offersOf(plan, log.taps)).toEqual([[then, 600]]);
    pick(plan, log, then);
    expect(ticketOf(plan, log.taps)).toMatchObject({ minor: 10_000, sets: [] });
  });

  it('a pair that was taken makes way for the three that cost less', () => {
    const plan = planOf(aSet('pair', 2, 5000, null), aSet('three', 3, 7000, null));
    const log = logOf(sold('L'), sold('L'));
    pick(plan, log, 'pair');
    tapOn(log, sold('M'));
    // 84 for 70 saves 14, of which the pair saved 6.
    expect(offersOf(plan, log.taps)).toEqual([['three', 800]]);
    pick(plan, log, 'three');
    expect(ticketOf(plan, log.taps)).toMatchObject({ minor: 7000, sets: [] });
  });

  it('a dearer piece that comes after the pair takes the place of a cheaper one in it', () => {
    const plan = planOf(aSet('pair', 2, 5000, null));
    const log = logOf(sold('L'), sold('M'));
    pick(plan, log, 'pair');
    tapOn(log, sold('2XL'));
    // The pair of 31 and 28 saves 9: 50 and 28 are paid, as they would be with the 2XL tapped first.
    expect(offersOf(plan, log.taps)).toEqual([['pair', 300]]);
    pick(plan, log, 'pair');
    expect(ticketOf(plan, log.taps)).toMatchObject({ minor: 7800, sets: [] });
    tapOn(log, sold('M'));
    // Two pairs of 31 + 28 + 28 + 28: 100.
    pick(plan, log, 'pair');
    expect(ticketOf(plan, log.taps)).toMatchObject({ minor: 10_000, sets: [] });
  });

  it('come to the cheapest ticket whichever of the offers is tapped', () => {
    const sizes = ['S', 'M', 'L', 'XL', '2XL'] as const;
    const set = fc.record({
      pieces: fc.integer({ min: 2, max: 3 }),
      each: fc.integer({ min: 2000, max: 3200 }),
      sizes: fc.option(fc.subarray([...sizes], { minLength: 1 })),
    });
    fc.assert(
      fc.property(
        fc.array(set, { minLength: 1, maxLength: 3 }),
        fc.array(fc.oneof(fc.constantFrom(...sizes), fc.nat(9)), { maxLength: 12 }),
        (drawn, steps) => {
          const plan = planOf(
            ...drawn.map(({ pieces, each, sizes: of }, at) => aSet(`set-${at}`, pieces, pieces * each, of)),
          );
          const log = aTapLog();
          const pieces: string[] = [];
          for (const step of steps) {
            if (typeof step === 'number') pickAt(plan, log, step);
            else if (pieces.length < 6) {
              pieces.push(step);
              tapOn(log, sold(step));
            }
          }
          // Each tap of a set takes more off, so this ends.
          while (ticketOf(plan, log.taps).sets.length > 0) pickAt(plan, log, pieces.length);
          expect(ticketOf(plan, log.taps).minor).toBe(cheapest(plan.sets, pieces));
        },
      ),
      cases(200),
    );
  });
});

describe('a piece that comes back on the ticket', () => {
  const plan = planOf(aSet('pair', 2, 5000, ['S', 'M', 'L', 'XL']));

  it('makes no pair', () => {
    expect(offersOf(plan, logOf(sold('L'), sold('L'), cameBack('L')).taps)).toEqual([]);
    expect(offersOf(plan, logOf(sold('L'), sold('L'), cameBack('L'), sold('M')).taps)).toEqual([
      ['pair', 600],
    ]);
  });

  it('takes off the one at what was given back for it', () => {
    const cheap: Tap = {
      ...{ what: 'sale', minor: 2000, isOwnPrice: true, pay: 'card' },
      goods: goodsOf(shirt('L')),
    };
    // An L at 28 and one at 20 besides a 28: the pair of 28 and 28 saves 6 once the one at 20 is back.
    expect(offersOf(plan, logOf(sold('M'), sold('L'), cheap, cameBack('L', 2000)).taps)).toEqual([
      ['pair', 600],
    ]);
    expect(offersOf(plan, logOf(sold('M'), cheap, sold('L'), cameBack('L')).taps)).toEqual([]);
  });

  it('of an earlier customer takes nothing from this one', () => {
    expect(offersOf(plan, logOf(cameBack('L'), sold('L'), sold('M')).taps)).toEqual([['pair', 600]]);
    expect(offersOf(plan, logOf(sold('L'), sold('M'), cameBack('XL')).taps)).toEqual([['pair', 600]]);
  });

  it('for another size counts as that one', () => {
    // The set takes none beyond XL.
    expect(offersOf(plan, logOf(sold('L'), sold('M'), exchanged('M', '2XL', 300)).taps)).toEqual([]);
    expect(offersOf(plan, logOf(sold('L'), sold('2XL'), exchanged('2XL', 'M', -300)).taps)).toEqual([
      ['pair', 600],
    ]);
  });
});

it('answers for a ticket of two hundred pieces nobody closed, with ten sets, though it cannot try all', () => {
  const plan = planOf(...Array.from({ length: 10 }, (_, at) => aSet(`set-${at}`, 2, 5000 + at, null)));
  const log = logOf({ what: 'next' }, ...Array.from({ length: 200 }, () => sold('L')));
  expect(offersOf(plan, log.taps)[0]).toEqual(['set-0', 600]);
});

// Helpers

function pickAt(plan: StallPlan, log: TapLog, at: number): void {
  const offers = ticketOf(plan, log.taps).sets;
  const offer = offers[at % Math.max(1, offers.length)];
  if (offer !== undefined) pick(plan, log, offer.setId);
}

/** The dearest piece left is in no set, or with others in one: all ways are tried. */
function cheapest(sets: readonly StallSet[], sizes: readonly string[]): number {
  const [first, ...rest] = sizes;
  if (first === undefined) return 0;
  const fits = (set: StallSet, size: string) => set.sizes === null || set.sizes.includes(size);
  const inSets = sets.flatMap((set) =>
    fits(set, first)
      ? choices(rest, set.pieces - 1)
          .filter(({ taken }) => taken.every((size) => fits(set, size)))
          .map(({ left }) => set.price + cheapest(sets, left))
      : [],
  );
  return Math.min(shirt(first).price + cheapest(sets, rest), ...inSets);
}

/** All ways to take so many of a list. */
function choices(
  list: readonly string[],
  count: number,
): readonly { readonly taken: readonly string[]; readonly left: readonly string[] }[] {
  if (count === 0) return [{ taken: [], left: list }];
  const [first, ...rest] = list;
  if (first === undefined) return [];
  return [
    ...choices(rest, count - 1).map(({ taken, left }) => ({ taken: [first, ...taken], left })),
    ...choices(rest, count).map(({ taken, left }) => ({ taken, left: [first, ...left] })),
  ];
}
