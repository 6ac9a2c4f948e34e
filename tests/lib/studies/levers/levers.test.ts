import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { fairShirts } from '@/lib/examples/fairJobs';
import { applyChanges } from '@/lib/findings/applyChanges';
import { levers } from '@/lib/studies/levers/levers';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { changed, club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const leversOf = (input: JobInput) => levers(input, costed(input), grid);

/** The worked example beside a cheaper shirt and a larger sheet. */
function wider(): JobInput {
  const input = clubWith({ 'job.lines.0.orderedQuantity': 37 });
  const shirt = input.blanks['white-shirt'];
  const [letter] = input.workshop.sheets;
  if (shirt === undefined || letter === undefined) throw new Error('the example lacks its shirt or sheet');
  const plain = {
    ...shirt,
    name: 'Plain shirt',
    sizes: shirt.sizes.map((size) => ({
      ...size,
      price: size.price && { ...size.price, value: size.price.value - 1 },
    })),
  };
  return jobInputSchema.parse({
    ...input,
    blanks: { ...input.blanks, 'plain-shirt': plain },
    workshop: {
      ...input.workshop,
      sheets: [letter, { ...letter, id: 'a3', name: 'A3', widthMm: 297, heightMm: 420 }],
    },
  });
}

describe('levers of the club order', () => {
  const told = leversOf(wider());

  it('offer each kind of change that gains something', () => {
    const ids = new Set(told.map(({ id }) => id));
    for (const id of [
      'smallerPrint',
      'fillSpot',
      'onePlacementLess',
      'cheaperBlank',
      'fewerMinutes',
      'lessScrap',
      'nextPrice',
      'shareSession',
      'gangReplacements',
    ] as const)
      expect(ids).toContain(id);
  });

  it('come biggest first, by margin or by pay', () => {
    const margins = told.map(({ gain }) => gain.margin);
    expect(margins).toEqual([...margins].sort((a, b) => b - a));
    const input = wider();
    const pays = levers(input, costed(input), grid, 'payPerHour').map(({ gain }) => gain.payPerHour);
    expect(pays).toEqual([...pays].sort((a, b) => b - a));
  });

  it('shrink the badge to 3.41 in, six to a sheet, which saves 1.73', () => {
    const smaller = told.find(({ id }) => id === 'smallerPrint');
    expect(smaller?.facts).toMatchObject({
      placement: 'Chest badge',
      perSheet: 6,
      widthMm: expect.closeTo(3.41 * 25.4, 9),
    });
    // Three sheets over 0.98 at 0.5418 are 1.659, less ink 0.038, and 2 % of sheets, minutes and ink for reprints 0.032.
    expect((smaller?.gain.savingEach ?? 0) * 37).toBeCloseTo(1.729, 2);
  });

  it('ask for 40 shirts in the sizes ordered, and for what the customer said with them', () => {
    const spot = told.find(({ id }) => id === 'fillSpot');
    expect(spot?.facts).toMatchObject({ more: 3, quantity: 40, filled: 'sheet' });
    expect(spot?.after.pieces).toBe(40);
    expect(spot?.changes.map(({ path }) => path.at(-1))).toEqual(['quantities', 'orderedQuantity']);
  });

  it('save a tenth of the minutes where most go: pressing the back', () => {
    expect(told.find(({ id }) => id === 'fewerMinutes')?.facts).toMatchObject({ element: 'Back picture' });
  });

  it('take a point off the press that spoils most', () => {
    expect(told.find(({ id }) => id === 'lessScrap')?.facts).toMatchObject({
      placement: 'Back picture',
      from: 0.035,
    });
  });

  it('do what they promise when they are taken', () => {
    const input = wider();
    const before = priceJob(input, grid).prices;
    for (const { id, changes, after, gain } of told) {
      const taken = priceJob(jobInputSchema.parse(applyChanges(input, changes)), grid).prices;
      expect([id, taken?.margin], id).toEqual([id, expect.closeTo(after.margin, 12)]);
      expect(taken?.payPerHour).toBeCloseTo(after.payPerHour, 9);
      expect((taken?.margin ?? 0) - (before?.margin ?? 0)).toBeCloseTo(gain.margin, 9);
      expect((taken?.profit ?? 0) - (before?.profit ?? 0)).toBeCloseTo(gain.profit, 9);
    }
  });
});

describe('levers', () => {
  it('turn the presses round where another order is cheaper', () => {
    const input = clubWith({
      'job.lines.0.placements': [...(club().job.lines[0]?.placements ?? [])].reverse(),
    });
    const order = leversOf(input).find(({ id }) => id === 'pressOrder');
    expect(order?.facts).toMatchObject({ first: 'Back picture' });
  });

  it('leave a job alone that has one placement, one sheet and one blank of its kind', () => {
    const ids = leversOf(mugs()).map(({ id }) => id);
    for (const id of ['onePlacementLess', 'pressOrder', 'cheaperBlank', 'otherSheet'] as const)
      expect(ids).not.toContain(id);
  });

  it('do not ask for half as many again to fill a session', () => {
    const fair = fairShirts('2026-11-25');
    // Ninety-six shirts fill two sessions of 48; the next would be full at 144.
    expect(leversOf(fair).map(({ id }) => id)).not.toContain('fillSpot');
  });

  it('offer nothing that brings up a stop', () => {
    // The other shirt is cotton: cheaper, and not to be pressed.
    const input = wider();
    const plain = input.blanks['plain-shirt'];
    const cotton = changed(input, {
      'blank:plain-shirt.fibres': [{ fibre: 'cotton', share: 1 }],
    });
    expect(plain).toBeDefined();
    expect(leversOf(cotton).map(({ id }) => id)).not.toContain('cheaperBlank');
  });

  it('offer no blank that a customer brings as one to buy', () => {
    const brought = changed(wider(), { 'blank:plain-shirt.suppliedBy': 'customer' });
    expect(leversOf(brought).map(({ id }) => id)).not.toContain('cheaperBlank');
  });
});
