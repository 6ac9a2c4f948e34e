import { describe, expect, it } from 'vitest';
import { wasteLineWords, wasteRoomWords } from '@/app/_words/docket/wasteWords';
import { formatterFor } from '@/app/_words/formatter';

const formatter = formatterFor({
  locale: 'en',
  currency: 'USD',
  units: { length: 'mm', temperature: 'C', pressure: 'kPa', volume: 'mL', distance: 'km' },
});
const words = (changes: Partial<Parameters<typeof wasteRoomWords>[0]>) =>
  wasteRoomWords(
    { pages: 47, withLine: 37, cuts: 0, markedCuts: 0, wideMm: 10.5, longMm: 110, ...changes },
    formatter,
  );

describe('what is said of a line in the waste', () => {
  it('counts the pages that get one and those that get none, and says to cut it off', () => {
    expect(words({})).toBe(
      '37 of 47 pages have room for it at an edge; the other 10 get none. Cut it off before pressing, or its words end on the cloth.',
    );
    expect(words({ pages: 2, withLine: 1 })).toMatch(
      /^1 of 2 pages has room for it at an edge; the other one gets none\. Cut it off/,
    );
    expect(words({ withLine: 47 })).toMatch(/^Every page has room for it at an edge\. Cut it off/);
    expect(words({ pages: 1, withLine: 1 })).toMatch(/^The page has room/);
  });

  it('says what room is missing where no page has any, and of no words to cut off', () => {
    expect(words({ withLine: 0 })).toBe(
      'No page has room for it: it needs 10.5 mm between the art and the printer’s border, 110 mm long.',
    );
  });

  it('says which cuts of a roll are shown, and where the others are told', () => {
    expect(words({ cuts: 3, markedCuts: 3 })).toMatch(
      /Strokes at the edges show where to cut the roll: trim them off too\.$/,
    );
    expect(words({ cuts: 3, markedCuts: 2 })).toMatch(
      /Strokes at the edges show 2 of 3 cuts: trim them off too\. The cover page tells every cut\.$/,
    );
    expect(words({ cuts: 3 })).toMatch(
      /No edge has room for marks of the cuts: the cover page tells them\.$/,
    );
  });

  it('numbers pages as the cover page does', () => {
    expect(wasteLineWords.sheet(3, 47, false)).toBe('Sheet 3 of 47');
    expect(wasteLineWords.sheet(1, 2, true)).toBe('Print 1 of 2');
    expect(wasteLineWords.copies(37)).toBe('Print 37 x');
  });
});
