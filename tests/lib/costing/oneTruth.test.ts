import { describe, expect, it } from 'vitest';
import { jobFigures } from '@/lib/costing/jobFigures';
import { priceJob } from '@/lib/costing/priceJob';
import { applyChanges } from '@/lib/findings/applyChanges';
import { wholeJob } from '@/lib/grid/costSheet';
import { channelsAnswer } from '@/lib/studies/channels/channelsAnswer';
import { curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { goalSeekAnswer } from '@/lib/studies/goalSeek/goalSeekAnswer';
import { leversAnswer } from '@/lib/studies/levers/leversAnswer';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { clubWith, mugsWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const rate = (value: number, unit: string) => ({ value, unit, date: TODAY, origin: 'yours' });
const STALL = 'workshop.channels.1';

/** Thirty-six mugs at a stall where a piece takes seven minutes to sell and bears its part of a day of 145.60. */
const stallJob = (fields: Readonly<Record<string, unknown>> = {}) =>
  mugsWith({
    [`${STALL}.sellingMinutesPerPiece`]: rate(7, 'min'),
    [`${STALL}.dayCost`]: rate(145.6, 'money'),
    [`${STALL}.dayPieces`]: rate(70, 'pieces'),
    ...fields,
  });

/** The club’s shirts in the euro country of a maker who writes 19 % inside: 9.50 looks dear and is not. */
const taxInsideJob = () =>
  clubWith({
    'workshop.channels.0.taxMode': 'inside',
    'workshop.channels.0.tax': rate(0.19, 'share'),
    'job.lines.0.askedPrice': 15.5,
  });

/** Nobody has decided a price; the up-charges that stand are of a price that was. */
const undecided = () => clubWith({ 'job.lines.0.askedPrice': null });

const stallUndecided = () =>
  stallJob({
    [`${STALL}.taxMode`]: 'inside',
    [`${STALL}.tax`]: rate(0.19, 'share'),
    'job.lines.0.askedPrice': null,
    'job.lines.1.askedPrice': null,
    'job.lines.2.askedPrice': null,
  });

function answersOf(input: JobInput) {
  const { prices, costSheet } = priceJob(input, grid);
  const channels = channelsAnswer(input, grid);
  const levers = leversAnswer(input, grid, { aim: 'margin' });
  const curve = curveAnswer(input, grid, { flatPrice: null });
  if (!prices || !costSheet || !channels || !levers || curve.kind !== 'curve') throw new Error('not priced');
  const own = channels.ways.find(({ isJobs }) => isJobs);
  const point = curve.points.find(({ n }) => n === curve.asked);
  if (!own || !point) throw new Error('the job is not among its ways of selling, or not on its curve');
  const figures = jobFigures(input, grid);
  if (figures.kind !== 'priced') throw new Error('the list of jobs has no price of it');
  return { prices, costSheet, own, levers, point, figures };
}

describe.each([
  ['at a stall', stallJob],
  ['at a stall where nobody has said how long selling takes', () => mugsWith({})],
  ['with tax inside', taxInsideJob],
  [
    'sold to a shop that pays what is asked',
    () =>
      stallJob({
        [`${STALL}.kind`]: 'wholesale',
        [`${STALL}.shareOfRetail`]: rate(0.5, 'share'),
      }),
  ],
  ['whose price nobody has decided, made to order', undecided],
  [
    'whose price nobody has decided, with its set-up apart',
    () => clubWith({ 'job.lines.0.askedPrice': null, 'job.lines.0.selling': 'setUpApart' }),
  ],
  ['whose price nobody has decided, at a stall with tax inside', stallUndecided],
])('a job %s', (_, input) => {
  const { prices, own, levers, point, figures } = answersOf(input());

  it('has one margin: in its prices, its offer, its way of selling, its levers, on its curve and among all jobs', () => {
    for (const { margin } of [prices.offer, own, levers.before, point, figures])
      expect(margin).toBeCloseTo(prices.margin, 9);
  });

  it('has one pay an hour in the same places', () => {
    for (const { payPerHour } of [prices.offer, own, levers.before, point, figures])
      expect(payPerHour).toBeCloseTo(prices.payPerHour, 9);
  });

  it('has one profit and one cost in the same places', () => {
    for (const profit of [prices.offer.profit, own.profit, levers.before.profit, point.profit]) {
      expect(profit).toBeCloseTo(prices.profit, 9);
    }
    expect(own.fullCost).toBeCloseTo(point.fullCost, 9);
  });
});

describe('selling at a stall', () => {
  const without = answersOf(mugsWith({}));
  const bare = answersOf(stallJob());

  it('costs 36 × 7 minutes at 18.00 and 4.20 an hour and 36 of the 70 pieces that share a day', () => {
    const selling = ((36 * 7) / 60) * 22.2 + (36 / 70) * 145.6;
    expect(bare.costSheet.fullCost - without.costSheet.fullCost).toBeCloseTo(selling, 9);
    expect(without.prices.profit - bare.prices.profit).toBeCloseTo(selling, 9);
    expect(bare.own.costToServe).toBeCloseTo(selling, 9);
  });

  it('is paid in the hour: profit and own pay over 252 minutes more', () => {
    const attended = wholeJob(without.costSheet, 'attended') + 252;
    const pay = bare.prices.profit + (attended / 60) * 18;
    expect(bare.prices.payPerHour).toBeCloseTo(pay / (attended / 60), 9);
    expect(bare.prices.payPerHour).toBeLessThan(without.prices.payPerHour);
  });

  it('is no cost of one more piece and no minute at the bench', () => {
    for (const row of ['incrementalCost', 'benchTime']) {
      expect(wholeJob(bare.costSheet, row)).toBeCloseTo(wholeJob(without.costSheet, row), 9);
    }
  });

  it('is told with the price: the minutes, and what of a day a piece and the job bear', () => {
    expect(bare.prices.offer.selling).toEqual({
      kind: 'counted',
      minutesEach: 7,
      day: { cost: 145.6, pieces: 70, each: 2.08, daysOfJob: 36 / 70 },
      lacksDay: false,
    });
    expect(without.prices.offer.selling).toEqual({ kind: 'notSaid' });
    expect(answersOf(clubWith({})).prices.offer.selling).toEqual({ kind: 'withOrder' });
  });

  it('is told as not counted by the job’s own way, and as customary by one that is only compared', () => {
    expect(without.own).toMatchObject({ kind: 'stall', selling: 'notSaid', costToServe: 0 });
    const ways = channelsAnswer(clubWith({}), grid)?.ways ?? [];
    expect(ways.map(({ kind, selling }) => [kind, selling])).toEqual([
      ['stall', 'customary'],
      ['order', 'own'],
      ['wholesale', 'customary'],
      ['consignment', 'customary'],
    ]);
  });
});

describe('an asked price with 19 % inside', () => {
  const { prices } = answersOf(taxInsideJob());

  const leaves = { margin: expect.any(Number), payPerHour: expect.any(Number) };

  it('is offered as it is written, 13.03 of it without tax', () => {
    // 15.50 ÷ 1.19 = 13.0252.
    expect(prices.offer.lines).toEqual([
      {
        lineId: 'shirts',
        pieces: 37,
        each: 1550,
        start: 0,
        eachWithoutTax: 1303,
        isDecided: true,
        // With the up-charges of 1.50 and 2.50.
        sizes: [
          { sizes: ['S', 'M', 'L', 'XL'], price: 1550, ...leaves },
          { sizes: ['2XL'], price: 1700, ...leaves },
          { sizes: ['3XL'], price: 1800, ...leaves },
        ],
      },
    ]);
  });

  it('leaves by size what it leaves in all', () => {
    const [line] = prices.offer.lines;
    const pieces = new Map(taxInsideJob().job.lines[0]?.quantities.map((one) => [one.size, one.quantity]));
    const profit = (line?.sizes ?? []).map(({ sizes, price, margin }) => {
      const count = sizes.reduce((sum, size) => sum + (pieces.get(size) ?? 0), 0);
      return (count * margin * price) / 100 / 1.19;
    });
    expect(profit.reduce((sum, one) => sum + one, 0)).toBeCloseTo(prices.offer.profit, 6);
  });

  it('comes to what the buyer pays, tax taken out of it', () => {
    // 37 × 15.50, and the up-charges 4 × 1.50 and 1 × 2.50.
    expect(prices.offer.total?.with).toBe(58_200);
    // 582.00 × 0.19 ÷ 1.19 = 92.924.
    expect(prices.offer.total?.tax).toBe(9292);
  });

  it('is sought in the money it is written in: total and piece alike', () => {
    const sought = goalSeekAnswer(taxInsideJob(), grid, { seek: 'priceForMargin', margin: 0.3 });
    if (sought?.seek !== 'priceForMargin' || !sought.found.ok) throw new Error('no price');
    expect(sought.found.value.total).toBeCloseTo(37 * sought.found.value.each, 9);
    expect(sought.found.value.total).toBeCloseTo(prices.targetTotal * 1.19, 6);
  });
});

describe('a job whose price nobody has decided', () => {
  const input = undecided();
  const { prices, own } = answersOf(input);

  it('is offered at what the list asks of an order of 37: 651.00, 17.50 each on the ending', () => {
    // 42 × 15.50 = 651.00 is all that 37 pay; 651.00 ÷ 37 = 17.59.
    expect(prices.offer.lines).toMatchObject([{ each: 1750, isDecided: false }]);
  });

  it('pays and leaves what the same prices would, were they asked', () => {
    const upCharges = [
      { size: '2XL', amount: 2.5 },
      { size: '3XL', amount: 4 },
    ];
    const asked = clubWith({ 'job.lines.0.askedPrice': 17.5, 'job.lines.0.upCharges': upCharges });
    const decided = answersOf(asked);
    expect(prices.offer.margin).toBeCloseTo(decided.prices.margin, 9);
    expect(prices.offer.payPerHour).toBeCloseTo(decided.prices.payPerHour, 9);
    expect(prices.offer.total).toEqual(decided.prices.offer.total);
    expect(own.payPerHour).toBeCloseTo(decided.prices.payPerHour, 9);
    expect(jobFigures(input, grid)).toEqual(jobFigures(asked, grid));
    expect(channelsAnswer(input, grid)?.till).toEqual(channelsAnswer(asked, grid)?.till);
    expect(curveAnswer(input, grid, { flatPrice: null })).toMatchObject({
      ...curveAnswer(asked, grid, { flatPrice: null }),
      priced: 'suggested',
    });
    for (const seek of ['batchForMargin', 'largestWage'] as const) {
      const question = { seek, margin: 0.2, price: null };
      expect(goalSeekAnswer(input, grid, question)).toEqual(goalSeekAnswer(asked, grid, question));
    }
  });

  it('keeps its price under every change that is tried, as a decided one does', () => {
    const levers = leversAnswer(input, grid, { aim: 'margin' })?.levers ?? [];
    const asked = clubWith({
      'job.lines.0.askedPrice': 17.5,
      'job.lines.0.upCharges': [
        { size: '2XL', amount: 2.5 },
        { size: '3XL', amount: 4 },
      ],
    });
    const decided = leversAnswer(asked, grid, { aim: 'margin' })?.levers ?? [];
    expect(levers.length).toBeGreaterThan(3);
    expect(levers.map(({ id, after, gain }) => ({ id, after, gain }))).toEqual(
      decided.map(({ id, after, gain }) => ({ id, after, gain })),
    );
  });

  it('asks a higher price with the up-charges that go with it', () => {
    const higher = leversAnswer(input, grid, { aim: 'margin' })?.levers.find(({ id }) => id === 'nextPrice');
    expect(higher?.changes).toEqual([
      { document: 'job', path: ['lines', 0, 'askedPrice'], value: 18 },
      {
        document: 'job',
        path: ['lines', 0, 'upCharges'],
        value: [
          { size: '2XL', amount: 2.5 },
          { size: '3XL', amount: 4 },
        ],
      },
    ]);
    const taken = jobInputSchema.parse(applyChanges(input, higher?.changes ?? []));
    expect(priceJob(taken, grid).prices?.margin).toBeCloseTo(higher?.after.margin ?? 0, 9);
  });
});
