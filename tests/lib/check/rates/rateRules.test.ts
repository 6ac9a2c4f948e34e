import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { resolveJob } from '@/lib/job/resolveJob';
import { addDays } from '@/shared/days';
import { rateCatalogue, rateNames } from '@/shared/tables/rateCatalogue';
import { changed, club, clubWith, mended, mugsWith, TODAY, told, verdict } from '@/tests/fixtures/clubJob';

const yours = (value: number, unit: string, date = TODAY) => ({ value, unit, date, origin: 'yours' });

describe('RATE-01 tells of every missing rate, and nothing is taken for free', () => {
  it.each(rateNames)('the workshop has no %s', (name) => {
    const input = clubWith({ [`workshop.rates.${name}`]: null });
    const [finding, ...others] = told(input, 'RATE-01');
    expect(others).toEqual([]);
    expect(finding?.severity).toBe(name === 'wage' ? 'stop' : 'caution');
    const rate = resolveJob(input).resolved?.rates[name];
    expect(rate).toEqual({
      value: rateCatalogue[name].typical,
      unit: rateCatalogue[name].units[0],
      date: TODAY,
      origin: 'typical',
    });
    const after = mended(input, finding);
    expect(verdict(after, 'RATE-01')).toBe('pass');
    expect(after.workshop.rates[name]?.origin).toBe('typical');
  });

  it('stops a job without a wage, and no reason passes it', () => {
    const waiver = { finding: 'RATE-01', placementId: null, lineId: null, reason: 'I work for love.' };
    const input = clubWith({ 'workshop.rates.wage': null, 'job.waivers': [waiver] });
    expect(checkJob(input).checked).toBeNull();
    expect(verdict(input, 'RATE-01')).toBe('stop stop');
  });

  it.each([
    'workshop.printers.0.powerKw',
    'workshop.printers.0.unattendedMinutesPerSheet',
    'workshop.printers.0.price',
    'workshop.printers.0.resale',
    'workshop.printers.0.lifeSheets',
    'workshop.presses.0.powerKw',
    'workshop.presses.0.warmUpMinutes',
    'workshop.presses.0.holdingShare',
    'workshop.presses.0.price',
    'workshop.presses.0.resale',
    'workshop.presses.0.lifePresses',
    'workshop.presses.0.partsInterval',
    'workshop.presses.0.protectivePaper',
    'workshop.presses.0.tape',
    'workshop.sheets.0.price',
    'workshop.packagings.0.perPiece',
    'workshop.channels.0.tax',
    'workshop.channels.0.commission',
    'workshop.channels.0.cardFee',
    'workshop.channels.0.cardFixedFee',
    'workshop.channels.0.cardShare',
    'blank:white-shirt.blankFault',
    'blank:white-shirt.finishMinutes',
    'artwork:hill-path.prepMinutes',
    'artwork:hill-path.coverage',
    'job.lines.0.placements.0.scrap',
    'job.lines.0.placements.0.handMinutes',
    'job.lines.0.placements.0.aloneMinutes',
    'job.lines.0.placements.0.hotMinutes',
  ])('%s is missing: one caution, and its button mends it', (path) => {
    const input = clubWith({ [path]: null });
    expect(told(input, 'RATE-01').map(({ severity }) => severity)).toEqual(['caution']);
    expect(checkJob(input).checked).not.toBeNull();
    expect(verdict(mended(input, told(input, 'RATE-01')[0]), 'RATE-01')).toBe('pass');
  });

  it.each([
    [
      'years of life nobody gave',
      { 'workshop.presses.0.lifeYears': null, 'workshop.printers.0.lifeYears': null },
    ],
    [
      'wearing parts nobody gave',
      { 'workshop.presses.0.partsPrice': null, 'workshop.presses.0.partsInterval': null },
    ],
    ['freight that is said to be free', { 'job.freightIn': yours(0, 'money/order') }],
    ['driving where nobody drives', { 'job.deliveryKm': 0, 'workshop.rates.travelRate': null }],
    [
      'freight and a drive of goods made for stock',
      {
        'job.madeFor': 'stock',
        'job.freightIn': null,
        'job.deliveryKm': null,
        'workshop.rates.travelRate': null,
        'workshop.rates.deliverMinutes': null,
      },
    ],
    [
      'freight of blanks that the customer brings',
      { 'job.freightIn': null, 'blank:white-shirt.suppliedBy': 'customer' },
    ],
    ['tax where there is none', { 'workshop.channels.0.taxMode': 'none', 'workshop.channels.0.tax': null }],
    [
      'card fees where nobody pays by card',
      {
        'workshop.channels.0.cardShare': yours(0, 'share'),
        'workshop.channels.0.cardFee': null,
        'workshop.channels.0.cardFixedFee': null,
        'job.cardPayments': 0,
      },
    ],
    [
      'an enquiry where nobody orders',
      {
        'job.madeFor': 'stock',
        'workshop.rates.enquiryMinutes': null,
        'workshop.rates.proofMinutes': null,
        'workshop.rates.packMinutes': null,
        'workshop.rates.packagingPerOrder': null,
      },
    ],
    ['the press of another job', { 'workshop.presses.1.powerKw': null }],
  ])('does not ask for %s', (_, fields) => {
    expect(verdict(clubWith(fields), 'RATE-01')).toBe('pass');
  });

  it.each([
    [
      'presses of a year once years are given',
      { 'workshop.presses.0.lifeYears': yours(8, 'years'), 'workshop.presses.0.pressesPerYear': null },
    ],
    [
      'pieces on a ticket of a stall',
      { 'job.channelId': 'stall', 'workshop.channels.1.piecesPerTicket': null },
    ],
  ])('asks for %s', (_, fields) => {
    expect(verdict(clubWith(fields), 'RATE-01')).toBe('caution caution');
  });

  it('stops where nothing is typical: money in a currency far from the dollar, an amount of the maker’s own', () => {
    expect(verdict(clubWith({ 'workshop.currency': 'JPY', 'workshop.rates.tariff': null }), 'RATE-01')).toBe(
      'stop noTypical',
    );
    expect(
      verdict(clubWith({ 'workshop.currency': 'JPY', 'workshop.rates.setUpMinutes': null }), 'RATE-01'),
    ).toBe('caution caution');
    const row = {
      id: 'own_licence',
      label: 'Licence',
      outOfPocket: true,
      cost: { kind: 'driver', driver: 'piece', amount: null },
    };
    expect(verdict(clubWith({ 'job.ownRows': [row] }), 'RATE-01')).toBe('stop noTypical');
  });

  it('takes a job’s own figure before the workshop’s', () => {
    const input = clubWith({ 'job.rates.wage': yours(25, 'money/h'), 'workshop.rates.wage': null });
    expect(resolveJob(input).resolved?.rates.wage.value).toBe(25);
    expect(verdict(input, 'RATE-01')).toBe('pass');
  });
});

describe('RATE-02 looks at the age of figures', () => {
  const old = (days: number) =>
    clubWith({ 'workshop.rates.tariff': yours(0.18, 'money/kWh', addDays(TODAY, -days)) });

  it.each([
    [-1, 'caution future'],
    [0, 'pass'],
    [90, 'pass'],
    [91, 'note old'],
    [365, 'note old'],
    [366, 'caution stale'],
  ])('%d days: %s', (days, expected) => {
    expect(verdict(old(days), 'RATE-02')).toBe(expected);
    if (expected !== 'pass')
      expect(verdict(mended(old(days), told(old(days), 'RATE-02')[0]), 'RATE-02')).toBe('pass');
  });

  it('speaks once for all old figures of a document', () => {
    const stale = changed(club(), {});
    const input = { ...stale, asOf: addDays(TODAY, 100) };
    const findings = told(input, 'RATE-02');
    expect(findings.map(({ where }) => where.document).sort()).toEqual([
      'artwork',
      'artwork',
      'blank',
      'job',
      'workshop',
    ]);
  });

  it('lets typical values be', () => {
    const rate = { ...yours(0.18, 'money/kWh', '2020-01-01'), origin: 'typical' };
    expect(verdict(clubWith({ 'workshop.rates.tariff': rate }), 'RATE-02')).toBe('pass');
  });
});

describe('RATE-03 questions what has never been seen', () => {
  it.each([
    [0.049, 'caution low'],
    [0.05, 'pass'],
    [3, 'pass'],
    // Above what has been seen it is asked about as the price of a litre, and that alone.
    [3.01, 'pass', 'caution litre'],
    [16, 'pass', 'caution litre'],
  ])('ink at %d a mL: %s', (value, expected, asLitre = 'pass') => {
    const input = clubWith({ 'workshop.rates.inkPrice': yours(value, 'money/mL') });
    expect([verdict(input, 'RATE-03'), verdict(input, 'RATE-04')]).toEqual([expected, asLitre]);
  });

  it('compares in one unit: 0.6 a mile is 0.37 a kilometre', () => {
    // The band ends at 3 a mile, which is 1.86 a kilometre (1.609344 km a mile, NIST SP 811).
    expect(verdict(clubWith({ 'workshop.rates.travelRate': yours(1.86, 'money/km') }), 'RATE-03')).toBe(
      'pass',
    );
    expect(verdict(clubWith({ 'workshop.rates.travelRate': yours(1.87, 'money/km') }), 'RATE-03')).toBe(
      'caution high',
    );
    // 0.0065 mL/in² is 10.1 mL/m²; the band ends at 0.02, which is 31.
    expect(verdict(clubWith({ 'workshop.rates.laydown': yours(31, 'mL/m2') }), 'RATE-03')).toBe('pass');
    expect(verdict(clubWith({ 'workshop.rates.laydown': yours(32, 'mL/m2') }), 'RATE-03')).toBe(
      'caution high',
    );
  });

  it('stops a yearly cost spread over no hours', () => {
    const input = clubWith({ 'workshop.rates.overheadHours': yours(0, 'h/year') });
    expect(verdict(input, 'RATE-03')).toBe('stop nothing');
    expect(checkJob(mended(input, told(input, 'RATE-03')[0])).checked).not.toBeNull();
  });

  it('has no band for money far from the dollar', () => {
    const input = clubWith({
      'workshop.currency': 'JPY',
      'workshop.policy.priceStep': 100,
      'workshop.rates.wage': yours(2000, 'money/h'),
      // A yen has no parts.
      'job.lines.0.upCharges': [],
    });
    expect(verdict(input, 'RATE-03')).toBe('pass');
  });
});

describe('RATE-04 smells the price of a pack', () => {
  // The typical shirt is 4.60; eight of them are 36.80.
  it.each([
    [36.8, 'pass'],
    [36.9, 'caution pack'],
    [46, 'caution pack'],
  ])('a shirt at %d: %s', (value, expected) => {
    expect(
      verdict(clubWith({ 'blank:white-shirt.sizes.2.price': yours(value, 'money/piece') }), 'RATE-04'),
    ).toBe(expected);
  });

  it('divides by the pack where the blank says how large it is', () => {
    const input = clubWith({
      'blank:white-shirt.sizes.2.price': yours(46, 'money/piece'),
      'blank:white-shirt.sizes.2.packSize': 10,
    });
    const after = mended(input, told(input, 'RATE-04')[0]);
    expect(after.blanks['white-shirt']?.sizes[2]?.price?.value).toBe(4.6);
  });

  it('asks once about ink at 16 a mL, and its button lands among what is usual', () => {
    const input = clubWith({ 'workshop.rates.inkPrice': yours(16, 'money/mL') });
    const asked = checkJob(input).findings.filter(({ where }) => where.path.includes('inkPrice'));
    expect(asked.map(({ id, variant }) => `${id} ${variant}`)).toEqual(['RATE-04 litre']);
    // A thousandth, 0.016, would be less than ink costs anywhere (0.05 to 3.00), so the typical one is offered.
    const after = mended(input, asked[0]);
    expect([verdict(after, 'RATE-03'), verdict(after, 'RATE-04')]).toEqual(['pass', 'pass']);
  });

  it('asks once about a pack that costs more than any shirt', () => {
    // 15 times 4.60 is 69.
    const input = clubWith({ 'blank:white-shirt.sizes.2.price': yours(80, 'money/piece') });
    expect(verdict(input, 'RATE-03')).toBe('pass');
    expect(verdict(input, 'RATE-04')).toBe('caution pack');
  });

  it('takes ink at 160 a mL for a litre’s price', () => {
    const input = clubWith({ 'workshop.rates.inkPrice': yours(160, 'money/mL') });
    expect(verdict(input, 'RATE-04')).toBe('caution litre');
    expect(mended(input, told(input, 'RATE-04')[0]).workshop.rates.inkPrice?.value).toBe(0.16);
  });
});

describe('RATE-05 does not believe in no scrap', () => {
  it.each([
    [0, 'caution'],
    [0.001, 'pass'],
  ])('%d: %s', (value, expected) => {
    const input = clubWith({ 'job.lines.0.placements.0.scrap': yours(value, 'share') });
    expect(verdict(input, 'RATE-05')).toBe(expected);
    if (expected !== 'pass')
      expect(verdict(mended(input, told(input, 'RATE-05')[0]), 'RATE-05')).toBe('pass');
  });
});

// Fees of the order channel: 2.9 % card on half the money with 7 % tax = 0.029 × 0.5 × 1.07 = 0.015515.
describe('RATE-06 stops fees and margin that use up the price', () => {
  it.each([
    [0.95, 'pass', 0],
    [0.95, 'pass', 0.03],
    [0.95, 'stop', 0.05],
    [0.5, 'pass', 0.48],
    [0.5, 'stop', 0.49],
  ])('margin %d: %s with a commission of %d', (margin, expected, commission) => {
    const input = clubWith({
      'workshop.rates.targetMargin': yours(margin, 'share'),
      'workshop.channels.0.commission': yours(commission, 'share'),
    });
    expect(verdict(input, 'RATE-06')).toBe(expected);
    if (expected === 'stop') {
      expect(told(input, 'RATE-06')[0]?.waivable).toBe(false);
      expect(verdict(mended(input, told(input, 'RATE-06')[0]), 'RATE-06')).toBe('pass');
    }
  });

  it('reaches exactly 100 % without card fees', () => {
    const at = (margin: number) =>
      clubWith({
        'workshop.rates.targetMargin': yours(margin, 'share'),
        'workshop.channels.0.commission': yours(0.6, 'share'),
        'workshop.channels.0.cardShare': yours(0, 'share'),
      });
    expect(verdict(at(0.4), 'RATE-06')).toBe('stop');
    expect(verdict(at(0.399), 'RATE-06')).toBe('pass');
  });

  it('changes the job’s own margin where the job has one', () => {
    const input = clubWith({
      'job.rates.targetMargin': yours(0.95, 'share'),
      'workshop.channels.0.commission': yours(0.1, 'share'),
    });
    const after = mended(input, told(input, 'RATE-06')[0]);
    expect(after.job.rates.targetMargin?.value).toBe(0.3);
    expect(after.workshop.rates.targetMargin).toEqual(input.workshop.rates.targetMargin);
  });
});

describe('RATE-07 sees wear that is paid twice', () => {
  it('where overhead pays for it and machines lose value', () => {
    const input = clubWith({ 'workshop.policy.wearInOverhead': true });
    expect(verdict(input, 'RATE-07')).toBe('caution');
    expect(verdict(mended(input, told(input, 'RATE-07')[0]), 'RATE-07')).toBe('pass');
  });

  it('not where the machines cost nothing', () => {
    const none = yours(0, 'money');
    const input = mugsWith({
      'workshop.policy.wearInOverhead': true,
      'workshop.printers.0.price': none,
      'workshop.printers.0.resale': none,
      'workshop.presses.1.price': none,
      'workshop.presses.1.resale': none,
    });
    expect(verdict(input, 'RATE-07')).toBe('pass');
  });
});

describe('RATE-03 on a blank’s price that cannot be meant', () => {
  const clubAt = (small: number) =>
    clubWith({
      'blank:white-shirt.sizes.0.price': yours(small, 'money/piece'),
      'blank:white-shirt.sizes.1.price': yours(0.001, 'money/piece'),
    });
  const ofMedium = (small: number) =>
    told(clubAt(small), 'RATE-03').find(({ where }) => where.path.join('.') === 'sizes.1.price');

  it('offers the typical price where no smaller size costs more', () => {
    expect(ofMedium(4)?.fix?.label).toBe('useTypical');
    expect(verdict(mended(clubAt(4), ofMedium(4)), 'RATE-03')).toBe('pass');
  });

  it('offers no price under which a larger size would cost less than a smaller one', () => {
    expect(ofMedium(10)).toMatchObject({ severity: 'caution', fix: null });
  });
});
