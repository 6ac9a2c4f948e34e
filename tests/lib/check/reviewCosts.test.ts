import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import type { CostFacts } from '@/lib/check/costFacts';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { priceJob } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import type { FindingId } from '@/shared/tables/findingIds';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import { blocksOf } from '@/tests/fixtures/blocksOf';
import { changed, club, clubWith, mended } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { cases, patience } from '@/tests/tools/cases';

/** A shirt in L sold for a price, with its floor at 6.50 and its full cost at 11.00. */
const sold = (price: number | null, size = 'L') => ({
  lineId: 'shirts',
  size,
  price,
  outOfPocketFloor: 6.5,
  fullCost: 11,
  fees: 0,
});

const facts: CostFacts = {
  attendedMinutes: 452.3,
  benchMinutes: 352.3,
  work: clubWork,
  sheets: 0,
  cases: [sold(19)],
  placements: [],
  suggested: [],
  lying: [],
  pressOrders: [],
  ownPrices: [],
  breakPrices: [],
};

function review(input: JobInput, id: FindingId, changes: Partial<CostFacts> = {}) {
  const { checked } = checkJob(input);
  if (checked === null) throw new Error('the job is stopped before its sums');
  return reviewCosts(checked, { ...facts, ...changes }).filter((finding) => finding.id === id);
}

function verdictOf(input: JobInput, id: FindingId, changes: Partial<CostFacts> = {}): string {
  const [finding] = review(input, id, changes);
  return finding === undefined ? 'pass' : [finding.severity, finding.variant].filter(Boolean).join(' ');
}

describe('LAY-08 notes free places on the last sheet', () => {
  it.each([
    [0, 'pass'],
    [3, 'note'],
  ])('%d: %s', (spare, expected) => {
    const placements = [
      { lineId: 'shirts', placementId: 'badge', print: 0, perSheet: 4, pieces: 37, sheets: 10, spare },
    ];
    expect(verdictOf(club(), 'LAY-08', { placements })).toBe(expected);
  });
});

describe('PLC-07 compounds the losses of several presses', () => {
  it('1 − 0.965 × 0.98 = 5.43 % of the shirts', () => {
    expect(review(club(), 'PLC-07')[0]?.found).toEqual({ value: expect.closeTo(0.0543, 4), unit: 'share' });
  });

  it('has nothing to say of one press', () => {
    const { job } = club();
    const one = clubWith({ 'job.lines.0.placements': job.lines[0]?.placements.slice(0, 1) });
    expect(verdictOf(one, 'PLC-07')).toBe('pass');
  });

  it('names the cheaper order, and its button presses in it', () => {
    const pressOrders = [{ lineId: 'shirts', cheaperOrder: ['badge', 'back'], saving: 1.2 }];
    const [finding] = review(club(), 'PLC-07', { pressOrders });
    expect(finding).toMatchObject({ severity: 'caution', variant: 'order', facts: { saving: 1.2 } });
    const after = mended(club(), finding);
    expect(after.job.lines[0]?.placements.map(({ id }) => id)).toEqual(['badge', 'back']);
  });
});

describe('RATE-08 holds the price against its floors', () => {
  it.each([
    [null, 'pass'],
    [11, 'pass'],
    [10.99, 'caution belowCost'],
    [6.5, 'caution belowCost'],
    [6.49, 'stop belowFloor'],
  ])('%s each, floor 6.50, full cost 11.00: %s', (priceEach, expected) => {
    expect(verdictOf(club(), 'RATE-08', { cases: [sold(priceEach)] })).toBe(expected);
  });

  it('points at the line, and names the size that is sold too low', () => {
    const [finding] = review(club(), 'RATE-08', { cases: [sold(19), sold(5, '3XL')] });
    expect(finding).toMatchObject({
      variant: 'belowFloor',
      where: { path: ['lines', 0, 'askedPrice'], lineId: 'shirts' },
      facts: { size: '3XL', others: '', price: 5, short: 1.5 },
    });
  });

  it('names the size that lacks most where all are too low, and the others behind it', () => {
    const dear = { ...sold(9, '3XL'), fullCost: 13, fees: 0 };
    const [finding] = review(club(), 'RATE-08', { cases: [sold(9), dear] });
    // 13 − 9 = 4 is more than 11 − 9 = 2.
    expect(finding?.facts).toMatchObject({ size: '3XL', others: 'L', short: 4 });
  });

  it('asks what the sums suggest by its button, with what sizes add', () => {
    const suggested = [{ lineId: 'shirts', askedPrice: 14, upCharges: [{ size: '3XL', amount: 4 }] }];
    const [finding] = review(club(), 'RATE-08', { cases: [sold(5)], suggested });
    expect(finding?.fix).toMatchObject({ label: 'askSuggested', facts: { price: 14 } });
    const [line] = mended(club(), finding).job.lines;
    expect([line?.askedPrice, line?.upCharges]).toEqual([14, [{ size: '3XL', amount: 4 }]]);
  });

  it('offers no price that would not pay the bills of every size either', () => {
    const suggested = [{ lineId: 'shirts', askedPrice: 7, upCharges: [] }];
    const cases = [sold(5), { ...sold(5, '3XL'), outOfPocketFloor: 8 }];
    expect(review(club(), 'RATE-08', { cases, suggested })[0]?.fix).toBeNull();
  });

  it('is told by the whole way of a job: one shirt at 19.00 is to ask what the list asks of one', () => {
    const one = clubWith({ 'job.lines.0.quantities': [{ size: 'L', quantity: 1 }] });
    const { findings, prices } = priceJob(one, grid);
    const stop = findings.find(({ id }) => id === 'RATE-08');
    // 144.50, as worked by hand; the price is not withheld.
    expect(stop?.fix?.facts).toEqual({ price: 144.5 });
    expect(prices?.offer.lines[0]?.each).toBe(1900);
    expect(priceJob(mended(one, stop), grid).findings.filter(({ id }) => id === 'RATE-08')).toEqual([]);
  });

  it('passes below the floor with a reason', () => {
    const waiver = { finding: 'RATE-08', placementId: null, lineId: null, reason: 'A gift to the club.' };
    const input = clubWith({ 'job.waivers': [waiver] });
    expect(review(input, 'RATE-08', { cases: [sold(1)] })[0]?.waivedBecause).toBe('A gift to the club.');
  });
});

// From Wednesday 25 November to Thursday 10 December: twelve weekdays of 1 h and two Saturdays of 4 h, 20 h.
describe('TIM-01 lays the work beside the free hours', () => {
  it.each([
    [17, 'pass'],
    [17.1, 'caution busy'],
    [20, 'caution busy'],
    [20.1, 'stop over'],
  ])('%d h in 20: %s', (hours, expected) => {
    expect(verdictOf(club(), 'TIM-01', { attendedMinutes: hours * 60, work: looseWork(352.3) })).toBe(
      expected,
    );
  });

  it('offers the earliest day that can be kept, and from there the first with room', () => {
    const work = { attendedMinutes: 1800, work: looseWork(352.3) };
    const kept = mended(club(), review(club(), 'TIM-01', work)[0]);
    // 30 h: 20 by the 10th, 1 + 4 by the 12th, 1 each from the 14th to Friday the 18th; Monday the 21st is spare.
    expect(kept.job.wantedOn).toBe('2026-12-22');
    expect(verdictOf(kept, 'TIM-01', work)).toBe('caution busy');
    // 30 h ÷ 0.85 = 35.3 h: 30 by the 18th, 4 by the 19th, 1 + 1 by Tuesday the 22nd.
    const easy = mended(kept, review(kept, 'TIM-01', work)[0]);
    expect(easy.job.wantedOn).toBe('2026-12-23');
    expect(verdictOf(easy, 'TIM-01', work)).toBe('pass');
  });

  it.each([
    ['no day agreed', { 'job.wantedOn': null }, 'pass'],
    ['free hours not set', { 'workshop.blocks': null }, 'caution unknown'],
    ['no free hours at all', { 'workshop.blocks': blocksOf([0, 0, 0, 0, 0, 0, 0]) }, 'stop never'],
    ['wanted today', { 'job.wantedOn': '2026-11-25' }, 'stop over'],
    ['wanted last year', { 'job.wantedOn': '2025-11-25' }, 'stop over'],
  ])('%s', (_, fields, expected) => {
    expect(verdictOf(clubWith(fields), 'TIM-01')).toBe(expected);
  });
});

describe('TIM-01 asks for blocks that hold the work as it must be done', () => {
  // From Wednesday 25 November 2026, an hour an evening and four on Saturday.
  const evenings = (hours: number) => ({
    'workshop.blocks': blocksOf([hours, hours, hours, hours, hours, hours, hours]),
  });

  it.each([
    // Friday's hours are enough for 90 min; 223 of them must be in one piece, and Saturday is wanted.
    ['2026-11-28', 'caution blocks'],
    // Pressed on Saturday, folded by Tuesday 1 December.
    ['2026-12-01', 'caution blocks'],
    ['2026-12-02', 'pass'],
  ])('wanted on %s: %s', (wantedOn, expected) => {
    const work = { attendedMinutes: 90, benchMinutes: 90 };
    expect(verdictOf(clubWith({ 'job.wantedOn': wantedOn }), 'TIM-01', work)).toBe(expected);
  });

  it('says that no block holds even one piece, and how long it would have to be', () => {
    const input = clubWith({ ...evenings(0.5), 'job.wantedOn': '2027-02-26' });
    const [finding] = review(input, 'TIM-01');
    // 25 + 10 + 178 ÷ 37 = 39.8 min.
    expect(finding).toMatchObject({ variant: 'noBlock', severity: 'caution', facts: { longestHours: 0.5 } });
    expect(finding?.facts).toHaveProperty('sessionHours', expect.closeTo(39.81 / 60, 3));
  });

  it('tells each heating-up that no price holds, and its button prices them', () => {
    const input = clubWith({ ...evenings(2.5), 'job.wantedOn': '2026-12-31' });
    // 150 − 35 leaves 115 of 178 min: two sessions of 19 and 18, one more than priced.
    const [finding] = review(input, 'TIM-01');
    expect(finding).toMatchObject({
      variant: 'heatings',
      severity: 'note',
      facts: { sessions: 2, more: 1, minutes: 35, inkMl: 4 },
      fix: { facts: { pieces: 19 } },
    });
    const priced = { work: { ...clubWork, press: clubWork.press && { ...clubWork.press, sessions: 2 } } };
    expect(review(mended(input, finding), 'TIM-01', priced)).toEqual([]);
  });
});

// Back from Wednesday 9 December (the 10th is the buffer): 86.4 min of folding, packing and bringing are done on the
// 8th and 9th, the session of 223 min on Saturday the 5th. Blanks in by Friday the 4th, four working days to arrive:
// ordered by Monday the 30th.
describe('TIM-02 counts back to the last day for ordering blanks', () => {
  it('in the worked example that is Monday 30 November, four working days before blanks must be there', () => {
    const [finding] = review(club(), 'TIM-02');
    expect(finding).toMatchObject({ severity: 'note', found: '2026-11-30', facts: { lead: 4 } });
  });

  it.each([
    ['2026-11-25', 'note later'],
    ['2026-11-26', 'caution soon'],
    ['2026-11-30', 'caution soon'],
    ['2026-12-01', 'stop passed'],
  ])('asked on %s: %s', (asOf, expected) => {
    expect(verdictOf({ ...club(), asOf }, 'TIM-02')).toBe(expected);
  });

  it('offers a day that leaves time, once it has passed', () => {
    const late = { ...club(), asOf: '2026-12-03' };
    const after = mended(late, review(late, 'TIM-02')[0]);
    // Ordered on Thursday the 3rd, here by the 9th; pressed on Saturday the 12th, with 17 min to spare; 60 of the 86.4
    // min that follow on Monday, the rest on Tuesday the 15th; Wednesday is the buffer.
    expect(after.job.wantedOn).toBe('2026-12-17');
    expect(verdictOf(after, 'TIM-02')).toBe('caution soon');
    expect(verdictOf(changed(after, { 'job.wantedOn': '2026-12-16' }), 'TIM-02')).toBe('stop passed');
  });

  it('offers a day on which nothing hurries where the order is only urgent', () => {
    const soon = { ...changed(club(), { 'job.wantedOn': '2026-12-17' }), asOf: '2026-12-03' };
    const after = mended(soon, review(soon, 'TIM-02')[0]);
    // Ordered by the 8th, here by the 14th; pressed on Saturday the 19th, done on Tuesday the 22nd; Wednesday is the buffer.
    expect(after.job.wantedOn).toBe('2026-12-24');
    expect(verdictOf(after, 'TIM-02')).toBe('note later');
    expect(verdictOf(changed(after, { 'job.wantedOn': '2026-12-23' }), 'TIM-02')).toBe('caution soon');
  });

  it.each([
    ['no day agreed', { 'job.wantedOn': null }, 'pass'],
    ['free hours not set', { 'workshop.blocks': null }, 'pass'],
    ['days to arrive not set', { 'blank:white-shirt.leadWorkingDays': null }, 'caution unknown'],
  ])('%s', (_, fields, expected) => {
    expect(verdictOf(clubWith(fields), 'TIM-02')).toBe(expected);
  });

  it('orders nothing where enough lies at home, and all where one size falls short or was never counted', () => {
    const wanted = club().job.lines[0]?.quantities ?? [];
    const shelf = (of: (size: string, quantity: number) => number | null) => ({
      ...club(),
      onHand: {
        'white-shirt': Object.fromEntries(
          wanted.flatMap(({ size, quantity }) => {
            const lying = of(size, quantity);
            return lying === null ? [] : [[size, lying]];
          }),
        ),
      },
    });
    const uncounted = (input: JobInput) => review(input, 'TIM-02').map(({ facts }) => facts);
    expect(uncounted(shelf((_, quantity) => quantity))).toEqual([]);
    expect(uncounted(shelf((size, quantity) => (size === 'M' ? quantity - 1 : quantity)))).toMatchObject([
      { uncounted: '' },
    ]);
    expect(uncounted(shelf((size, quantity) => (size === 'M' ? null : quantity)))).toMatchObject([
      { uncounted: 'White shirt, 100 % polyester' },
    ]);
  });
});

describe('the earliest day', () => {
  // Asked on Wednesday 25 November for Friday the 27th, with blanks that take ten working days.
  const hurried = clubWith({ 'job.wantedOn': '2026-11-27', 'blank:white-shirt.leadWorkingDays': 10 });
  const days = (['TIM-01', 'TIM-02'] as const).map((id) => review(hurried, id)[0]);

  it('is one for hours and blanks, and neither button leads into a stop', () => {
    // Ordered today, here by 9 December; pressed on Saturday the 12th, done on Tuesday the 15th, Wednesday is spare.
    for (const finding of days) {
      expect(finding?.severity).toBe('stop');
      const after = mended(hurried, finding);
      expect(after.job.wantedOn).toBe('2026-12-17');
      expect([verdictOf(after, 'TIM-01'), verdictOf(after, 'TIM-02')]).toEqual(['pass', 'caution soon']);
    }
  });

  it('is that of the hours where the blanks are there sooner, or are the customer’s own', () => {
    // 100 min at the desk and 52.9 at the printer by Friday, pressed on Saturday the 28th, 17 of 86.4 min still there,
    // 60 on Monday, the rest on Tuesday 1 December; Wednesday is spare.
    const own = changed(hurried, { 'blank:white-shirt.suppliedBy': 'customer' });
    const [finding] = review(own, 'TIM-01');
    expect(mended(own, finding).job.wantedOn).toBe('2026-12-03');
    expect(review(own, 'TIM-02')).toEqual([]);
  });
});

describe('while one finding about time is a stop', () => {
  it('a caution beside it offers no other day', () => {
    // 16.8 h of Wednesday 25 November to Thursday 10 December are 84 %; 17.1 h are 85.5 %. Blanks of 20 days come too late.
    const input = clubWith({ 'blank:white-shirt.leadWorkingDays': 20 });
    const work = { attendedMinutes: 17.1 * 60 };
    expect(review(input, 'TIM-02', work)[0]).toMatchObject({ severity: 'stop', fix: { label: 'moveDate' } });
    expect(review(input, 'TIM-01', work)[0]).toMatchObject({
      severity: 'caution',
      facts: { honest: '' },
      fix: null,
    });
  });
});

describe('reviewCosts, with any free hours, dates and amounts of work', () => {
  const day = fc
    .date({ min: new Date('2000-01-01'), max: new Date('9999-12-31'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10));
  // None, or a block as long as one may be.
  const hours = fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 24, noNaN: true }));

  it(
    'answers; a stop’s button leads into no stop, a caution’s into nothing to say',
    () => {
      fc.assert(
        fc.property(
          fc.record({
            asOf: day,
            wantedOn: day,
            free: fc.tuple(hours, hours, hours, hours, hours, hours, hours),
            lead: fc.integer({ min: 0, max: 250 }),
            minutes: fc.double({ min: 0, max: 1e6, noNaN: true }),
            pressing: fc.double({ min: 0, max: 1, noNaN: true }),
            off: fc.array(fc.record({ from: day, to: day }), { maxLength: 2 }),
          }),
          ({ asOf, wantedOn, free, lead, minutes, pressing, off }) => {
            const input = changed(
              { ...club(), asOf },
              {
                'job.wantedOn': wantedOn,
                'workshop.blocks': blocksOf(free),
                'workshop.daysOff': off.map((days, index) => ({ id: `off-${index}`, ...days })),
                'blank:white-shirt.leadWorkingDays': lead,
              },
            );
            const runs = [{ name: 'Back', minutes: minutes * pressing }];
            const work = {
              attendedMinutes: minutes,
              benchMinutes: minutes,
              work: {
                before: [{ what: 'print', minutes: minutes * (1 - pressing) } as const],
                press: {
                  ...clubWork.press,
                  runs,
                  setUpMinutes: 0,
                  cleanDownMinutes: 0,
                  sessions: 1,
                  pieces: 37,
                  breakMinutes: 10,
                  inkMl: 4,
                },
                after: [],
              },
            };
            for (const id of ['TIM-01', 'TIM-02'] as const) {
              const [finding] = review(input, id, work);
              if (finding?.fix == null) continue;
              const after = mended(input, finding);
              for (const time of ['TIM-01', 'TIM-02'] as const)
                expect(verdictOf(after, time, work)).not.toMatch(
                  finding.severity === 'stop' ? /stop/ : /stop|caution/,
                );
            }
          },
        ),
        cases(100),
      );
    },
    patience(60_000),
  );
});
