import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChanges } from '@/lib/findings/applyChanges';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { firstFall } from '@/lib/price/list/firstFall';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { priceLine } from '@/lib/price/priceTable';
import { breakGroups } from '@/lib/studies/breaks/breakGroups';
import { type BreaksAnswer, breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { remedyOffers } from '@/lib/studies/breaks/remedyOffers';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { plainJob } from '@/tests/fixtures/plainJob';
import { cases, patience } from '@/tests/tools/cases';

/** 1–5 at 26, 6–11 at 23, 12–23 at 20, 24–47 at 18, 48 and more at 16.50, as the maker's own prices. */
const OWN = [
  { from: 1, each: 26 },
  { from: 6, each: 23 },
  { from: 12, each: 20 },
  { from: 24, each: 18 },
  { from: 48, each: 16.5 },
];

const withOwn = (fields: Readonly<Record<string, unknown>> = {}) =>
  clubWith({
    'workshop.policy.breaks': [1, 6, 12, 24, 48],
    'job.lines.0.ownPrices': OWN,
    'job.lines.0.selling': 'asListed',
    ...fields,
  });

function answerOf(input: JobInput, quantities: readonly number[] = []): BreaksAnswer {
  const answer = breaksAnswer(input, grid, { lineId: 'shirts', quantities });
  if (answer === null) throw new Error('the job has no list');
  return answer;
}

const own = withOwn();
const ownAnswer = answerOf(own);

describe('the test of a price list', () => {
  it('shows the stretches in which more pieces cost less, and the tie', () => {
    const [base] = ownAnswer.groups;
    expect(base?.sizes).toEqual(['S', 'M', 'L', 'XL']);
    expect(
      base?.stretches.map(({ from, to, cheaperAt, cheaperTotal }) => [from, to, cheaperAt, cheaperTotal]),
    )
      // 11 × 23 = 253 against 240; 22 and 23 at 20 against 432; 45 to 47 at 18 against 792.
      .toEqual([
        [11, 11, 12, 24_000],
        [22, 23, 24, 43_200],
        [45, 47, 48, 79_200],
      ]);
    expect(base?.ties).toEqual([{ n: 44, as: 48 }]);
    expect(base?.falls).toBe(12);
  });

  it('offers the remedies that lose nothing, each of which passes the test when taken', () => {
    // One shirt at 26.00 costs about 98: slabs, raised prices and moved breaks leave that as it is.
    expect(ownAnswer.remedies.map(({ kind }) => kind)).toEqual(['capped', 'setUpApart']);
    for (const { kind, changes } of ownAnswer.remedies) {
      const after = answerOf(jobInputSchema.parse(applyChanges(own, changes)));
      expect(
        after.groups.map(({ falls }) => falls),
        kind,
      ).toEqual(after.groups.map(() => null));
      expect(after.remedies).toEqual([]);
    }
  });

  it('offers no raised prices at many times the target, and moves no break of another job', () => {
    // The suggestions of the usual breaks as they stand: raised until clean, 24 shirts would pay 2,544 and not 432.
    const usual = answerOf(withOwn({ 'job.lines.0.ownPrices': [] }));
    expect(usual.groups.some(({ falls }) => falls !== null)).toBe(true);
    // By slabs six would pay 5 × 144.50 + 34.50, over three times the 206 they must bring.
    expect(usual.remedies.map(({ kind }) => kind)).toEqual(['capped', 'setUpApart']);
    const gentle = answerOf(
      withOwn({
        'workshop.policy.breaks': [12, 14, 16],
        'job.lines.0.ownPrices': [
          { from: 12, each: 26 },
          { from: 14, each: 23.5 },
          { from: 16, each: 21.5 },
        ],
      }),
    );
    expect(gentle.remedies.map(({ kind }) => kind)).toContain('shifted');
    for (const { changes } of [...usual.remedies, ...gentle.remedies])
      expect(changes.map(({ document }) => document)).not.toContain('workshop');
  });

  it('tells what a cap changes for the buyer and the maker at the edges', () => {
    const cap = ownAnswer.remedies[0];
    // Of sizes without a charge: 11 pay 240 instead of 253, 23 pay 432 instead of 460, 47 pay 792 instead of 846.
    expect(cap?.effects.map(({ n, before, after }) => [n, before / 100, after / 100])).toEqual([
      [11, 253, 240],
      [12, 240, 240],
      [23, 460, 432],
      [24, 432, 432],
      [47, 846, 792],
      [48, 792, 792],
    ]);
    const [eleven] = cap?.effects ?? [];
    // Thirteen dollars less, of which 1.5515 % were fees.
    expect((eleven?.profitBefore ?? 0) - (eleven?.profitAfter ?? 0)).toBeCloseTo(13 * (1 - 0.015515), 9);
  });

  it('says what orders pay by the rule in force, and what a typed quantity pays', () => {
    const capped = answerOf(withOwn({ 'job.lines.0.selling': 'capped' }), [10]);
    expect(capped.sold.map(({ n, after }) => [n, after / 100])).toEqual([
      [1, 26],
      [5, 130],
      [6, 138],
      [10, 230],
      [11, 240],
      [12, 240],
      [23, 432],
      [24, 432],
      [47, 792],
      [48, 792],
    ]);
    const tariff = answerOf(withOwn({ 'job.lines.0.selling': 'setUpApart' }), [37]);
    const written = tariff.tariff?.written;
    expect(tariff.sold.find(({ n }) => n === 37)?.after).toBe(
      (written?.start ?? 0) + 37 * (written?.each ?? 0),
    );
  });

  it('fits the tariff of the worked example, told with its error', () => {
    // 131.7 ± 0.4 to start and 12.70 ± 0.01 a shirt; largest error 0.7 a piece or less, at one piece, 0.05 from twelve.
    const { tariff } = ownAnswer;
    expect(Math.abs((tariff?.start ?? 0) - 131.7)).toBeLessThan(0.4);
    expect(Math.abs((tariff?.each ?? 0) - 12.7)).toBeLessThan(0.01);
    expect(tariff?.largestErrorAt).toBe(1);
    expect(tariff?.largestError).toBeLessThan(0.7);
    expect(tariff?.smallFrom).toBeLessThanOrEqual(12);
    expect(tariff?.smallError).toBeLessThan(0.05);
    expect(tariff?.start).toBeCloseTo(batchTariffs(costed(club()), grid)?.target.start ?? 0, 6);
  });

  it('suggests up-charges of 2.50 and 4.00 in steps of 0.50', () => {
    expect(
      ownAnswer.upCharges?.sizes.flatMap(({ size, written }) => (written > 0 ? [[size, written]] : [])),
    ).toEqual([
      ['2XL', 250],
      ['3XL', 400],
    ]);
  });

  it('finds nothing to cure in a list of one break, and says where a list begins late', () => {
    const one = answerOf(clubWith({ 'workshop.policy.breaks': [1] }));
    expect(one.groups.every(({ falls, stretches }) => falls === null && stretches.length === 0)).toBe(true);
    expect(one.remedies).toEqual([]);
    expect(answerOf(clubWith({ 'workshop.policy.breaks': [12, 24] })).breakProblems).toEqual([
      { kind: 'beginsLate', from: 12 },
    ]);
  });

  it('holds a ceiling against the out-of-pocket floor and the target', () => {
    const ceilingAt = (amount: number) =>
      answerOf(clubWith({ 'job.lines.0.marketCeiling': amount })).ceiling?.kind ?? 'fits';
    // The worked example takes 6.35 a shirt out of the pocket and asks 16.27 at its target.
    expect([5, 7, 16, 17].map(ceilingAt)).toEqual(['underFloor', 'underTarget', 'underTarget', 'fits']);
  });
});

interface DrawnList {
  readonly starts: readonly number[];
  readonly prices: readonly number[];
  readonly typed: readonly boolean[];
  readonly upCharging: string;
  readonly job: JobInput;
}

describe('a remedy of any list', () => {
  const blanks = [4, 6.1] as const;
  const jobOf = (sizes: readonly number[]) =>
    plainJob({ sizes: sizes.map((blank) => ({ quantity: 5, blank })), freight: 20 });
  // With the dearer size first, the other one's charge is below nothing.
  const jobs = [jobOf(blanks), jobOf([...blanks].reverse())] as const;
  const lists = fc
    .uniqueArray(fc.integer({ min: 2, max: 300 }), { minLength: 1, maxLength: 5 })
    .chain((starts) =>
      fc.record({
        starts: fc.constant([1, ...[...starts].sort((a, b) => a - b)]),
        prices: fc.array(fc.integer({ min: 300, max: 4000 }), { minLength: 6, maxLength: 6 }),
        // Some breaks keep their suggestion.
        typed: fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
        upCharging: fc.constantFrom('separate', 'averaged'),
        job: fc.constantFrom(...jobs),
      }),
    );

  it(
    'makes every total rise or stay from 1 to 2,000 pieces, in every size',
    () => {
      fc.assert(fc.property(lists, expectClean), cases(25));
    },
    patience(30_000),
  );

  it('keeps the other size clean where the breaks of a dearer first size move', () => {
    expectClean({
      starts: [1, 21, 83],
      prices: [300, 300, 613],
      typed: [false, false, true],
      upCharging: 'separate',
      job: jobs[1],
    });
  });

  function expectClean({ starts, prices, typed, upCharging, job }: DrawnList): void {
    const [plain] = job.job.lines;
    const line = {
      ...plain,
      upCharging,
      selling: 'asListed',
      ownPrices: starts.flatMap((from, index) =>
        typed[index] ? [{ from, each: (prices[index] ?? 100) / 100 }] : [],
      ),
    };
    const input = jobInputSchema.parse({
      ...job,
      workshop: { ...job.workshop, policy: { ...job.workshop.policy, breaks: starts } },
      job: { ...job.job, lines: [line] },
    });
    const before = costed(input);
    const [resolved] = before.laidOut.job.lines;
    if (resolved === undefined) throw new Error('the job has no line');
    const evaluate = caseEvaluator(judgedJob(before, resolved), resolved, grid);
    const priced = priceLine(before, resolved, grid);
    for (const { kind, changes } of remedyOffers({ costed: before, line: resolved, priced, evaluate })) {
      const after = costed(jobInputSchema.parse(applyChanges(input, changes)));
      const [cured] = after.laidOut.job.lines;
      if (cured === undefined) throw new Error('the line is gone');
      for (const group of breakGroups(after, cured, priceLine(after, cured, grid).list))
        expect(firstFall(group.sold), `${kind} of ${group.sizes.join(', ')}`).toBeNull();
    }
  }
});

describe('lists at the edges of what can be typed', () => {
  it.each([
    ['JPY', 50, 50],
    ['KWD', 0.005, 5],
  ])('in %s prices end on %d and a cap passes the test', (currency, priceStep, minorStep) => {
    const answer = answerOf(
      clubWith({
        'workshop.currency': currency,
        'workshop.policy.priceStep': priceStep,
        'job.lines.0.selling': 'capped',
      }),
    );
    for (const { list, falls } of answer.groups) {
      expect(falls).toBeNull();
      for (const { each } of list.breaks) expect(each % minorStep).toBe(0);
    }
  });

  it('asks for cost and fees alone at a margin of nothing', () => {
    const zero = { value: 0, unit: 'share', date: '2026-11-25', origin: 'yours' };
    const answer = answerOf(
      clubWith({ 'workshop.rates.targetMargin': zero, 'job.lines.0.selling': 'onePrice' }),
    );
    // 37 shirts cost 411.80 in full, 418.29 with 1.5515 % of fees: 11.31 each.
    expect(answer.endings?.target).toBeCloseTo(11.31, 1);
    expect(answer.groups.length).toBeGreaterThan(0);
  });

  it('has no list while fees and margin leave nothing of the price', () => {
    const commission = { value: 0.75, unit: 'share', date: '2026-11-25', origin: 'yours' };
    const input = clubWith({ 'workshop.channels.0.commission': commission });
    expect(breaksAnswer(input, grid, { lineId: 'shirts', quantities: [] })).toBeNull();
  });
});
