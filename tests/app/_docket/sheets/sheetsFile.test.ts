import { describe, expect, it } from 'vitest';
import { sheetsFile } from '@/app/_docket/sheets/sheetsFile';
import { wasteOf } from '@/app/_docket/sheets/wasteOf';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith } from '@/tests/fixtures/clubJob';
import { laidOut } from '@/tests/fixtures/costed';

const input = clubWith({ 'artwork:hill-path.picture': aPicture(), 'artwork:club-crest.mirrored': true });
const { sheets } = plannedSheets(laidOut(input));

describe('the file of sheets', () => {
  const [paper] = input.workshop.sheets;
  if (paper === undefined) throw new Error('the example has no sheet');
  const of = (pages: 'every' | 'oneOfEach') => sheetsFile({ input, paper, sheets, pages, withLine: false });

  it('has a page for every sheet, or one of each kind', () => {
    expect(of('every').sheets.reduce((sum, { count }) => sum + count, 0)).toBe(47);
    expect(of('oneOfEach').sheets.map(({ count }) => count)).toEqual([1, 1, 1]);
    expect(of('oneOfEach').sheets.map(({ pieces }) => pieces.length)).toEqual([1, 4, 1]);
  });

  it('flips what the job sends mirrored, and gives a print without a file no picture', () => {
    const [back, badges] = of('oneOfEach').sheets;
    expect(back?.pieces[0]).toMatchObject({ picture: 'hill-path', flipped: true });
    expect(badges?.pieces[0]).toMatchObject({ picture: null, flipped: true });
    expect(of('every').widthMm).toBe(paper.widthMm);
    expect(back?.heightMm).toBe(paper.heightMm);
  });

  it('has a line on each page that has room for one, with its own number, and none unless it is asked for', () => {
    const room = wasteOf(input, paper, sheets).map(({ strip }) => strip !== null);
    expect(room).toContain(true);
    const { sheets: every } = sheetsFile({ input, paper, sheets, pages: 'every', withLine: true });
    expect(every.map(({ waste }) => waste !== undefined)).toEqual(room);
    let first = 1;
    for (const { count, waste } of every) {
      const words = Array.from({ length: count }, (_, at) => `Sheet ${first + at} of 47`);
      if (waste !== undefined) expect(waste.lines.map((line) => line.words[0])).toEqual(words);
      first += count;
    }
    const one = sheetsFile({ input, paper, sheets, pages: 'oneOfEach', withLine: true });
    for (const [at, { waste }] of one.sheets.entries()) {
      const name = input.job.name;
      const words = [`Print ${sheets[at]?.count} x`, 'Cut this strip off before pressing'];
      if (waste !== undefined) expect(waste.lines).toEqual([{ name, words }]);
    }
    expect(of('every').sheets.every(({ waste }) => waste === undefined)).toBe(true);
  });
});
