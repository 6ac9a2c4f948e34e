import { createHash } from 'node:crypto';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { amountsOf } from '@/app/_firstScreen/amountsOf';
import { sentHead } from '@/app/_firstScreen/sentHead';
import { strangerHash, strangerScript } from '@/app/_firstScreen/strangerScript';
import { everyPlace, exampleAmounts } from '@/app/_firstScreen/workAmounts';
import { regionOf } from '@/lib/examples/regionOf';
import { Grid } from '@/lib/grid/evaluateGrid';

const grid = new Grid();

test.each(everyPlace)('the head sent to %s says to the cent what the docket works out there', (language) => {
  const region = regionOf(language);
  expect(amountsOf(region)).toEqual(exampleAmounts(region, grid));
});

test.each(['2026-02-28', '2027-06-30', '2028-02-29'])('a visit on %s finds the same figures', (day) => {
  for (const language of ['en-US', 'de-DE', 'ja-JP']) {
    const region = regionOf(language);
    expect(exampleAmounts(region, grid, day)).toEqual(amountsOf(region));
  }
});

describe('what a visitor reads', () => {
  test('is the worked example where it was worked', () => {
    const head = sentHead('en-US,en;q=0.9');
    // 37 shirts at 19.00, five of them in the two sizes that cost 1.50 and 2.50 more: 703 + 4 × 1.50 + 2.50.
    expect(head?.figures).toMatchObject({ price: '19.00', total: '711.50', totalFor: 'for 37' });
    // 7 % of 711.50 is 49.805.
    expect(head?.figures.totalTax).toBe('with tax 761.31');
    expect(head?.language).toBe('en-US');
  });

  test('is in the money and the writing of the place', () => {
    const head = sentHead('de-AT');
    expect(head?.currency).toBe('EUR');
    expect(head?.figures.price).toBe('23,00');
  });

  test('has every amount of the ruler written out', () => {
    const head = sentHead('fr-FR');
    const shown = [...(head?.figures.marks ?? []).map(({ value }) => value), head?.figures.flag];
    expect(shown.length).toBeGreaterThan(3);
    for (const value of shown) expect(head?.written[String(value)]).toMatch(/\d/);
  });

  test('is there for a browser that asks for no language', () => {
    expect(sentHead(null)?.currency).toBe('USD');
    expect(sentHead('*')?.currency).toBe('USD');
  });
});

test.each([
  ['a first visit', {}, undefined],
  ['the example as it came', { 'pressminute-visit': '{"at":1,"holdsOwn":false}' }, undefined],
  ['things of one’s own', { 'pressminute-visit': '{"at":1,"holdsOwn":true}' }, 'own'],
  // Builds before this one noted which job was looked at, and not yet whose it was.
  ['a job that was looked at, whosever', { 'pressminute-last-job': 'club-order' }, 'own'],
  [
    'another job than the example',
    { 'pressminute-visit': '{"at":1,"holdsOwn":false}', 'pressminute-last-job': 'fair-mugs' },
    'own',
  ],
])('after %s the example’s head is shown, or gives way', (_, noted: Record<string, string>, first) => {
  const dataset: { first?: string } = {};
  runInNewContext(strangerScript, {
    localStorage: { getItem: (key: string) => noted[key] ?? null },
    navigator: { language: 'en-US' },
    document: { currentScript: { dataset: { language: 'en-US' } }, documentElement: { dataset } },
  });
  expect(dataset.first).toBe(first);
});

test('the content policy knows the one inline script by its hash', () => {
  expect(strangerHash).toBe(`sha256-${createHash('sha256').update(strangerScript).digest('base64')}`);
});
