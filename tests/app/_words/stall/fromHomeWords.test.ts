import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { fromHomeWords } from '@/app/_words/stall/fromHomeWords';
import { club } from '@/tests/fixtures/clubJob';

const formatter = formatterFor(club().workshop);

describe('pieces from home', () => {
  it('are told with what they cost, one and many', () => {
    expect(fromHomeWords(1, formatter)).toBe(
      '1 piece from home was written down before. Sold, it costs what it was still worth; unsold, it loses nothing more.',
    );
    expect(fromHomeWords(9, formatter)).toBe(
      '9 pieces from home were written down before. Sold, they cost what they were still worth; unsold, they lose nothing more.',
    );
  });

  it('are not told of where there are none', () => {
    expect(fromHomeWords(0, formatter)).toBeNull();
  });
});
