import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { resolveJob } from '@/lib/job/resolveJob';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club, clubWith, mended, mugsWith, TODAY, told, verdict } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const yours = (value: number, unit: string) => ({ value, unit, date: TODAY, origin: 'yours' });

describe('freight and the drive of an order are asked for while nobody has said', () => {
  it('empty freight is a caution; the typical one or 0 settles it', () => {
    const empty = clubWith({ 'job.freightIn': null });
    expect(verdict(empty, 'RATE-01')).toBe('caution noFreight');
    const after = mended(empty, told(empty, 'RATE-01')[0]);
    // 9.50 an order, from memory, as in the table of typical rates.
    expect(after.job.freightIn).toEqual({
      value: 9.5,
      unit: 'money/order',
      date: TODAY,
      origin: 'typical',
    });
    expect(verdict(after, 'RATE-01')).toBe('pass');
    expect(verdict(clubWith({ 'job.freightIn': yours(0, 'money/order') }), 'RATE-01')).toBe('pass');
  });

  it('in a currency without typical amounts the button says that it comes free', () => {
    const empty = clubWith({ 'workshop.currency': 'JPY', 'job.freightIn': null });
    const finding = told(empty, 'RATE-01').find(({ variant }) => variant === 'noFreight');
    expect(finding?.fix?.label).toBe('noFreight');
    expect(mended(empty, finding).job.freightIn?.value).toBe(0);
  });

  it('an empty drive is a caution that tells of the 30 minutes; its button counts them', () => {
    const empty = clubWith({ 'job.deliveryKm': null });
    expect(told(empty, 'RATE-01')).toMatchObject([{ variant: 'noDrive', facts: { minutes: 30 } }]);
    const after = mended(empty, told(empty, 'RATE-01')[0]);
    expect(after.job.deliveryKm).toBe(0);
    expect(verdict(after, 'RATE-01')).toBe('pass');
  });

  it('goods for a stall are asked for neither', () => {
    expect(verdict(fairShirts(TODAY), 'RATE-01')).toBe('pass');
    expect(verdict(fairMugs(TODAY), 'RATE-01')).toBe('pass');
  });
});

describe('RATE-03 asks about figures that cannot be meant', () => {
  it.each([
    [0, 'caution noInk'],
    [0.01, 'pass'],
  ])('an artwork that covers %d: %s', (total, expected) => {
    const input = clubWith({ 'artwork:hill-path.coverage': { kind: 'total', total } });
    expect(verdict(input, 'RATE-03')).toBe(expected);
  });

  it('ink of nothing is mended to the typical', () => {
    const input = clubWith({ 'artwork:hill-path.coverage': { kind: 'total', total: 0 } });
    const after = mended(input, told(input, 'RATE-03')[0]);
    expect(verdict(after, 'RATE-03')).toBe('pass');
  });

  it.each([
    // Two presses of 55 s are 0.9167 min: hands 0.5 and alone 0.4 or 0.42.
    [0.5, 0.4, 'caution underDwell'],
    [0.5, 0.42, 'pass'],
    [0.92, 0, 'pass'],
  ])('%d min of hands and %d alone for 55 s in the press: %s', (hands, alone, expected) => {
    const input = clubWith({
      'job.lines.0.placements.0.handMinutes': yours(hands, 'min'),
      'job.lines.0.placements.0.aloneMinutes': yours(alone, 'min'),
    });
    expect(verdict(input, 'RATE-03')).toBe(expected);
  });

  it('the button lets the press work alone for what is missing', () => {
    const input = clubWith({
      'job.lines.0.placements.0.handMinutes': yours(0.5, 'min'),
      'job.lines.0.placements.0.aloneMinutes': yours(0, 'min'),
    });
    const after = mended(input, told(input, 'RATE-03')[0]);
    // 0.9167 − 0.5, up to the hundredth.
    expect(after.job.lines[0]?.placements[0]?.aloneMinutes?.value).toBe(0.42);
    expect(verdict(after, 'RATE-03')).toBe('pass');
  });

  it.each([
    // Two badges share a press of 55 s: 0.4584 min each, of which 0.2 and 0.25 are 0.45, 0.2 and 0.26 are 0.46.
    [0.2, 0.25, 'caution underDwell'],
    [0.2, 0.26, 'pass'],
  ])('two in a press share its 55 s: %d min of hands and %d alone each: %s', (hands, alone, expected) => {
    const input = clubWith({
      'job.lines.0.placements.1.recipe.steps.piecesPerPress': 2,
      'job.lines.0.placements.1.handMinutes': yours(hands, 'min'),
      'job.lines.0.placements.1.aloneMinutes': yours(alone, 'min'),
    });
    expect(verdict(input, 'RATE-03')).toBe(expected);
    if (expected !== 'pass')
      expect(mended(input, told(input, 'RATE-03')[0]).job.lines[0]?.placements[1]?.aloneMinutes?.value).toBe(
        0.26,
      );
  });

  it('an oven holds several pieces at once, so a piece may take less than the dwell', () => {
    const input = mugsWith({
      'workshop.presses.1.kind': 'oven',
      'job.lines.0.placements.0.handMinutes': yours(0.5, 'min'),
      'job.lines.0.placements.0.aloneMinutes': yours(0.5, 'min'),
    });
    expect(told(input, 'RATE-03').map(({ variant }) => variant)).not.toContain('underDwell');
  });

  it.each([
    // The weakest flat press of the trade takes 0.8 kW (from memory); small ones about half of it.
    ['workshop.presses.0.powerKw', 0.1, 'caution low'],
    ['workshop.presses.0.powerKw', 0.39, 'caution low'],
    ['workshop.presses.0.powerKw', 0.4, 'pass'],
  ])('%s of %d kW: %s', (path, kw, expected) => {
    expect(verdict(clubWith({ [path]: yours(kw, 'kW') }), 'RATE-03')).toBe(expected);
  });

  it('pay of nothing means that the maker works for nothing, in any currency', () => {
    for (const currency of ['USD', 'JPY']) {
      const input = clubWith({
        'workshop.currency': currency,
        'workshop.rates.wage': yours(0, 'money/h'),
      });
      const told0 = told(input, 'RATE-03').filter(({ variant }) => variant === 'noPay');
      expect(told0).toMatchObject([{ severity: 'caution' }]);
    }
    const little = clubWith({ 'workshop.rates.wage': yours(0.01, 'money/h') });
    expect(verdict(little, 'RATE-03')).toBe('caution low');
  });
});

describe('RATE-03 asks about prices that no order pays', () => {
  const charges = (amount: number) => [
    { size: '2XL', amount },
    { size: '3XL', amount: 2.5 },
  ];
  const typed = (field: string, value: unknown) =>
    clubWith({ 'workshop.policy.breaks': [1, 6, 12, 24, 48], [`job.lines.0.${field}`]: value });

  it.each([
    ['askedPrice', 19.005, 'caution askedFiner'],
    ['askedPrice', 19.01, 'pass'],
    ['askedStart', 132.005, 'caution startFiner'],
    ['askedStart', 132.01, 'pass'],
    ['upCharges', charges(1.505), 'caution chargeFiner'],
    ['upCharges', charges(1.51), 'pass'],
    // The breaks are 1, 6, 12, 24 and 48.
    ['ownPrices', [{ from: 10, each: 20 }], 'caution ownNoBreak'],
    ['ownPrices', [{ from: 12, each: 20 }], 'pass'],
  ])('%s %j: %s', (field, value, expected) => {
    expect(verdict(typed(field, value), 'RATE-03')).toBe(expected);
  });

  it.each([
    ['askedPrice', 19.005, 19.01],
    ['upCharges', charges(1.505), charges(1.51)],
    [
      'ownPrices',
      [
        { from: 10, each: 20 },
        { from: 11, each: 19.5 },
        { from: 12, each: 19 },
      ],
      [{ from: 12, each: 19 }],
    ],
  ])('the button mends %s', (field, value, expected) => {
    const input = typed(field, value);
    const after = mended(input, told(input, 'RATE-03')[0]);
    expect(after.job.lines[0]).toMatchObject({ [field]: expected });
    expect(verdict(after, 'RATE-03')).toBe('pass');
  });

  it('a price that a coin rounds to nothing has no button', () => {
    const input = clubWith({ 'job.lines.0.askedPrice': 0.004 });
    expect(told(input, 'RATE-03')).toMatchObject([{ variant: 'askedFiner', fix: null }]);
  });
});

/** What is told of a job beyond what is told of the club's order. */
function addedTo(input: JobInput): readonly Finding[] {
  const before = checkJob(club()).findings.map(({ id, variant }) => `${id} ${variant}`);
  return checkJob(input).findings.filter(({ id, variant }) => !before.includes(`${id} ${variant}`));
}

const priced = (price: unknown) =>
  clubWith({
    'blank:white-shirt.sizes': club().blanks['white-shirt']?.sizes.map((size) => ({ ...size, price })),
  });

describe('one gap is told once', () => {
  it('six sizes without a price are one stop that names them, and its button prices all', () => {
    const input = priced(null);
    const added = addedTo(input);
    expect(added).toMatchObject([
      {
        id: 'QTY-04',
        severity: 'stop',
        facts: { blank: 'White shirt, 100 % polyester', sizes: 'S, M, L, XL, 2XL, 3XL', count: 6 },
      },
    ]);
    const after = mended(input, added[0]);
    expect(after.blanks['white-shirt']?.sizes.map(({ price }) => price?.value)).toEqual(Array(6).fill(4.6));
    expect(checkJob(after).checked).not.toBeNull();
  });

  it('each of several sizes takes the price of the size next to it', () => {
    const input = clubWith({
      'blank:white-shirt.sizes.0.price': null,
      'blank:white-shirt.sizes.5.price': null,
    });
    const added = addedTo(input);
    expect(added).toMatchObject([{ facts: { sizes: 'S, 3XL' }, fix: { label: 'pricesAsNear' } }]);
    const { sizes } = mended(input, added[0]).blanks['white-shirt'] ?? { sizes: [] };
    // M costs 4.60, 2XL 6.10.
    expect([sizes[0]?.price?.value, sizes[5]?.price?.value]).toEqual([4.6, 6.1]);
  });

  it('is told once for a blank that two lines want', () => {
    const input = priced(null);
    const [line] = input.job.lines;
    const twice = changed(input, { 'job.lines': [line, { ...line, id: 'more', name: 'More shirts' }] });
    expect(told(twice, 'QTY-04')).toHaveLength(1);
  });

  it('a price of 0 in all sizes is one caution that names them', () => {
    const input = priced(yours(0, 'money/piece'));
    const added = addedTo(input);
    expect(added).toMatchObject([
      {
        id: 'RATE-03',
        variant: 'low',
        severity: 'caution',
        facts: { of: 'White shirt, 100 % polyester S, M, L, XL, 2XL, 3XL', value: 0 },
      },
    ]);
    expect(addedTo(mended(input, added[0]))).toEqual([]);
  });

  it('a 3XL without a price is one stop, and its button takes what 2XL costs', () => {
    const input = clubWith({ 'blank:white-shirt.sizes.5.price': null });
    const added = addedTo(input);
    expect(added.map(({ id, variant }) => [id, variant])).toEqual([['QTY-04', 'noPrice']]);
    const after = mended(input, added[0]);
    expect(after.blanks['white-shirt']?.sizes[5]?.price).toEqual({
      value: 6.1,
      unit: 'money/piece',
      date: TODAY,
      origin: 'typical',
    });
    expect(checkJob(after).checked).not.toBeNull();
  });

  it('takes the next larger where none is smaller, and the typical where none has a price', () => {
    const smallest = clubWith({ 'blank:white-shirt.sizes.0.price': null });
    expect(mended(smallest, told(smallest, 'QTY-04')[0]).blanks['white-shirt']?.sizes[0]?.price?.value).toBe(
      4.6,
    );
    const sizes = club().blanks['white-shirt']?.sizes.map((size) => ({ ...size, price: null }));
    const none = clubWith({ 'blank:white-shirt.sizes': sizes });
    expect(told(none, 'QTY-04')[0]?.fix?.label).toBe('useTypical');
  });
});

describe('blanks that the customer brings', () => {
  const sizes = club().blanks['white-shirt']?.sizes.map((size) => ({ ...size, price: null }));
  const own = clubWith({
    'blank:white-shirt.suppliedBy': 'customer',
    'blank:white-shirt.sizes': sizes,
    'job.freightIn': null,
  });

  it('cost nothing and raise no alarm about a price, a pack or an order', () => {
    const ids = checkJob(own).findings.map(({ id, variant }) => `${id} ${variant ?? ''}`);
    const before = checkJob(club()).findings.map(({ id, variant }) => `${id} ${variant ?? ''}`);
    expect(ids.filter((id) => !before.includes(id))).toEqual(['LAW-08 ', 'QTY-08 ask']);
    const prices = resolveJob(own).resolved?.lines[0]?.sizes.map(({ blankPrice }) => blankPrice.value);
    expect(prices).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it('cost nothing either where a price is still typed', () => {
    const typed = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
    expect(resolveJob(typed).resolved?.lines[0]?.sizes[0]?.blankPrice.value).toBe(0);
  });

  it('leave the price to bear paper, ink and minutes of spoiled pieces, and freight only where it is typed', () => {
    const typed = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
    // 37 ÷ 0.93624 = 39.52 blanks at 4.8297 each are 190.87, and 2 % of it for reprints.
    const blanks = 39.52 * 4.8297 * 1.02;
    expect(costed(typed).sheet.fullCost).toBeCloseTo(411.79 - blanks, 1);
    // 9.50 of freight less, and nothing else.
    expect(costed(typed).sheet.fullCost - costed(own).sheet.fullCost).toBeCloseTo(9.5, 9);
  });

  it('are asked for with spares for every size, 95 % sure: 50 for the 37 shirts', () => {
    // Worked by hand: S6 M12 L14 XL10 2XL6 3XL2 at p = 0.936.
    expect(told(own, 'QTY-08')).toMatchObject([
      { severity: 'note', variant: 'ask', facts: { pieces: 37, ask: 50 } },
    ]);
  });
});
