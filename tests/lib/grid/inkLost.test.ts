import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { inkLost } from '@/lib/grid/inkLost';
import { club } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());

describe('inkLost', () => {
  it('is cleaning and a tenth of what lands in the prints: 4 mL and 2.83 mL of 28.27 mL', () => {
    expect(inkLost(sheet)).toBeCloseTo(4 + 2.827, 2);
    expect(wholeJob(sheet, 'inkMl') - inkLost(sheet)).toBeCloseTo(28.27, 1);
  });
});
