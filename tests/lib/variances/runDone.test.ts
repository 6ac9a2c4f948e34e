import { describe, expect, it } from 'vitest';
import { runMoves } from '@/lib/stock/runMoves';
import { runDone } from '@/lib/variances/runDone';
import { runResult } from '@/lib/variances/runResult';
import type { StockMove } from '@/shared/schemas/stock';
import { clubFacts, clubStandard, noteOf } from '@/tests/fixtures/clubStandard';

const facts = clubFacts({ reprints: 622 });
const standard = { body: clubStandard() };
const paid = { blank: () => null, sheet: () => null };
const done = (own = facts, moves: readonly StockMove[] = []) =>
  runDone(
    { ...own, runId: 'run' },
    standard,
    runResult(standard, { facts: own, paid, orderHours: [] }),
    moves.map((body) => ({ body })),
  );
const all = (moves: readonly StockMove[], kind: string, cause: string) =>
  moves
    .filter(({ item, cause: why }) => item.kind === kind && why === cause)
    .reduce((sum, { quantity }) => sum + quantity, 0);

describe('the stock of the worked run', () => {
  const { moves, unsaid } = runMoves(done());

  it('loses 37 blanks used and 4 spoiled, and the 58 sheets that were typed', () => {
    expect(all(moves, 'blank', 'used')).toBe(-37);
    expect(all(moves, 'blank', 'scrapped')).toBe(-4);
    expect(all(moves, 'paper', 'used')).toBe(-58);
  });

  it('says that of 44 mL nobody knows the channels', () => {
    expect(unsaid).toContainEqual({ what: 'ink', mL: 44 });
  });

  it('books nothing again, and of one more spoiled piece that one alone', () => {
    expect(runMoves(done(facts, moves)).moves).toEqual([]);
    const scrap = noteOf('pressing', {
      ...{ runId: 'run', standardId: null, jobId: 'club', lineId: 'shirts', placementId: 'back', size: 'M' },
      ...{ result: 'scrap' as const, fault: 'ghost' as const },
    });
    const more = { ...facts, pressings: [...facts.pressings, scrap], actuals: [] };
    const later = runMoves(
      done(
        more,
        moves.filter(({ item }) => item.kind === 'blank'),
      ),
    ).moves;
    expect(later.map(({ quantity, cause }) => [quantity, cause])).toEqual([[-1, 'scrapped']]);
  });

  it('takes back what two devices booked twice', () => {
    const twice = runMoves(done(facts, [...moves, ...moves])).moves;
    expect(all(twice, 'paper', 'used')).toBe(58);
    expect(all(twice, 'blank', 'used')).toBe(37);
  });
});

describe('a finished piece', () => {
  it('that nobody ordered is worth what making one cost: its own blank, and an equal share of all else', () => {
    // (411.79 − 190.87) ÷ 37 = 5.97, and 4.60 or 7.10 · 190.87 ÷ 178.70 for its blank.
    const works = standard.body.works.map((work) => ({ ...work, orderId: null }));
    const forStall = { body: { ...standard.body, works } };
    const result = runResult(forStall, { facts, paid, orderHours: [] });
    const cost = runDone({ ...facts, runId: 'run' }, forStall, result, []).costOf;
    expect(cost({ jobId: 'club', lineId: 'shirts', size: 'M' })).toEqual({ minor: 1088, currency: 'USD' });
    expect(cost({ jobId: 'club', lineId: 'shirts', size: '3XL' })).toEqual({ minor: 1355, currency: 'USD' });
  });

  it('beyond an order is worth what one more takes, for the order bears what it took once', () => {
    // Blank 4.60 or 7.10 · 1.0681, a sheet of 50.90 ÷ 37 at 0.14, 31.10 mL ÷ 37 at 0.16, 24.84 ÷ 37 of all else, and of
    // the hands 1.38 min for the sheet, 4.68 at both presses, 1.20 to fold, at 22.20 an hour.
    const cost = done().costOf;
    expect(cost({ jobId: 'club', lineId: 'shirts', size: 'M' })).toEqual({ minor: 860, currency: 'USD' });
    expect(cost({ jobId: 'club', lineId: 'shirts', size: '3XL' })).toEqual({ minor: 1127, currency: 'USD' });
    expect(cost({ jobId: 'gone', lineId: 'shirts', size: 'M' })).toBeNull();
    expect(cost({ jobId: 'club', lineId: 'shirts', size: 'XS' })).toBeNull();
  });
});
