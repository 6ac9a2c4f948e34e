import { describe, expect, it } from 'vitest';
import { mergeValues } from '@/lib/merging/mergeValues';
import { backEntries, gatheredAt, outEntries, statementEntries } from '@/lib/stall/shops/consignedEntries';
import { isNameTaken, shopNames, shopRenamed } from '@/lib/stall/shops/shopNames';
import { shopLate, shopStanding, takenBackWith } from '@/lib/stall/shops/shopStanding';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { inOrder } from '@/lib/stored/entriesInForce';
import { addDays } from '@/shared/days';
import type { Entry } from '@/shared/schemas/happened';
import type { ShopPayment, ShopStatement } from '@/shared/schemas/stallEvents';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const fern = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const SHOP = { name: 'Corner shop', knownAs: [] as { name: string }[] };

type Noted = ReturnType<typeof statementEntries>[number] | { kind: 'shopPayment'; body: ShopPayment };

/** Everything that was noted, step by step: what is of one step has one moment. */
const written = (...steps: readonly (readonly Noted[])[]): readonly Entry[] =>
  steps.flatMap((step, at) =>
    step.map(({ kind, body }, place) => ({
      ...{ id: `${kind}-${at}-${place}`, kind, version: 1, body },
      ...{ device: 'here', count: at * 100 + place, at: at + 1 },
    })),
  ) as readonly Entry[];

const of = <Kind extends string, Body>(entries: readonly Entry[], kind: Kind) =>
  entries.filter((entry) => entry.kind === kind) as unknown as readonly Entry<Kind, Body>[];

const stockOf = (entries: readonly Entry[]) =>
  inOrder(entries.filter(({ kind }) => kind.startsWith('stock')) as unknown as readonly StockEntry[]);

const standing = (entries: readonly Entry[], shop = SHOP) =>
  shopStanding('corner', shop, {
    piles: foldStock(stockOf(entries)),
    stock: stockOf(entries),
    statements: of(entries, 'shopStatement'),
    prices: of(entries, 'shopPrice'),
    payments: of(entries, 'shopPayment'),
  });

const statement = (sold: number, missing: number, dueMinor: number, day = TEST_DAY): ShopStatement => ({
  ...{ shopId: 'corner', day, currency: 'USD', dueMinor },
  rows: [{ goods: fern, grade: 'first', sold, missing, eachMinor: 2800 }],
  ...{ commissionShare: 0.4, commissionBase: 'withTax' },
});
const paid = (statementId: string, amountMinor: number): readonly Noted[] => [
  {
    kind: 'shopPayment',
    body: { shopId: 'corner', statementId, day: TEST_DAY, amountMinor, currency: 'USD' },
  },
];
/* Eight lay at home, six went to the shop. */
const out = outEntries('Corner shop', { goods: fern, grade: 'first', quantity: 6, counted: 8, agreed: null });

describe('goods at a shop', () => {
  it('leave home and lie there, unpriced until it told a price', () => {
    const entries = written(out);
    expect(standing(entries)).toMatchObject({
      shelf: [{ ...fern, quantity: 6, each: null }],
      ...{ pieces: 6, worth: [], unpriced: 6, due: [], lastStatementOn: null, outSince: 1 },
    });
    const home = foldStock(entries as unknown as readonly StockEntry[]).find(
      ({ place }) => place.kind === 'home',
    );
    expect(home?.quantity).toBe(2);
  });

  it('are worth what was agreed as they were brought, until another price is agreed or told', () => {
    const bring = (eachMinor: number | null, day = TEST_DAY) =>
      outEntries('Corner shop', {
        ...{ goods: fern, grade: 'first', quantity: 3, counted: null },
        agreed: eachMinor === null ? null : { shopId: 'corner', day, currency: 'USD', eachMinor },
      });
    const eachOf = (...steps: readonly (readonly Noted[])[]) =>
      standing(written(...steps)).shelf[0]?.each?.minor;
    const told = (day: string) => statementEntries('Corner shop', statement(1, 0, 1680, day));
    expect(standing(written(out, bring(2600)))).toMatchObject({
      // Six came without a price and three with one: one price holds for all nine, 9 × 26.00.
      shelf: [{ ...fern, quantity: 9, each: { currency: 'USD', minor: 2600 } }],
      ...{ worth: [{ currency: 'USD', minor: 23400 }], unpriced: 0 },
    });
    expect(eachOf(bring(2600), bring(3000))).toBe(3000);
    // Brought again without a word on the price it stays.
    expect(eachOf(bring(2600), bring(null))).toBe(2600);
    // A statement at 28.00 after it, and one that is noted late, of a day before it was agreed.
    expect(eachOf(bring(2600), told(TEST_DAY))).toBe(2800);
    expect(eachOf(bring(2600), told(addDays(TEST_DAY, -1)))).toBe(2600);
    expect(eachOf(told(TEST_DAY), bring(2600, addDays(TEST_DAY, 1)))).toBe(2600);
  });

  it('are not worth what was agreed with another shop, or of another grade', () => {
    const agreed = { shopId: 'mill', day: TEST_DAY, currency: 'USD', eachMinor: 2600 };
    const row = { goods: fern, quantity: 2, counted: null };
    expect(
      standing(written(outEntries('Corner shop', { ...row, grade: 'first', agreed }))).shelf[0]?.each,
    ).toBe(null);
    const second = outEntries('Corner shop', {
      ...row,
      grade: 'second',
      agreed: { ...agreed, shopId: 'corner' },
    });
    expect(standing(written(out, second)).shelf.map(({ grade, each }) => [grade, each?.minor])).toEqual([
      ['first', undefined],
      ['second', 2600],
    ]);
  });

  it('are fewer by what a statement sold and missed, and worth its price', () => {
    // Six less two sold less one missing; three at 28.00.
    expect(standing(written(out, statementEntries('Corner shop', statement(2, 1, 3360))))).toMatchObject({
      ...{ pieces: 3, worth: [{ currency: 'USD', minor: 8400 }], unpriced: 0, lastStatementOn: TEST_DAY },
      due: [{ currency: 'USD', minor: 3360 }],
    });
  });

  it('are those of this shop alone, not what lies at another or at home', () => {
    const there = outEntries('Mill shop', {
      goods: fern,
      grade: 'first',
      quantity: 6,
      counted: 8,
      agreed: null,
    });
    expect(standing(written(there))).toMatchObject({
      shelf: [],
      ...{ pieces: 0, unpriced: 0, outSince: null },
    });
    // Six here and six there, two at home.
    expect(standing(written(out, there))).toMatchObject({ shelf: [{ ...fern, quantity: 6 }], pieces: 6 });
  });

  it('come home again', () => {
    const back = backEntries('Corner shop', [{ goods: fern, grade: 'first', quantity: 6 }]);
    expect(standing(written(out, back))).toMatchObject({ shelf: [], pieces: 0 });
  });

  it('are of the price a statement told in its own currency and grade, never of another', () => {
    const second = {
      ...statement(1, 0, 0),
      rows: [{ goods: fern, grade: 'second' as const, sold: 1, missing: 0, eachMinor: 1500 }],
    };
    const euros = { ...statement(1, 0, 0), currency: 'EUR' };
    // Five of the first grade are left at 28.00 EUR; the seconds are one short.
    expect(
      standing(written(out, statementEntries('Corner shop', second), statementEntries('Corner shop', euros))),
    ).toMatchObject({
      shelf: [
        { grade: 'first', quantity: 5, each: { currency: 'EUR', minor: 2800 } },
        { grade: 'second', quantity: -1, each: { currency: 'USD', minor: 1500 } },
      ],
      worth: [{ currency: 'EUR', minor: 14000 }],
    });
  });

  it('may be below none, which is shown and worth nothing', () => {
    expect(standing(written(out, statementEntries('Corner shop', statement(7, 0, 11760))))).toMatchObject({
      shelf: [{ quantity: -1 }],
      ...{ pieces: 0, worth: [], outSince: null },
    });
  });
});

describe('what a shop owes', () => {
  const told = statementEntries('Corner shop', statement(2, 0, 3360));
  const id = 'shopStatement-1-0';

  it.each([
    [[], 'open', 3360],
    [[1000], 'part', 2360],
    [[1000, 2360], 'paid', 0],
    [[4000], 'over', -640],
  ] as const)('paid %j: %s', (amounts, state, openMinor) => {
    const entries = written(out, told, ...amounts.map((amount) => paid(id, amount)));
    const { statements, due } = standing(entries);
    expect(statements).toMatchObject([{ state, openMinor }]);
    expect(due).toEqual(openMinor === 0 ? [] : [{ currency: 'USD', minor: openMinor }]);
  });

  it('is settled where a statement owes nothing, such as one of pieces that are missing alone', () => {
    const entries = written(out, statementEntries('Corner shop', statement(0, 2, 0)));
    expect(standing(entries)).toMatchObject({
      statements: [{ state: 'paid', paidMinor: 0, openMinor: 0 }],
      due: [],
    });
  });

  it('is less by what was paid for a statement that another device took back', () => {
    // The payment of 10.00 reached this device after the statement was gone; 33.60 of another are due.
    const entries = written(out, told, paid('statement-taken-back', 1000));
    expect(standing(entries)).toMatchObject({
      statements: [{ state: 'open', openMinor: 3360 }],
      credits: [{ body: { amountMinor: 1000 } }],
      due: [{ currency: 'USD', minor: 2360 }],
    });
    expect(standing(written(out, paid('statement-taken-back', 1000))).due).toEqual([
      { currency: 'USD', minor: -1000 },
    ]);
  });

  it('is nothing to other shops', () => {
    const other: readonly Noted[] = [
      {
        kind: 'shopPayment',
        body: { shopId: 'mill', statementId: 'x', day: TEST_DAY, amountMinor: 500, currency: 'USD' },
      },
    ];
    expect(standing(written(out, other))).toMatchObject({ credits: [], due: [] });
  });

  it('is taken back with what the statement took off the shelf and what was paid of it, and nothing else', () => {
    const other = statementEntries('Corner shop', statement(1, 1, 1680));
    const entries = written(out, told, other, paid(id, 1000));
    const first = standing(entries).statements.find(({ entry }) => entry.id === id);
    if (first === undefined) throw new Error('no statement');
    expect(takenBackWith(first, of(entries, 'stockMove'))).toEqual([id, 'stockMove-1-1', 'shopPayment-3-0']);
  });
});

describe('what a shop is late with', () => {
  const terms = { statementDays: 30, fetchBy: addDays(TEST_DAY, 10) };
  const there = { pieces: 3, lastStatementOn: null };
  const since = (days: number) => addDays(TEST_DAY, -days);

  it.each([
    ['on the day of its statement', there, since(30), 0],
    ['a day later', there, since(31), 1],
    ['since the last statement', { ...there, lastStatementOn: since(35) }, since(90), 5],
    ['since goods went anew to an empty shelf', { ...there, lastStatementOn: since(90) }, since(31), 1],
    ['with nothing there', { ...there, pieces: 0 }, since(90), null],
    ['before anything went there', there, null, null],
  ] as const)('%s', (_, standingOf, firstOut, expected) => {
    expect(shopLate(terms, standingOf, firstOut, TEST_DAY).statement).toBe(expected);
  });

  it('is fetching after the day that was agreed', () => {
    const on = (today: string) => shopLate(terms, there, null, today).fetch;
    expect([on(addDays(TEST_DAY, 10)), on(addDays(TEST_DAY, 11))]).toEqual([0, 1]);
    expect(shopLate({ statementDays: null, fetchBy: null }, there, TEST_DAY, TEST_DAY)).toEqual({
      statement: null,
      fetch: null,
    });
  });
});

describe('a shop under a new name', () => {
  const renamed = (entries: readonly Entry[], shop: typeof SHOP, name: string) => {
    const to = shopRenamed(shop, name);
    const moved = gatheredAt(name, shopNames(shop), foldStock(stockOf(entries)));
    return { to, entries: [...entries, ...written([], [], [], moved)] };
  };

  it('takes along what lies there, and has it no shorter for that', () => {
    const { to, entries } = renamed(written(out), SHOP, 'Mill shop');
    expect(to).toEqual({ name: 'Mill shop', knownAs: [{ name: 'Corner shop' }, { name: 'Mill shop' }] });
    expect(standing(entries, to)).toMatchObject({ pieces: 6, outSince: 1 });
    const places = foldStock(stockOf(entries)).map(({ place, quantity }) => ({ place, quantity }));
    expect(places).toContainEqual({ place: { kind: 'shop', name: 'Mill shop' }, quantity: 6 });
    expect(places).toContainEqual({ place: { kind: 'shop', name: 'Corner shop' }, quantity: 0 });
  });

  it('has what another device brought there under the old one, and gathers it with what comes next', () => {
    const { to, entries } = renamed(written(out), SHOP, 'Mill shop');
    const late = [
      ...entries,
      ...written(
        [],
        [],
        [],
        [],
        outEntries('Corner shop', { goods: fern, grade: 'first', quantity: 2, counted: null, agreed: null }),
      ),
    ];
    // Six that moved along and two under the old name; seven were sold by the new one.
    const sold = [
      ...late,
      ...written([], [], [], [], [], statementEntries('Mill shop', statement(7, 0, 11760))),
    ];
    expect(standing(late, to).pieces).toBe(8);
    expect(standing(sold, to).shelf).toMatchObject([{ quantity: 1 }]);
    expect(gatheredAt('Mill shop', shopNames(to), foldStock(stockOf(late)))).toMatchObject([
      {
        body: { from: { place: { name: 'Corner shop' } }, to: { place: { name: 'Mill shop' } }, quantity: 2 },
      },
    ]);
  });

  it('is known by both of two that were given on two devices at once', () => {
    const here = shopRenamed(SHOP, 'Mill shop');
    const there = shopRenamed(SHOP, 'Harbour shop');
    const { value } = mergeValues(SHOP, here, there) as { value: typeof SHOP };
    expect(value.name).toBe('Mill shop');
    expect([...shopNames(value)].toSorted()).toEqual(['Corner shop', 'Harbour shop', 'Mill shop']);
  });

  it('leaves its old name to no other, for goods may lie under it', () => {
    const to = shopRenamed(SHOP, 'Mill shop');
    expect(['Corner shop', 'Mill shop', 'Harbour shop'].map((name) => isNameTaken(name, [to]))).toEqual([
      true,
      true,
      false,
    ]);
  });
});

describe('since when goods lie at a shop', () => {
  const back = backEntries('Corner shop', [{ goods: fern, grade: 'first', quantity: 6 }]);

  it('is since its shelf was last filled when it was empty', () => {
    const more = outEntries('Corner shop', {
      goods: fern,
      grade: 'first',
      quantity: 2,
      counted: null,
      agreed: null,
    });
    // Out at 1, home at 2, out again at 3, more at 4.
    expect(standing(written(out, back, more, more)).outSince).toBe(3);
    expect(standing(written(out, back)).outSince).toBeNull();
    expect(standing(written(out, more)).outSince).toBe(1);
  });

  it('goes by what is sold and counted there too', () => {
    const sold = statementEntries('Corner shop', statement(6, 0, 10080));
    const none = {
      kind: 'stockCount',
      body: {
        item: { kind: 'finished', ...fern },
        place: { kind: 'shop', name: 'Corner shop' },
        grade: 'first',
        quantity: 0,
      },
    } as const;
    expect(standing(written(out, sold, out)).outSince).toBe(3);
    expect(standing(written(out, [none], out)).outSince).toBe(3);
  });
});
