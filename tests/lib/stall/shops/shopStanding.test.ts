import { describe, expect, it } from 'vitest';
import { backEntries, outEntries, renamedShop, statementEntries } from '@/lib/stall/shops/consignedEntries';
import { shopLate, shopStanding, takenBackWith } from '@/lib/stall/shops/shopStanding';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { addDays } from '@/shared/days';
import type { Entry } from '@/shared/schemas/happened';
import type { ShopPayment, ShopStatement } from '@/shared/schemas/stallEvents';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const fern = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const SHOP = { name: 'Corner shop' };

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

const standing = (entries: readonly Entry[], shop = SHOP) =>
  shopStanding('corner', shop, {
    piles: foldStock(
      entries.filter(({ kind }) => kind.startsWith('stock')) as unknown as readonly StockEntry[],
    ),
    statements: of(entries, 'shopStatement'),
    payments: of(entries, 'shopPayment'),
    transfers: of(entries, 'stockTransfer'),
  });

const statement = (sold: number, missing: number, dueMinor: number, day = TEST_DAY): ShopStatement => ({
  ...{ shopId: 'corner', day, currency: 'USD', dueMinor },
  rows: [{ goods: fern, sold, missing, eachMinor: 2800 }],
  ...{ commissionShare: 0.4, commissionBase: 'withTax' },
});
const paid = (statementId: string, amountMinor: number): readonly Noted[] => [
  {
    kind: 'shopPayment',
    body: { shopId: 'corner', statementId, day: TEST_DAY, amountMinor, currency: 'USD' },
  },
];
/* Eight lay at home, six went to the shop. */
const out = outEntries('Corner shop', { goods: fern, quantity: 6, counted: 8 });

describe('goods at a shop', () => {
  it('leave home and lie there, unpriced until it told a price', () => {
    const entries = written(out);
    expect(standing(entries)).toMatchObject({
      shelf: [{ ...fern, quantity: 6, eachMinor: null }],
      ...{ pieces: 6, worthMinor: 0, unpriced: 6, due: [], lastStatementOn: null, firstOutAt: 1 },
    });
    const home = foldStock(entries as unknown as readonly StockEntry[]).find(
      ({ place }) => place.kind === 'home',
    );
    expect(home?.quantity).toBe(2);
  });

  it('are fewer by what a statement sold and missed, and worth its price', () => {
    // Six less two sold less one missing; three at 28.00.
    expect(standing(written(out, statementEntries('Corner shop', statement(2, 1, 3360))))).toMatchObject({
      ...{ pieces: 3, worthMinor: 8400, unpriced: 0, lastStatementOn: TEST_DAY },
      due: [{ currency: 'USD', minor: 3360 }],
    });
  });

  it('come home again', () => {
    const back = backEntries('Corner shop', [{ goods: fern, grade: 'first', quantity: 6 }]);
    expect(standing(written(out, back))).toMatchObject({ shelf: [], pieces: 0 });
  });

  it('follow the shop to its new name', () => {
    const entries = written(out);
    const renaming = renamedShop(
      foldStock(entries as unknown as readonly StockEntry[]),
      'Corner shop',
      'Harbour shop',
    );
    const after = [...entries, ...written([], renaming)];
    expect(standing(after, { name: 'Harbour shop' }).pieces).toBe(6);
    expect(standing(after).shelf).toEqual([]);
  });

  it('may be below none, which is shown and worth nothing', () => {
    expect(standing(written(out, statementEntries('Corner shop', statement(7, 0, 11760))))).toMatchObject({
      shelf: [{ quantity: -1 }],
      ...{ pieces: 0, worthMinor: 0 },
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
