import { describe, expect, it } from 'vitest';
import { clubWith } from '@/tests/fixtures/clubJob';
import { freeze, frozen, plainItem } from './plainItem';

const own = (...ownPrices: { from: number; each: number }[]) => ownPrices;

/** Nine at 10.00 are 90.00; ten at 8.00 are 80.00. */
const falling = own({ from: 1, each: 10 }, { from: 10, each: 8 });

describe('a line put on a list', () => {
  it('keeps the prices of its breaks as they are written, and what each leaves', () => {
    // Nine at 10.00 cost as much as ten at 9.00: a tie, and no fall.
    const item = frozen(plainItem({ line: { ownPrices: own({ from: 10, each: 9 }) } }));
    expect(item.breaks.map(({ from, to, each }) => [from, to, each])).toEqual([
      [1, 9, 1000],
      [10, null, 900],
    ]);
    // 4 of 10, 3 of 9.
    expect(item.breaks[0]?.leastMargin).toBeCloseTo(0.4, 10);
    expect(item.breaks[1]?.leastMargin).toBeCloseTo(1 / 3, 10);
    expect(item.targetMargin).toBe(0.4);
  });

  it('keeps the rates it stands on, each with its value, unit and day', () => {
    const input = plainItem();
    expect(frozen(input).rates).toContainEqual(
      expect.objectContaining({ value: 6, unit: 'money/piece', date: input.asOf }),
    );
  });

  it('under a cap tells what its last pieces leave, which pay less than is listed', () => {
    const item = frozen(plainItem({ line: { ownPrices: falling, selling: 'capped' } }));
    // Nine pay the 80.00 of ten: 26 of 80 are left. Ten and more: 2 of 8.
    expect(item.selling).toBe('capped');
    expect(item.breaks.map(({ leastAt }) => leastAt)[0]).toBe(9);
    expect(item.breaks[0]?.leastMargin).toBeCloseTo(0.325, 10);
    expect(item.breaks[1]?.leastMargin).toBeCloseTo(0.25, 10);
  });

  it('by slabs tells of a large order, where the lower price weighs most', () => {
    const item = frozen(plainItem({ line: { ownPrices: falling, selling: 'slab' } }));
    // Of 2,000 nine pay 10.00 and 1,991 pay 8.00: 16,018.00, of which the blanks are 12,000.00.
    expect(item.breaks[1]).toMatchObject({ leastAt: 2000 });
    expect(item.breaks[1]?.leastMargin).toBeCloseTo(4018 / 16_018, 10);
  });

  it('with set-up apart keeps so much to start and so much a piece', () => {
    // (30 + 6 n) ÷ 0.6 is 50 to start and 10 a piece.
    const item = frozen(plainItem({ freight: 30, line: { selling: 'setUpApart' } }));
    expect(item.setUp).toEqual({ start: 5000, each: 1000 });
  });

  it('leaves a least order off a list whose first orders bear it, and says so', () => {
    const outcome = (selling: 'capped' | 'asListed') =>
      freeze(plainItem({ line: { selling } }), 'line', ['minimumOrder', 'name']);
    // One piece at 10.00 pays what a least order of one piece would be.
    expect(outcome('capped')).toMatchObject({
      borne: ['minimumOrder'],
      item: { charges: [{ kind: 'name' }] },
    });
    expect(outcome('asListed')).toMatchObject({ borne: [] });
  });

  it('made to stock has one price a size, judged in the batch as it is made', () => {
    const input = plainItem({ freight: 30 });
    // 30 ÷ 10 + 6 are 9.00 a piece, over 0.6 are 15.00.
    const item = frozen({ ...input, job: { ...input.job, madeFor: 'stock' } });
    expect(item.selling).toBe('onePrice');
    expect(item.breaks).toMatchObject([{ from: 1, to: null, each: 1500, leastAt: 10 }]);
    expect(item.breaks[0]?.leastMargin).toBeCloseTo(0.4, 10);
  });

  it('is refused while more pieces cost less, told at the quantity where the total falls', () => {
    expect(freeze(plainItem({ line: { ownPrices: falling, selling: 'asListed' } }))).toEqual({
      kind: 'falls',
      at: 10,
    });
  });

  it('is refused with a price that makes a loss, told where it does', () => {
    const input = plainItem({ line: { ownPrices: own({ from: 10, each: 5.5 }), selling: 'capped' } });
    // Nine of them pay the 55.00 of ten, and cost 54.00: the loss begins with ten.
    expect(freeze(input)).toMatchObject({ kind: 'loses', from: 10, margin: -0.5 / 5.5 });
  });

  it('is refused while a stop stands in its job, which is told', () => {
    expect(freeze(clubWith({ 'job.lines.0.askedPrice': 1 }), 'shirts')).toMatchObject({
      kind: 'stopped',
      why: { id: 'RATE-08', severity: 'stop' },
    });
  });

  it('is refused where the job has no such line', () => {
    expect(freeze(plainItem(), 'gone')).toEqual({ kind: 'noLine' });
  });

  it('is offered for any day, whenever the order of its job was wanted', () => {
    const input = plainItem();
    expect(freeze({ ...input, asOf: '2027-06-01' }).kind).toBe('frozen');
  });

  it('takes the maker’s own amount of a charge, to the coin, and suggests the others', () => {
    const item = frozen(plainItem(), 'line', ['name', 'sample'], [{ kind: 'name', amount: 2.25 }]);
    const amounts = new Map(item.charges.map(({ kind, amount }) => [kind, amount]));
    expect(amounts.get('name')).toBe(225);
    // One piece by itself at 40 %: 10.00.
    expect(amounts.get('sample')).toBe(1000);
  });

  it('leaves the least order out where the first order of the list pays it, but keeps the maker’s own', () => {
    // One piece at its target pays for itself.
    expect(frozen(plainItem(), 'line', ['minimumOrder']).charges).toEqual([]);
    const typed = frozen(plainItem(), 'line', ['minimumOrder'], [{ kind: 'minimumOrder', amount: 30 }]);
    expect(typed.charges).toEqual([{ kind: 'minimumOrder', name: '', amount: 3000 }]);
    // 6.50 for one that costs 6.00 leaves 0.50; with 2.00 wanted it does not.
    const cheap = plainItem({ line: { ownPrices: own({ from: 1, each: 6.5 }, { from: 10, each: 6.5 }) } });
    const { policy } = cheap.workshop;
    const wanting = {
      ...cheap,
      workshop: {
        ...cheap.workshop,
        policy: { ...policy, charges: { ...policy.charges, minimumProfit: 2 } },
      },
    };
    expect(frozen(wanting, 'line', ['minimumOrder']).charges).toEqual([
      { kind: 'minimumOrder', name: '', amount: 800 },
    ]);
  });

  it('lists no least order beside one price a piece, but keeps the maker’s own', () => {
    const stall = { ...plainItem({ freight: 30, line: { selling: 'onePrice' } }) };
    expect(freeze(stall, 'line', ['minimumOrder', 'name'])).toMatchObject({
      borne: ['minimumOrder'],
      item: { charges: [{ kind: 'name' }] },
    });
    expect(frozen(stall, 'line', ['minimumOrder'], [{ kind: 'minimumOrder', amount: 30 }]).charges).toEqual([
      { kind: 'minimumOrder', name: '', amount: 3000 },
    ]);
  });

  it('names the charges that were chosen, and no other', () => {
    // The example: a second print is a charge of its own line, a name is one of the order.
    const club = clubWith({ 'job.lines.0.selling': 'capped' });
    const kinds = (charges: Parameters<typeof freeze>[2]) =>
      frozen(club, 'shirts', charges).charges.map(({ kind, name }) => [kind, name]);
    expect(kinds([])).toEqual([]);
    expect(kinds(['placement', 'name'])).toEqual([
      ['placement', 'Back picture'],
      ['placement', 'Chest badge'],
      ['name', ''],
    ]);
  });
});
