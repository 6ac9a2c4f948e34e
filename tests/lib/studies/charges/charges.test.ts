import { describe, expect, it } from 'vitest';
import type { LineList } from '@/lib/price/list/lineList';
import { priceLine } from '@/lib/price/priceTable';
import { priceEndings } from '@/lib/studies/breaks/priceEndings';
import { upCharges } from '@/lib/studies/breaks/upCharges';
import { artMinutes } from '@/lib/studies/charges/artMinutes';
import { designCharge } from '@/lib/studies/charges/designCharge';
import { extraCharge } from '@/lib/studies/charges/extraCharge';
import { minimumOrder } from '@/lib/studies/charges/minimumOrder';
import { placementCharge } from '@/lib/studies/charges/placementCharge';
import { rushShare } from '@/lib/studies/charges/rushShare';
import { sampleCharge } from '@/lib/studies/charges/sampleCharge';
import { type MinorUnits, toMinor } from '@/shared/money';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';
import { ownCost } from '@/tests/fixtures/plainJob';
import { exampleList } from '@/tests/lib/studies/breaks/listFixture';

const job = costed(club());
/** What fees and target margin leave of a price: 1 − 0.3 − 0.029 × 0.5 × 1.07. */
const KEEP = 0.684485;

function chargesOf(of: typeof job) {
  const [line] = of.laidOut.job.lines;
  if (line === undefined) throw new Error('the example has a line');
  const { needs, orders } = priceLine(job, line, grid);
  return upCharges(of, line, needs, orders);
}

describe('upCharges', () => {
  it('suggests 2.50 for 2XL and 4.00 for 3XL', () => {
    const charges = chargesOf(job);
    expect(charges.ok && charges.value.sizes.map(({ size, written }) => [size, written])).toEqual([
      ['S', 0],
      ['M', 0],
      ['L', 0],
      ['XL', 0],
      ['2XL', 250],
      ['3XL', 400],
    ]);
  });

  it('is the dearer blank over yield and what fees and margin leave, its reprints included', () => {
    const charges = chargesOf(job);
    const exact = charges.ok ? charges.value.sizes.map((size) => size.exact) : [];
    // 1.50 and 2.50 more for the blank, 0.93624 of which ends good, and 2 % for reprints.
    expect(exact[4]).toBeCloseTo(((1.5 / 0.93624) * 1.02) / KEEP, 3);
    expect(exact[5]).toBeCloseTo(((2.5 / 0.93624) * 1.02) / KEEP, 3);
  });

  it('averages over the pieces really ordered, and says so beside the separate charges', () => {
    const charges = chargesOf(job);
    // 602.05 ÷ 37 = 16.27 in the mean; 15.91 for the base size.
    expect(charges.ok && [charges.value.averaged, charges.value.basePrice]).toEqual([1650, 1600]);
  });

  it.each([
    [0.001, 'finerThanCurrency'],
    [0, 'notAStep'],
  ])('says what is wrong with a step of %d', (upChargeStep, kind) => {
    const { laidOut } = job;
    const { workshop } = laidOut.job;
    const policy = { ...workshop.policy, upChargeStep };
    const asked = { ...laidOut.job, workshop: { ...workshop, policy } };
    const charges = chargesOf({ ...job, laidOut: { ...laidOut, job: asked } } as typeof job);
    expect(charges.ok ? null : charges.problem.kind).toBe(kind);
  });
});

describe('priceEndings', () => {
  it('puts the two neighbours of 16.27 side by side and recommends the upper', () => {
    const endings = priceEndings(job, grid, 0.5, null);
    if (!endings.ok) throw new Error(endings.problem.kind);
    const { below, above, recommended } = endings.value;
    expect([below?.price, above.price, recommended]).toEqual([1600, 1650, 'above']);
    expect(below?.margin ?? 1).toBeLessThan(0.3);
    expect(above.margin).toBeGreaterThan(0.3);
    // At 16.50 nothing is lost from the first batch that 89.87 + 8.69 n allows: 89.87 ÷ (16.50 × 0.984 − 8.69) = 11.9.
    expect(above.breakEvenAt).toBe(12);
  });

  it('recommends the lower where the upper is above the ceiling', () => {
    const endings = priceEndings(job, grid, 0.5, 16.2);
    expect(endings.ok && [endings.value.recommended, endings.value.above.aboveCeiling]).toEqual([
      'below',
      true,
    ]);
  });

  it('has nothing below the out-of-pocket floor', () => {
    const endings = priceEndings(job, grid, 20, null);
    expect(endings.ok && [endings.value.below, endings.value.above.price]).toEqual([null, 2000]);
  });

  it.each([
    [0.5, 6, 'ceilingUnderFloor'],
    [0.005, null, 'finerThanCurrency'],
    [-1, null, 'notAStep'],
  ])('says what is wrong with an ending of %d under a ceiling of %s', (step, ceiling, kind) => {
    const endings = priceEndings(job, grid, step, ceiling);
    expect(endings.ok ? null : endings.problem.kind).toBe(kind);
  });

  it('knows that a yen has no parts and a dinar has a thousand', () => {
    const yen = costed(clubWith({ 'workshop.currency': 'JPY' }));
    const dinar = costed(clubWith({ 'workshop.currency': 'KWD' }));
    const inYen = priceEndings(yen, grid, 0.5, null);
    expect(inYen.ok ? null : inYen.problem).toEqual({ kind: 'finerThanCurrency', step: 0.5, digits: 0 });
    const whole = priceEndings(yen, grid, 1, null);
    expect(whole.ok && whole.value.above.price).toBe(17);
    const fils = priceEndings(dinar, grid, 0.125, null);
    expect(fils.ok && fils.value.above.price).toBe(16_375);
  });
});

describe('placementCharge', () => {
  it('is the job with the badge less the job without it', () => {
    const charge = placementCharge(job, grid, 'shirts', 'badge');
    const without = costed(
      clubWith({ 'job.lines.0.placements': club().job.lines[0]?.placements.slice(0, 1) }),
    );
    if (!charge.ok) throw new Error(charge.problem.kind);
    expect(charge.value.cost).toBeCloseTo(job.sheet.fullCost - without.sheet.fullCost, 9);
    expect(charge.value.targetEach).toBeCloseTo(charge.value.costEach / KEEP, 9);
    // Far from half the price of the shirt, and far from nothing.
    expect(charge.value.written).toBeGreaterThanOrEqual(150);
  });

  it.each([
    ['shirts', 'sleeve', 'noSuchPlacement'],
    ['mugs', 'badge', 'noSuchPlacement'],
  ])('knows no %s with a %s', (lineId, placementId, kind) => {
    const charge = placementCharge(job, grid, lineId, placementId);
    expect(charge.ok ? null : charge.problem.kind).toBe(kind);
  });

  it('does not take the only placement away', () => {
    const single = costed(
      clubWith({ 'job.lines.0.placements': club().job.lines[0]?.placements.slice(0, 1) }),
    );
    const charge = placementCharge(single, grid, 'shirts', 'back');
    expect(charge.ok ? null : charge.problem.kind).toBe('onlyPlacement');
  });
});

describe('designCharge', () => {
  it('is what preparing and testing the design adds to the order', () => {
    const charge = designCharge(job, grid, 'club-crest');
    if (!charge.ok) throw new Error(charge.problem.kind);
    // Fifteen minutes at 18.00 and 4.20 an hour; the badge has no tests.
    expect(charge.value.cost).toBeCloseTo((15 / 60) * 22.2, 9);
    expect(charge.value.exact).toBeCloseTo(((15 / 60) * 22.2) / KEEP, 9);
    expect(charge.value.written).toBe(850);
  });

  it('counts the tests of the picture too', () => {
    const charge = designCharge(job, grid, 'hill-path');
    expect(charge.ok && charge.value.cost).toBeGreaterThan((30 / 60) * 22.2);
  });

  it('knows no artwork that the job does not carry', () => {
    const charge = designCharge(job, grid, 'fern');
    expect(charge.ok ? null : charge.problem.kind).toBe('noSuchArtwork');
  });
});

describe('extraCharge', () => {
  it('charges a name by its minutes and a sheet of its own', () => {
    const charge = extraCharge(job, grid, { minutes: 3, sheets: 1, cash: 0, atLeast: 0 });
    if (!charge.ok) throw new Error(charge.problem.kind);
    // Three minutes at 22.20 an hour; a sheet at 0.14, wear 0.0317, one minute, 2.5 min of 0.015 kW, 2 % rejected.
    const sheet = 0.14 + 380 / 12_000 + 22.2 / 60 + ((0.015 * 2.5) / 60) * 0.18;
    const cost = (3 / 60) * 22.2 + sheet / 0.98;
    expect(charge.value.cost).toBeCloseTo(cost, 9);
    expect(charge.value.target).toBeCloseTo(cost / KEEP, 9);
    expect(charge.value.written).toBe(250);
  });

  it('charges a delivery by minutes and cash, and a change at least its minimum', () => {
    const delivery = extraCharge(job, grid, { minutes: 20, sheets: 0, cash: 5, atLeast: 0 });
    expect(delivery.ok && delivery.value.cost).toBeCloseTo(12.4, 9);
    const change = extraCharge(job, grid, { minutes: 5, sheets: 0, cash: 0, atLeast: 15 });
    expect(change.ok && change.value.written).toBe(1500);
  });

  it('takes nothing negative for nothing', () => {
    const charge = extraCharge(job, grid, { minutes: -1, sheets: 0, cash: 0, atLeast: 0 });
    expect(charge.ok ? null : charge.problem).toEqual({ kind: 'notAnAmount', field: 'minutes', value: -1 });
  });
});

describe('minimumOrder', () => {
  const listed = (rule: 'asListed' | 'setUpApart' = 'asListed', start = 0): LineList => ({
    lineId: 'shirts',
    rule,
    start: toMinor(start, 'USD'),
    breaks: (rule === 'asListed' ? exampleList().breaks : [{ from: 1, each: toMinor(12.5, 'USD') }]).map(
      ({ from, each }) => ({
        from,
        each,
        total: (toMinor(start, 'USD') + from * each) as MinorUnits,
      }),
    ),
    sizes: [{ size: 'S', more: 0 as MinorUnits }],
    largestOvercharge: null,
    leastMargin: 0.3,
  });

  it('is an order of one piece and the profit wanted, over what fees leave', () => {
    const charge = minimumOrder(job, grid, 10, listed());
    if (!charge.ok) throw new Error(charge.problem.kind);
    expect(charge.value.exact).toBeCloseTo((charge.value.fullCost + 0.3 + 10) / (1 - 0.015515), 6);
    // About 99 to make one and 10 to earn: 112 is what four pieces cost at 26, and not five.
    expect(charge.value.covers).toBe(4);
    // One piece is listed at 26.00, far from 111.
    expect(charge.value.paidByList).toBeNull();
  });

  it('is paid by the list where its first order brings as much', () => {
    // So much to start and a piece: 132.00 + 12.50 for the first one are more than the 101 that it takes.
    const charge = minimumOrder(job, grid, 0, listed('setUpApart', 132));
    expect(charge.ok && charge.value.paidByList).toEqual({ from: 1, total: 14_450 });
    // With 44 wanted of it, 99.12 + 44 over 0.984485 are 145.4.
    const dear = minimumOrder(job, grid, 44, listed('setUpApart', 132));
    expect(dear.ok && dear.value.paidByList).toBeNull();
  });

  it('says it where the wanted profit is no amount', () => {
    const charge = minimumOrder(job, grid, Number.NaN, listed());
    expect(charge.ok ? null : charge.problem.kind).toBe('notAnAmount');
  });
});

describe('sampleCharge', () => {
  it('is one shirt with a session and a carton, and nothing that the order bears: about 38', () => {
    // By hand, one L: 1 ÷ (0.965 × 0.98) = 1.05741 enter the back press, 1 ÷ 0.98 = 1.02041 the badge press.
    const [backs, badges] = [1 / (0.965 * 0.98), 1 / 0.98];
    const presses = backs + badges;
    // A sheet for each print, one more for each spoiled one, 2 % of all rejected.
    const sheets = (backs + badges) / 0.98;
    const blank = (4.6 * backs) / 0.99;
    // mL where printed: 8 × 10 in at 110 %, 3.5 × 3.5 in at 140 %, 0.0065 mL/in², 10 % lost; 4 mL a session.
    const ml = (backs * 80 * 1.1 + badges * 12.25 * 1.4) * 0.0065 * 1.1;
    const ink = (ml / 0.98 + 4) * 0.16;
    const paper = sheets * 0.14;
    const supplies = presses * 0.065;
    const wear = presses * 0.018 + sheets * (380 / 12_000);
    // kWh: 1.4 kW held at 40 % for 2.4 and 2.1 min, 15 min of warm-up, the printer 2.5 min a sheet.
    const held = ((backs * 2.4 + badges * 2.1) / 60) * 1.4 * 0.4;
    const power = (held + 1.4 * (15 / 60) + sheets * 0.015 * (2.5 / 60)) * 0.18;
    const run = sheets + backs * 2.4 + badges * 2.1 + 1.2;
    const time = ((run + 25 + 10) / 60) * 22.2;
    const packaging = 0.15 + 3.5;
    // 2 % for reprints: materials and run minutes, all of the ink.
    const reprints = 0.02 * (blank + paper + supplies + ink + (run / 60) * 22.2);
    const cost = blank + ink + paper + supplies + wear + power + time + packaging + reprints;
    expect(cost).toBeCloseTo(26, 0);
    const sample = sampleCharge(job, grid, 'shirts');
    expect(sample?.size).toBe('L');
    expect(sample?.cost).toBeCloseTo(cost, 2);
    // With 0.30 for the card, over 0.684485: 38.47, lifted to the next half.
    expect(((sample?.cost ?? 0) + 0.3) / KEEP).toBeCloseTo(38.47, 2);
    expect(sample?.written).toBe(3850);
  });

  it('is none of a line that is not there', () => {
    expect(sampleCharge(job, grid, 'mugs')).toBeNull();
  });

  it('leaves costs of the maker’s own that fall on the order to the order', () => {
    const own = clubWith({ 'job.ownRows': [ownCost('licence', 'order', 40)] });
    expect(sampleCharge(costed(own), grid, 'shirts')?.cost).toBeCloseTo(
      sampleCharge(job, grid, 'shirts')?.cost ?? 0,
      9,
    );
  });
});

describe('rushShare', () => {
  it.each([
    [12, 10, true, { kind: 'none' }],
    [10, 10, true, { kind: 'none' }],
    [8, 10, true, { kind: 'rush', share: 0.2 }],
    [4, 10, true, { kind: 'rush', share: 0.5 }],
    [1, 10, true, { kind: 'rush', share: 1 }],
    [4, 10, false, { kind: 'noCapacity' }],
  ] as const)('for %i days instead of %i with capacity %s', (wanted, normal, capacity, rush) => {
    const shares = { underNormal: 0.2, underHalf: 0.5, nextDay: 1 };
    expect(rushShare(wanted, normal, capacity, shares)).toEqual(rush);
  });
});

describe('artMinutes', () => {
  it('includes the first minutes, charges the rest by the hour, and quotes a redraw', () => {
    expect(artMinutes(15, 15, 40)).toEqual({ kind: 'included' });
    expect(artMinutes(45, 15, 40)).toEqual({ kind: 'hourly', chargedMinutes: 30, amount: 20 });
    expect(artMinutes(null, 15, 40)).toEqual({ kind: 'quoted' });
  });
});
