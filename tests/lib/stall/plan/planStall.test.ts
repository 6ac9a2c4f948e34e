import { describe, expect, it } from 'vitest';
import { toPress } from '@/lib/stall/making/toPress';
import { planStall } from '@/lib/stall/plan/planStall';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import { wrongChanceSum } from '@/lib/stall/plan/wrongChanceSum';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Channel, Workshop } from '@/shared/schemas/workshop';
import { grid } from '@/tests/fixtures/costed';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate } from '@/tests/fixtures/numbers';

const { stallDay, workshop } = fairAsked;
const fernL = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };
const plan = plannedFair();

const isFernL = ({ lineId, size }: { readonly lineId: string; readonly size: string }) =>
  lineId === 'fern' && size === 'L';

const soldBy = (changes: Partial<Channel>): Workshop => ({
  ...workshop,
  channels: workshop.channels.map((one) => (one.id === 'stall' ? { ...one, ...changes } : one)),
});

const share = (value: number) => fixedRate(value, 'share');

describe('what a piece brings', () => {
  it('is its price without the tax inside, less the card’s part of price and ticket', () => {
    const fern = plan.goods.find(isFernL);
    // 28 ÷ 1.07; 75 % × (2.6 % of 28 + 0.10 ÷ 1.35).
    expect(fern?.netPrice).toBeCloseTo(26.168_224, 6);
    expect(fern?.fees).toBeCloseTo(0.75 * (0.728 + 0.1 / 1.35), 9);
  });

  it('with tax added pays commission and card on what the customer pays', () => {
    const terms = soldBy({
      taxMode: 'added',
      ...{ tax: share(0.1), commission: share(0.2), commissionBase: 'withTax', cardShare: share(0.5) },
      ...{ cardFee: share(0.02), cardFixedFee: fixedRate(0.2, 'money/ticket') },
      piecesPerTicket: fixedRate(2, 'pieces'),
    });
    const { goods, mine } = plannedFair(fairWith({}, { workshop: terms }));
    const fern = goods.find(isFernL);
    expect(fern?.netPrice).toBe(28);
    // 20 % of 30.80; half of 2 % of 30.80 and of 0.20 ÷ 2.
    expect(fern?.fees).toBeCloseTo(6.16 + 0.5 * (0.616 + 0.1), 9);
    const [dry] = mine.outcomes;
    expect(dry?.takings).toBeCloseTo((dry?.netRevenue ?? 0) * 1.1, 9);
  });

  it('is the price of the day where one is typed, of its size before that of all sizes', () => {
    const own: StallDay['prices']['own'] = [
      { ...fernL, price: 26 },
      { ...fernL, size: null, price: 25 },
    ];
    const { goods } = plannedFair(fairWith({ prices: { ...stallDay.prices, own } }));
    expect(goods.filter(({ lineId, jobId }) => lineId === 'fern' && jobId === 'fair-shirts')).toMatchObject(
      [25, 25, 26, 25, 25, 25].map((price) => ({ price })),
    );
  });

  it('bears no selling day of its way of selling a second time', () => {
    const terms = soldBy({
      ...{ dayCost: fixedRate(145.6, 'money'), dayPieces: fixedRate(60, 'pieces') },
      sellingMinutesPerPiece: fixedRate(10, 'min'),
    });
    expect(plannedFair(fairWith({}, { workshop: terms })).mine.weighted.profit).toBeCloseTo(
      plan.mine.weighted.profit,
      9,
    );
  });
});

describe('what is sold of each', () => {
  it('is 43.5 shirts and 18.3 mugs over the weathers, as worked', () => {
    const of = (rangeId: string) =>
      plan.goods.reduce((sum, one) => sum + (one.rangeId === rangeId ? one.sold : 0), 0);
    expect(of('shirts').toFixed(1)).toBe('43.5');
    expect(of('mugs').toFixed(1)).toBe('18.3');
  });
});

describe('what is finished at home', () => {
  const lying = (pieces: number): StallAsked => fairWith({ held: [] }, { atHome: [{ ...fernL, pieces }] });

  it('comes first: only the rest is pressed, and batch, hours and money before the day fall', () => {
    const { goods, mine } = plannedFair(lying(3));
    const fresh = plannedFair(fairWith({ held: [] })).mine;
    expect(goods.find(isFernL)).toMatchObject({ atHome: 3, mine: 7, advised: 7, advisedBy: 'rule' });
    expect([mine.pieces, mine.made]).toEqual([109, 106]);
    expect(fresh.makingCost - mine.makingCost).toBeCloseTo(3 * 6.543, 2);
    // Of a hundred presses three are scrapped and two sheets rejected: (1.0 ÷ 0.98 + 2.3) ÷ 0.97 + 1.2 = 4.6231 minutes.
    const hours = (3 * 4.623_06) / 60;
    expect(fresh.benchHours - mine.benchHours).toBeCloseTo(hours, 5);
    // The overhead of those hours, and of the printer's own power 0.013 ÷ 132 a piece, are all they add to the batch.
    expect(Math.abs(fresh.batch - mine.batch - hours * 4.2 - (3 * 0.013) / 132)).toBeLessThan(0.001);
    // 6.543 but for 1.387 of labour, 0.052 of wear and 0.004 of power is bought: 5.100 a shirt.
    expect(Math.abs(fresh.cashBefore - mine.cashBefore - 3 * 5.1)).toBeLessThan(0.01);
  });

  it('and was pressed for the day costs what it would if nobody had noted it yet', () => {
    const all = stallDay.held.map(({ bring, ...one }) => ({ ...one, pieces: bring }));
    const { goods, mine } = plannedFair({ ...fairAsked, atHome: all, madeForDay: all });
    const [dry] = mine.outcomes;
    // §9a: 543.25, 92.96 and −391.00 in their weathers, at 40.48 an hour when it is dry; break-even at 30.65.
    expect(Math.abs(mine.weighted.profit - 337.25)).toBeLessThanOrEqual(0.02);
    expect(Math.abs((dry?.payPerHour ?? 0) - 40.48)).toBeLessThanOrEqual(0.02);
    expect(Math.abs((mine.breakEven?.everything ?? 0) - 30.65)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(mine.cashBefore - 747.51)).toBeLessThanOrEqual(0.02);
    expect(mine.made).toBe(132);
    expect(toPress(goods).every(({ press }) => press === 0)).toBe(true);
  });

  it('beside what was pressed for the day is what was finished before', () => {
    const asked = fairWith({}, { atHome: [{ ...fernL, pieces: 7 }], madeForDay: [{ ...fernL, pieces: 4 }] });
    expect(plannedFair(asked).goods.find(isFernL)).toMatchObject({ atHome: 7, finishedBefore: 3 });
    // Two of those pressed were given away: what is there was all pressed for the day.
    const given = fairWith({}, { atHome: [{ ...fernL, pieces: 2 }], madeForDay: [{ ...fernL, pieces: 4 }] });
    expect(plannedFair(given).goods.find(isFernL)).toMatchObject({ atHome: 2, finishedBefore: 0 });
  });

  it('comes along even where the rule asks for fewer', () => {
    expect(plannedFair(lying(12)).goods.find(isFernL)).toMatchObject({ advised: 12, advisedBy: 'atHome' });
  });

  it('that by what was noted is less than nothing is told, and counts as nothing', () => {
    const { goods, troubles } = plannedFair(lying(-2));
    expect(goods.find(isFernL)?.atHome).toBe(0);
    expect(troubles).toEqual([{ kind: 'stockBelowZero', goods: fernL, design: 'Fern', pieces: -2 }]);
  });

  it.each([0, 3])('is no trouble where %i lie there', (pieces) => {
    expect(plannedFair(lying(pieces)).troubles).toEqual([]);
  });
});

describe('limits', () => {
  const limited = (limits: Partial<StallDay['limits']>) =>
    plannedFair(fairWith({ limits: { ...stallDay.limits, ...limits } }));

  it('trim the advice to the table, never the maker’s numbers, and tell of those', () => {
    const { advice, mine, goods } = limited({ tablePieces: 80 });
    expect(advice.pieces).toBe(80);
    expect(advice.over).toEqual([]);
    expect(mine.pieces).toBe(132);
    expect(mine.over).toEqual([{ limit: 'tablePieces', is: 132, most: 80 }]);
    expect(new Set(goods.map(({ advisedBy }) => advisedBy))).toEqual(new Set(['rule', 'tablePieces']));
  });

  it('keep M, L and XL of every design that comes along, or leave it at home whole', () => {
    const { goods, advice } = limited({ tablePieces: 12 });
    expect(advice.pieces).toBeLessThanOrEqual(12);
    // Twelve places hold three sizes of a design, and any of them earns.
    expect(goods.some(({ size, advised }) => size === 'L' && advised > 0)).toBe(true);
    for (const design of new Set(goods.map(({ lineId, jobId }) => `${jobId} ${lineId}`))) {
      const sizes = goods.filter(({ lineId, jobId }) => `${jobId} ${lineId}` === design);
      const middle = sizes.filter(({ size }) => ['M', 'L', 'XL'].includes(size));
      if (sizes.some(({ advised }) => advised > 0))
        expect(
          middle.every(({ advised }) => advised > 0),
          design,
        ).toBe(true);
    }
  });

  it('keep the money that is laid out before the first sale, bags and boxes among it', () => {
    const { advice, mine } = limited({ cash: 600 });
    // The fee of 85.00 is paid already and laid out no more.
    expect(advice.cashBeforeWithPackaging - 85).toBeLessThanOrEqual(600);
    expect(advice.cashBeforeWithPackaging - 85).toBeGreaterThan(590);
    expect(mine.over).toEqual([{ limit: 'cash', is: expect.closeTo(787.35 - 85, 1), most: 600 }]);
  });

  it('count a fee that is not paid yet, and leave what is laid out in all as it is', () => {
    const costs = stallDay.costs.map((cost) => ({ ...cost, paidOn: null }));
    const { mine } = plannedFair(fairWith({ costs, limits: { ...stallDay.limits, cash: 600 } }));
    expect(mine.over).toEqual([{ limit: 'cash', is: expect.closeTo(787.35, 1), most: 600 }]);
    expect([mine.paid, plan.mine.paid]).toEqual([0, 85]);
    expect([mine.cashBefore, plan.mine.cashBefore]).toEqual([
      expect.closeTo(747.51, 1),
      expect.closeTo(747.51, 1),
    ]);
  });

  it('of less money than day and batch take let nothing come along, and tell from how much on something does', () => {
    const { advice, nothingFits } = limited({ cash: 50 });
    if (nothingFits?.limit !== 'cash') throw new Error('money keeps nothing out');
    expect(advice.pieces).toBe(0);
    // 145.60 of the day, 85.00 of it paid; the batch comes on top.
    expect(nothingFits.setAside).toBeGreaterThan(60.6);
    expect(nothingFits.least).toBeGreaterThan(nothingFits.setAside);
    const enough = limited({ cash: nothingFits.least });
    expect([enough.advice.pieces, enough.nothingFits]).toEqual([1, null]);
    expect(limited({ cash: nothingFits.least - 0.01 }).advice.pieces).toBe(0);
  });

  it('of fewer places than a design begins with tell how many that are', () => {
    const shirts = { ...fairAsked, jobs: fairAsked.jobs.slice(0, 1) };
    const ranges = stallDay.ranges.slice(0, 1);
    const limits = { ...stallDay.limits, tablePieces: 2 };
    const { advice, nothingFits } = plannedFair({ ...shirts, stallDay: { ...stallDay, ranges, limits } });
    expect(advice.pieces).toBe(0);
    // One each of M, L and XL.
    expect(nothingFits).toEqual({ limit: 'tablePieces', most: 2, least: 3 });
    expect(limited({}).nothingFits).toBeNull();
  });

  it('of hours warn, and trim nothing', () => {
    const { advice } = limited({ benchHours: 10 });
    expect(advice.pieces).toBe(109);
    expect(advice.over).toEqual([{ limit: 'benchHours', is: expect.closeTo(10.87, 2), most: 10 }]);
  });
});

describe('several days', () => {
  it('share what is brought: two of one weight mix their weathers', () => {
    const [day] = stallDay.days;
    if (day === undefined) throw new Error('the fair has no day');
    const days = [day, { ...day, id: 'sunday', day: addDays(day.day, 1) }];
    const { mine } = plannedFair(fairWith({ days }));
    expect(mine.outcomes.map(({ weather }) => weather)).toEqual([
      ...['dry, dry', 'dry, showers', 'dry, wet', 'showers, showers', 'showers, wet', 'wet, wet'],
    ]);
    expect(mine.outcomes.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
  });
});

describe('going or staying', () => {
  it('is staying where even the best weather does not earn what staying saves', () => {
    const hours = [{ id: 'far', what: 'Far away', hours: 200 }];
    const { goOrStay } = plannedFair(fairWith({ hours })).mine;
    expect(goOrStay).toMatchObject({ verdict: 'stay', stayHomeBelow: null });
  });

  it('looks at weathers that can be, not at one without a chance', () => {
    const weathers = stallDay.weathers.map((one) =>
      one.id === 'wet'
        ? { ...one, chance: share(0) }
        : one.id === 'dry'
          ? { ...one, chance: share(0.75) }
          : one,
    );
    const { worst } = plannedFair(fairWith({ weathers })).mine.goOrStay;
    expect(worst.weather).toBe('showers');
  });

  it('hangs on the weather between', () => {
    const hours = [{ id: 'long', what: 'A long day', hours: 40 }];
    const { goOrStay } = plannedFair(fairWith({ hours })).mine;
    // 720.00 of own pay and 45.60 are saved, and a wet day earns 424.86.
    expect(goOrStay.avoidable).toBeCloseTo(765.6, 9);
    expect(goOrStay.verdict).toBe('goUnless');
    expect(goOrStay.stayHomeBelow).toBeGreaterThan(0.3);
  });
});

describe('a weather without a chance', () => {
  const festival = { ...{ id: 'festival', name: 'festival' }, chance: share(0), factor: share(2) };

  it.each([
    ['before', [festival, ...stallDay.weathers]],
    ['after', [...stallDay.weathers, festival]],
  ])('changes nothing of the plan but its own row, %s the others', (_, weathers) => {
    const { outcomes, ...mine } = plannedFair(fairWith({ weathers })).mine;
    expect(outcomes.filter(({ weather }) => weather !== 'festival')).toEqual(plan.mine.outcomes);
    expect({ ...mine, outcomes: plan.mine.outcomes }).toEqual(plan.mine);
  });
});

describe('what stands in the way of a plan', () => {
  const troublesOf = (asked: StallAsked) => {
    const answer = planStall(asked, grid);
    return answer.kind === 'refused' ? answer.troubles : [];
  };
  const [shirts, mugs] = stallDay.ranges;
  const [fern] = shirts?.designs ?? [];
  const [shirtJob, mugJob] = fairAsked.jobs;
  if (!shirts || !mugs || !fern || !shirtJob || !mugJob) throw new Error('the fair lacks its goods');

  it.each<[string, Partial<StallDay>, object]>([
    ['no goods', { ranges: [] }, { kind: 'noJobs' }],
    ['no days', { days: [] }, { kind: 'noDays' }],
    ['no weather', { weathers: [] }, { kind: 'noWeather' }],
    [
      'a weather without its chance',
      { weathers: stallDay.weathers.map((one) => ({ ...one, chance: null })) },
      { kind: 'noWeather' },
    ],
    ['no leftover value', { leftoverShare: null }, { kind: 'noLeftoverShare' }],
    ['no way of selling', { channelId: null }, { kind: 'noChannel' }],
    [
      'a range nobody forecast',
      { ranges: [shirts, { ...mugs, pieces: null }] },
      { kind: 'noForecast', rangeId: 'mugs', range: 'Mugs' },
    ],
    [
      'nothing asked for at all',
      { ranges: [{ ...mugs, pieces: 0 }], held: [] },
      { kind: 'noForecast', rangeId: null, range: null },
    ],
    [
      'designs without parts',
      { ranges: [{ ...mugs, designs: mugs.designs.map((one) => ({ ...one, share: 0 })) }] },
      { kind: 'noShares', rangeId: 'mugs', range: 'Mugs' },
    ],
    [
      'shirts that are said to have one size',
      { ranges: [{ ...shirts, sizes: null }] },
      { kind: 'noMix', rangeId: 'shirts', range: 'Shirts' },
    ],
    [
      'a mix of sizes of which the shirt has none',
      {
        ranges: [
          { ...shirts, designs: [fern], sizes: { from: 'typed', shares: [{ size: 'one size', share: 1 }] } },
        ],
      },
      { kind: 'noSizes', rangeId: 'shirts', range: 'Shirts', design: 'Fern' },
    ],
    [
      'a forecast by days before of which none is ticked',
      { forecast: { from: 'pastDays', stallDayIds: [], footfallRatio: 1 } },
      { kind: 'noPastDay' },
    ],
    [
      'a job that is gone',
      { ranges: [{ ...shirts, designs: [{ ...fern, jobId: 'gone' }] }] },
      { kind: 'jobMissing', jobId: 'gone' },
    ],
    [
      'a design that is gone',
      { ranges: [{ ...shirts, designs: [{ ...fern, lineId: 'gone' }] }] },
      { kind: 'lineMissing', jobId: 'fair-shirts', lineId: 'gone', jobName: 'Spring Fair shirts' },
    ],
  ])('%s is told', (_, day, trouble) => {
    expect(troublesOf(fairWith(day))).toEqual([trouble]);
  });

  it('a job that is gone is told once, however many designs hang on it', () => {
    const designs = ['fern', 'otter'].map((lineId) => ({ ...fern, jobId: 'gone', lineId }));
    const ranges = [{ ...shirts, designs }];
    expect(troublesOf(fairWith({ ranges }))).toEqual([{ kind: 'jobMissing', jobId: 'gone' }]);
  });

  it('a date that stands twice is told with where it stands again', () => {
    const [day] = stallDay.days;
    if (day === undefined) throw new Error('no day');
    const days = [day, { ...day, id: 'next', day: addDays(day.day, 1) }, { ...day, id: 'again' }];
    expect(troublesOf(fairWith({ days }))).toEqual([{ kind: 'sameDay', at: 2 }]);
  });

  it.each([
    ['less', 0.3, 0.9],
    ['more', 0.4, 1.2],
    // A tenth of a percent each is no rounding any more.
    ['a little more', 0.334, 1.002],
  ])('chances that add to %s than one are told with their sum', (_, each, sum) => {
    const weathers = stallDay.weathers.map((one) => ({ ...one, chance: share(each) }));
    expect(troublesOf(fairWith({ weathers }))).toEqual([{ kind: 'chances', sum: expect.closeTo(sum, 12) }]);
  });

  it('a third three times is meant as all, to the plan and to whoever types it', () => {
    const weathers = stallDay.weathers.map((one) => ({ ...one, chance: share(0.333) }));
    expect(planStall(fairWith({ weathers }), grid).kind).toBe('planned');
    expect(wrongChanceSum(weathers)).toBeNull();
  });

  it('costs without an amount, a drive without its rate and pay that is not told are told together', () => {
    const costs = stallDay.costs.map((cost) =>
      cost.id === 'parking' ? { ...cost, amount: { of: 'typed', money: null } as const } : cost,
    );
    const rates = { ...workshop.rates, travelRate: null, wage: null };
    expect(troublesOf(fairWith({ costs }, { workshop: { ...workshop, rates } }))).toEqual([
      { kind: 'wageUnknown' },
      { kind: 'travelRateUnknown', costId: 'drive' },
      { kind: 'costUnknown', costId: 'parking', what: 'Parking' },
    ]);
  });

  it.each<[string, Partial<Channel>]>([
    ['does not say its tax', { taxMode: null }],
    ['has tax inside and no rate of it', { taxMode: 'inside', tax: null }],
    ['adds tax and has no rate of it', { taxMode: 'added', tax: null }],
  ])('a way of selling that %s is told', (_, terms) => {
    expect(troublesOf(fairWith({}, { workshop: soldBy(terms) }))).toEqual([
      { kind: 'channelLacks', what: 'tax' },
    ]);
  });

  it('a way of selling without tax needs no rate of it', () => {
    expect(troublesOf(fairWith({}, { workshop: soldBy({ taxMode: 'none', tax: null }) }))).toEqual([]);
  });

  it('a design without a price is told for each of its sizes', () => {
    const { job } = mugJob.input;
    const lines = job.lines.map((line, at) => (at === 0 ? { ...line, askedPrice: null } : line));
    const jobs = [shirtJob, { ...mugJob, input: { ...mugJob.input, job: { ...job, lines } } }];
    expect(troublesOf(fairWith({}, { jobs }))).toEqual([
      {
        kind: 'noPrice',
        goods: { jobId: 'fair-mugs', lineId: 'fern', size: '11 oz' },
        design: 'Fern',
      },
    ]);
  });

  it('a job that has a stop is told by its name', () => {
    const { job } = mugJob.input;
    const jobs = [shirtJob, { ...mugJob, input: { ...mugJob.input, job: { ...job, printerId: 'gone' } } }];
    expect(troublesOf(fairWith({}, { jobs }))).toEqual([
      { kind: 'jobStopped', jobId: 'fair-mugs', jobName: 'Spring Fair mugs' },
    ]);
  });

  it('terms that nobody told stand at what is usual, and are told beside the plan', () => {
    const { troubles } = plannedFair(
      fairWith({}, { workshop: soldBy({ piecesPerTicket: null, cardFee: null }) }),
    );
    expect(troubles).toEqual([
      { kind: 'channelLacks', what: 'cardFee' },
      { kind: 'channelLacks', what: 'piecesPerTicket' },
    ]);
  });
});
