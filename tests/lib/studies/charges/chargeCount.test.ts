import { describe, expect, it } from 'vitest';
import { chargeCount } from '@/lib/studies/charges/chargeCount';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

describe('how many charges there are around a job', () => {
  it.each([
    ['the worked example', club()],
    ['mugs for stock', mugs()],
    ['an order that is not brought', clubWith({ 'job.deliveryKm': null })],
  ])('is known before they are worked out, and is as many as there then are: %s', (_, input) => {
    // Rush stands beside the list of the others.
    expect(chargeCount(input.job)).toBe((chargesAnswer(input, grid)?.charges.length ?? 0) + 1);
  });
});
