import { describe, expect, it } from 'vitest';
import { draftDifferences } from '@/lib/copies/draftDifferences';

describe('draftDifferences', () => {
  it('tells each place in which two bodies differ, with what stands on either side', () => {
    expect(draftDifferences({ a: { b: 1, c: 2 }, d: 'x' }, { a: { b: 1, c: 3 }, e: true })).toEqual([
      { path: ['a', 'c'], mine: 2, theirs: 3 },
      { path: ['d'], mine: 'x', theirs: undefined },
      { path: ['e'], mine: undefined, theirs: true },
    ]);
  });

  it('is empty where both say the same in another order of keys', () => {
    expect(draftDifferences({ a: 1, b: [2] }, { b: [2], a: 1 })).toEqual([]);
  });

  it('holds items of a list against each other by what identifies them', () => {
    const mine = {
      sizes: [
        { size: 'M', n: 1 },
        { size: 'L', n: 2 },
      ],
    };
    const theirs = {
      sizes: [
        { size: 'L', n: 5 },
        { size: 'M', n: 1 },
        { size: 'XL', n: 3 },
      ],
    };
    expect(draftDifferences(mine, theirs)).toEqual([
      { path: ['sizes', 'L', 'n'], mine: 2, theirs: 5 },
      { path: ['sizes', 'XL'], mine: undefined, theirs: { size: 'XL', n: 3 } },
    ]);
  });

  it('tells a list once where only the order differs, and one without identities as a whole', () => {
    const [one, two] = [{ id: 'a' }, { id: 'b' }];
    expect(draftDifferences({ l: [one, two] }, { l: [two, one] })).toEqual([
      { path: ['l'], mine: [one, two], theirs: [two, one] },
    ]);
    expect(draftDifferences({ l: [1, 2] }, { l: [1, 3] })).toEqual([
      { path: ['l'], mine: [1, 2], theirs: [1, 3] },
    ]);
  });

  it('tells the figure where a figure bears its origin', () => {
    const mine = { price: { value: 4, origin: 'typed' } };
    expect(draftDifferences(mine, { price: { value: 5, origin: 'typical' } })).toEqual([
      { path: ['price'], mine: 4, theirs: 5 },
    ]);
    expect(draftDifferences(mine, { price: { value: 4, origin: 'typical' } })).toEqual([
      { path: ['price', 'origin'], mine: 'typed', theirs: 'typical' },
    ]);
  });
});
