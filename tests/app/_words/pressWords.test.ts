import { describe, expect, it } from 'vitest';
import { noSpareWords } from '@/app/_words/press/pressWords';
import { sparesWords } from '@/app/_words/press/sparesWords';
import type { PressedSize } from '@/lib/pressing/foldPressings';

const size: PressedSize = {
  ...{ size: 'M', wanted: 9, take: 11, good: 0, seconds: 0, scrap: 0, scrapByFault: new Map() },
  ...{
    needed: 9,
    toGo: 9,
    sparesTaken: 0,
    spares: 2,
    sparesLeft: 2,
    isShared: false,
    short: 0,
    moreThanCame: 0,
    came: 11,
    ready: 9,
  },
};

describe('a size whose spares are gone', () => {
  it('lacks what was lost beyond its spares', () => {
    const lost = { ...size, scrap: 4, sparesTaken: 4, sparesLeft: -2, short: 2 };
    expect(sparesWords(lost)).toBe('2 short');
    expect(noSpareWords(lost)).toBe('M: 2 cannot be made, no blank is left.');
  });

  it('lacks no more than is to be made, however many are noted as lost', () => {
    const lost = { ...size, scrap: 60, sparesTaken: 60, sparesLeft: -58, short: 9 };
    expect(sparesWords(lost)).toBe('9 short');
    expect(noSpareWords(lost)).toBe('M: 9 cannot be made, no blank is left.');
  });

  it('lacks nothing where all came out good', () => {
    const done = { ...size, good: 9, toGo: 0, scrap: 3, sparesTaken: 3, sparesLeft: -1 };
    expect(sparesWords(done)).toBe('none');
    expect(noSpareWords(done)).toBeNull();
  });
});
