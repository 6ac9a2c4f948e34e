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
  it('is worth what of it was bought, whoever it is for: own pay, overhead and wear are no part of it', () => {
    // Blank 4.60 or 7.10 · 1.0681, sheets 0.1926, ink 0.1291, tape and paper 0.1351, power 0.0080, bag 0.15.
    const works = standard.body.works.map((work) => ({ ...work, orderId: null }));
    const forStall = { body: { ...standard.body, works } };
    const result = runResult(forStall, { facts, paid, orderHours: [] });
    for (const { costOf } of [runDone({ ...facts, runId: 'run' }, forStall, result, []), done()]) {
      const cost = (size: string) => costOf({ jobId: 'club', lineId: 'shirts', size });
      expect(cost('M')).toEqual({ minor: 553, currency: 'USD' });
      expect(cost('3XL')).toEqual({ minor: 820, currency: 'USD' });
      expect(cost('XS')).toBeNull();
      expect(costOf({ jobId: 'gone', lineId: 'shirts', size: 'M' })).toBeNull();
    }
  });

  it('lies in stock at what its bridge has it at, spares and seconds alike', () => {
    // Of the two badges that were spoiled one came as a second, one good: 38 good of 37.
    const pressings = facts.pressings.map((one, at, all) => {
      const result = at === all.length - 2 ? ('second' as const) : ('good' as const);
      return at < all.length - 2 ? one : { ...one, body: { ...one.body, result, fault: null } };
    });
    const own = { ...facts, pressings };
    const { moves } = runMoves(done(own));
    const finished = moves.filter(({ item }) => item.kind === 'finished');
    expect(finished.map(({ grade, quantity }) => [grade, quantity])).toEqual([
      ['second', 1],
      ['first', 1],
    ]);
    const worth = finished.reduce(
      (sum, { quantity, unitCost }) => sum + quantity * (unitCost?.minor ?? 0),
      0,
    );
    expect(worth).toBe(1106);
    expect(runResult(standard, { facts: own, paid, orderHours: [] }).spares.cost).toBe(11.06);
  });
});
