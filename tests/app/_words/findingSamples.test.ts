import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { Finding } from '@/shared/finding';
import { findingIds } from '@/shared/tables/findingIds';
import { factsGiven, factsUsed } from '@/tests/fixtures/factsUsed';
import { findingSamples } from '@/tests/fixtures/findingSamples/findingSamples';

const inches = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;
const metric = {
  locale: 'de-DE',
  currency: 'EUR',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
} as const;

const named = findingSamples.map(
  (finding) => [[finding.id, finding.variant, finding.severity].filter(Boolean).join(' '), finding] as const,
);

const wordsOf = (finding: Finding): readonly string[] =>
  [inches, metric].flatMap((context) => {
    const { sentence, detail } = findingWords(finding, context);
    return [sentence, detail];
  });

describe('every way of putting a finding', () => {
  it('has a sample of every id', () => {
    expect(new Set(findingSamples.map(({ id }) => id))).toEqual(new Set(findingIds));
  });

  it.each(named)('%s uses every fact of it and no other', (_, finding) => {
    expect(factsUsed(finding)).toEqual(factsGiven(finding));
  });

  it.each(named)('%s has no gap, and no nothing where its facts have figures', (_, finding) => {
    for (const words of wordsOf(finding)) {
      expect(words).toMatch(/^[\p{Lu}“\d].*[.”]$/u);
      expect(words).not.toMatch(/undefined|null|NaN|\[object|\s\s|“”|\(\)/);
      // No sample holds a zero: one in the words is a figure that was not there.
      expect(words).not.toMatch(/(?<![\d.,])0(?![\d.,])(?! %)/);
    }
  });
});

const sampleOf = (id: Finding['id'], variant: string): Finding => {
  const found = findingSamples.find((one) => one.id === id && one.variant === variant);
  if (found === undefined) throw new ReferenceError(`${id} ${variant} has no sample`);
  return found;
};

describe('figures of a sentence stand where they belong', () => {
  it.each([
    [
      'PLC-05',
      'edge',
      'Chest at 210 × 250 mm comes close to the edge of the platen of Swing press (380 × 400 mm). The outer 13 mm of a platen runs cooler, so the edge of the picture may be pale. Use a smaller print, or test the edges.',
    ],
    [
      'LAY-07',
      'smaller',
      '64 % of each Letter stays empty beside Chest. At 96 × 116 mm a sheet carries 2 instead of 1.',
    ],
    [
      'REC-12',
      'seldom',
      'This recipe has been pressed on Shirt 3 times. From 10 good presses on it counts as known. Look at the first pieces closely.',
    ],
    [
      'RATE-08',
      'ownBelowCost',
      'From 12 pieces on, your own price of Shirts is 9,00 EUR in L, less than a piece costs. With fees and your own pay, 2,00 EUR a piece is missing at 24 pieces. Raise it, take the suggestion, or know why not.',
    ],
    [
      'ELE-01',
      'near',
      'Everything on the circuit takes 1.500 W, above 1.440 W. For hours of use a circuit of 120 V and 15 A is best kept under four fifths of its 1.800 W. Move something to another circuit. Ask a licensed electrician.',
    ],
  ] as const)('%s %s', (id, variant, expected) => {
    const { sentence, detail } = findingWords(sampleOf(id, variant), metric);
    expect(`${sentence} ${detail}`).toBe(expected);
  });
});
