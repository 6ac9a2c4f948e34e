import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { clubEventDay } from '@/lib/examples/clubEventDay';
import { clubOrder } from '@/lib/examples/clubOrder';
import { exampleAt } from '@/lib/examples/exampleAt';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { regionOf } from '@/lib/examples/regionOf';
import { Grid } from '@/lib/grid/evaluateGrid';
import { kinds } from '@/lib/kinds/kinds';
import { currencyDigits } from '@/shared/tables/currencies';

const DAY = '2026-11-25';
const jobs = { club: clubOrder(DAY, clubEventDay(DAY)), shirts: fairShirts(DAY), mugs: fairMugs(DAY) };
const grid = new Grid();

describe('the example of the United States', () => {
  it.each(Object.entries(jobs))('is %s as it was worked', (_, job) => {
    expect(exampleAt(job, regionOf('en-US'))).toBe(job);
  });

  it('is the one told without a place', () => {
    expect(exampleDocuments(DAY, regionOf('en-US'))).toEqual(exampleDocuments(DAY));
  });
});

describe.each(['de-DE', 'en-GB', 'de-CH', 'en-CA', 'en-AU', 'sv-SE', 'ja-JP', 'pl-PL', 'ar-KW'])(
  'the example for %s',
  (language) => {
    const region = regionOf(language);

    it('reads as it is written, in the money and units of the place', () => {
      for (const { kind, body } of exampleDocuments(DAY, region)) {
        expect(kinds[kind].schema.parse(body)).toEqual(body);
        if (kind === 'workshop') expect(body).toMatchObject(region);
      }
    });

    it.each(Object.entries(jobs))('prices %s with no stop and at the target or above', (_, job) => {
      const { prices, findings } = priceJob(exampleAt(job, region), grid);
      expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
      expect(prices?.margin).toBeGreaterThan(0.3);
    });

    it('asks prices that have no more decimals than the coin', () => {
      const digits = currencyDigits(region.currency) ?? 0;
      for (const { lines } of Object.values(jobs).map((job) => exampleAt(job, region).job)) {
        for (const { askedPrice, upCharges, marketCeiling } of lines) {
          for (const amount of [askedPrice, marketCeiling, ...upCharges.map((charge) => charge.amount)]) {
            expect(Number((amount ?? 0).toFixed(digits))).toBe(amount ?? 0);
          }
        }
      }
    });
  },
);

describe('the metric example', () => {
  const euro = exampleAt(jobs.club, regionOf('de-DE'));

  it('is on A4 and a platen of 38 cm, set in °C and bar, with tax inside', () => {
    expect(euro.workshop.sheets).toMatchObject([{ name: 'A4 sheet', widthMm: 210, heightMm: 297 }]);
    expect(euro.workshop.presses[0]).toMatchObject({
      name: 'Flat press 38 × 38 cm',
      platen: { widthMm: 380, heightMm: 380 },
    });
    expect(euro.workshop.channels.map(({ taxMode, tax }) => [taxMode, tax?.value])).toEqual([
      ['inside', 0.2],
      ['inside', 0.2],
    ]);
    // 390 °F is 198.9 °C, 40 psi is 2.76 bar.
    expect(euro.job.lines[0]?.placements[0]?.recipe).toMatchObject({
      temperature: { value: 200, unit: 'C' },
      pressureKpa: 280,
    });
  });

  it('costs within one in a hundred of the one in inches, piece for piece', () => {
    const cost = (input: typeof euro) => priceJob(input, grid).costSheet?.fullCost ?? 0;
    expect(cost(euro) / cost(jobs.club)).toBeGreaterThan(0.99);
    expect(cost(euro) / cost(jobs.club)).toBeLessThan(1.01);
  });

  it('has every length in whole millimetres, but for the sheet distances of a drive', () => {
    const lengths = JSON.stringify([euro.workshop, euro.blanks, euro.job]).match(/"\w+Mm":[\d.]+/g) ?? [];
    expect(lengths.length).toBeGreaterThan(50);
    expect(lengths.filter((length) => length.includes('.'))).toEqual([]);
  });

  it('drives in kilometres where roads are measured so, in miles in Britain', () => {
    expect(euro.workshop.rates.travelRate).toMatchObject({ value: 0.35, unit: 'money/km' });
    const british = exampleAt(jobs.club, regionOf('en-GB'));
    expect(british.workshop.rates.travelRate).toMatchObject({ value: 0.6, unit: 'money/mi' });
  });

  it('has ten times the amounts in kronor, a hundred times in yen', () => {
    // 18 an hour and 19.17 without the 20 % in 23.
    const wage = (language: string) => exampleAt(jobs.club, regionOf(language)).workshop.rates.wage?.value;
    expect([wage('de-DE'), wage('sv-SE'), wage('ja-JP')]).toEqual([18, 180, 1800]);
    const swedish = exampleAt(jobs.club, regionOf('sv-SE'));
    expect(swedish.workshop.policy.priceStep).toBe(5);
    expect(swedish.job.lines[0]?.askedPrice).toBe(230);
  });
});
