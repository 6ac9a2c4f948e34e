import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { contentsWords } from '@/app/_words/store/contentsWords';
import { entryParts, entryWords } from '@/app/_words/store/entryWords';
import { lossWords } from '@/app/_words/store/lossWords';

const formatter = formatterFor({
  locale: 'en-US',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
  currency: 'USD',
});

describe('entryWords', () => {
  it.each([
    [{ approval: 1 }, 'one approval of a picture'],
    [{ stockCount: 1, stockMove: 3, stockTransfer: 1 }, 'five counts and moves of stock'],
    [{ stockMove: 1, stockTransfer: 1 }, 'two moves of stock'],
    [{ inkPrints: 2 }, 'two noted prints'],
    [
      { approval: 3, inkRefill: 1, issuing: 2 },
      'two papers that went out, one ink refill and three approvals of pictures',
    ],
    [{ stallTap: 312, issuing: 1 }, 'one paper that went out and 312 taps of a sales count'],
    [{ stallPlan: 1, dayClose: 2 }, 'one fixed plan and two closed stall days'],
    [{ runStandard: 1, pressing: 3 }, 'one run as it began and three pressed pieces'],
    [{ shopPrice: 1 }, 'one price agreed with a shop'],
    [{ shopStatement: 1, shopPayment: 2 }, 'three statements and payments of shops'],
    [{ later: 12 }, '12 other entries'],
    [{}, ''],
  ])('names entries by what they are: %j', (counts, words) => {
    expect(entryWords(counts)).toBe(words);
  });

  it('writes numbers as it is asked to', () => {
    expect(entryParts({ inkRefill: 2, inkPrints: 1 }, String)).toEqual(['3 ink refills and noted prints']);
  });
});

describe('what a copy holds', () => {
  it('names stall days and shops', () => {
    const holdings = { kinds: { stallDay: 1, shop: 2 }, papers: 0, entries: { stallTap: 1 }, files: 0 };
    expect(contentsWords(holdings, null, formatter)).toBe('1 stall day, 2 shops, 1 tap of a sales count');
  });

  it('names stock, ink and approvals, and counts no notes', () => {
    const holdings = { kinds: { job: 2 }, papers: 1, entries: { stockCount: 4, approval: 1 }, files: 3 };
    expect(contentsWords(holdings, null, formatter)).toBe(
      '2 jobs, 1 paper, 4 counts of stock, 1 approval of a picture, 3 picture files',
    );
  });
});

describe('lossWords', () => {
  const goes = [{ kind: 'job', name: 'Club shirts' }];
  it.each([
    [
      { goes, goesBack: [], uncounted: { issuing: 1, stockCount: 3 } },
      'It loses one job. One paper that went out and three counts of stock would no longer count.',
    ],
    [{ goes: [], goesBack: [], uncounted: { inkRefill: 1 } }, 'One ink refill would no longer count.'],
    [{ goes: [], goesBack: [], uncounted: {} }, 'It loses nothing.'],
  ])('says in sentences what would go and what would no longer count: %j', (loss, words) => {
    expect(lossWords(loss)).toBe(words);
  });
});
