import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { makeFinding } from '@/lib/findings/makeFinding';
import { club } from '@/tests/fixtures/clubJob';

const context = { locale: 'en-US', units: club().workshop.units, currency: 'USD' };

function said(off: number, inside: readonly [number, number]): string {
  const finding = makeFinding({
    id: 'ART-04',
    severity: 'caution',
    variant: 'inside',
    where: { document: 'job', path: [] },
    facts: {
      artwork: 'Fern',
      off,
      widthMm: 215.9,
      heightMm: 82.55,
      insideWidthMm: inside[0],
      insideHeightMm: inside[1],
    },
  });
  return findingWords(finding, context).sentence;
}

describe('a picture of another shape than its box', () => {
  it('is told in per cent while that says something', () => {
    expect(said(0.12, [193, 82.55])).toBe('Fern and its box of 8.5 × 3.25 in differ in shape by 12 %.');
  });

  it('is told how many times as tall or wide it is beyond half', () => {
    expect(said(1.954, [73, 82.55])).toBe(
      'Fern has quite another shape than its box of 8.5 × 3.25 in: about 3 times as tall for its width.',
    );
    expect(said(0.8, [215.9, 45.9])).toMatch(/about 1\.8 times as wide for its height\.$/);
  });
});
