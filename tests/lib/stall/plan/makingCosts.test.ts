import { describe, expect, it } from 'vitest';
import { makingCosts } from '@/lib/stall/plan/costs/makingCosts';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { grid } from '@/tests/fixtures/costed';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate } from '@/tests/fixtures/numbers';

/* 96 shirts and 36 mugs are held: 132 pieces, two sessions of shirts and one of mugs. */
const { workshop } = fairAsked;
const usual = plannedFair();

const fernL = ({ goods }: typeof usual) =>
  goods.find(({ jobId, lineId, size }) => jobId === 'fair-shirts' && lineId === 'fern' && size === 'L');

describe('own rows of the maker', () => {
  const each = (id: string, driver: 'piece' | 'session', value: number, outOfPocket: boolean): OwnRow => ({
    ...{ id, label: id, outOfPocket },
    cost: { kind: 'driver', driver, amount: fixedRate(value, 'money') },
  });
  const byFormula: OwnRow = {
    ...{ id: 'own_care', label: 'Care', outOfPocket: false },
    cost: { kind: 'formula', formula: '1 / 4' },
  };
  const withRows = (...ownRows: readonly OwnRow[]) =>
    plannedFair(fairWith({}, { workshop: { ...workshop, ownRows: [...ownRows] } }));
  const more = (plan: typeof usual, of: (plan: typeof usual) => number) => of(plan) - of(usual);

  it('that come with each piece, or by a formula, are its cost, and what is bought of them its money', () => {
    const plan = withRows(each('own_tag', 'piece', 0.5, true), byFormula);
    // 0.50 and a quarter.
    expect(more(plan, (one) => fernL(one)?.cost ?? Number.NaN)).toBeCloseTo(0.75, 9);
    expect(more(plan, ({ mine }) => mine.makingCost)).toBeCloseTo(132 * 0.75, 6);
    expect(more(plan, ({ mine }) => mine.batch)).toBeCloseTo(0, 6);
    expect(more(plan, ({ mine }) => mine.cashBefore)).toBeCloseTo(132 * 0.5, 6);
  });

  it('that come with a session are of the batch, and no piece bears them', () => {
    const plan = withRows(each('own_cover', 'session', 3, true), each('own_coffee', 'session', 1, false));
    expect(more(plan, (one) => fernL(one)?.cost ?? Number.NaN)).toBeCloseTo(0, 9);
    expect(more(plan, ({ mine }) => mine.batch)).toBeCloseTo(3 * (3 + 1), 6);
    expect(more(plan, ({ mine }) => mine.cashBefore)).toBeCloseTo(3 * 3, 6);
  });
});

describe('tests before a batch', () => {
  /** The fair with so many test presses of each design. */
  const tested = (testPresses: number): StallAsked['jobs'] =>
    fairAsked.jobs.map(({ jobId, input }) => {
      const lines = input.job.lines.map((line) => ({
        ...line,
        placements: line.placements.map((one) => ({ ...one, testPresses })),
      }));
      return { jobId, input: { ...input, job: { ...input.job, lines } } };
    });

  it('are of the batch', () => {
    const plan = plannedFair(fairWith({}, { jobs: tested(2) }));
    // Two presses of seven designs, each longer than two minutes at 18.00 and 4.20 an hour.
    expect(plan.mine.batch - usual.mine.batch).toBeGreaterThan((14 * 2 * 22.2) / 60);
  });

  it('are borne by no piece, in cost or money', () => {
    const piecesOf = (testPresses: number) =>
      tested(testPresses).map(({ jobId, input }) => makingCosts(jobId, input, grid)?.pieces);
    const [shirts, mugs] = piecesOf(2);
    expect(shirts?.get('fair-shirts/fern/L')?.cost).toBeCloseTo(6.543, 3);
    expect([shirts, mugs]).toEqual(piecesOf(0));
  });
});

describe('a plan that presses nothing', () => {
  it('costs its day alone', () => {
    const held = fairAsked.stallDay.held.map((one) => ({ ...one, bring: 0 }));
    const { mine } = plannedFair(fairWith({ held }));
    expect(mine).toMatchObject({ pieces: 0, made: 0, batch: 0, benchHours: 0, makingCost: 0 });
    // Stall 85.00, drive 27.60, parking 6.00, display 12.00, insurance 15.00.
    expect(mine.cashBefore).toBeCloseTo(145.6, 9);
  });
});
