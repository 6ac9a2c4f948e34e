import { describe, expect, it } from 'vitest';
import {
  copiesWords,
  everySheetName,
  oneOfEachName,
  sizeWords,
  tooLongWords,
  writtenWords,
} from '@/app/_words/docket/transferWords';
import { formatterFor } from '@/app/_words/formatter';
import { transferSize } from '@/lib/exports/transferSize';

const formatter = formatterFor({
  locale: 'en',
  currency: 'USD',
  units: { length: 'mm', temperature: 'C', pressure: 'kPa', volume: 'mL', distance: 'km' },
});

describe('the names of the two files', () => {
  it('tell them apart, and how often each page is printed', () => {
    expect(everySheetName('Club shirts', 47)).toBe('Club shirts, all 47 sheets.pdf');
    expect(everySheetName('Mugs', 1)).toBe('Mugs, 1 sheet.pdf');
    expect(oneOfEachName('Club shirts', [37, 1])).toBe('Club shirts, one of each, print 37 x + 1 x.pdf');
    expect(oneOfEachName('Club shirts', [9, 8, 7, 6])).toBe('Club shirts, one of each of 4.pdf');
  });

  it('are ones that file systems take, whatever the job is called', () => {
    expect(everySheetName('A/B: "C"\n<D>|?*', 2)).toBe('A B C D, all 2 sheets.pdf');
    expect(everySheetName('..', 2)).toBe('Sheets, all 2 sheets.pdf');
    const long = everySheetName('漢'.repeat(300), 1000);
    expect(new TextEncoder().encode(long).length).toBeLessThan(255);
  });
});

describe('what is said of the file to print', () => {
  it('is how often each page of one of each is printed', () => {
    expect(copiesWords([37, 2, 1], formatter)).toBe(
      'Of the file with one of each, print 37 copies of page 1, 2 of page 2 and 1 of page 3.',
    );
  });

  it('is its size, and the way out where a phone may not hold it', () => {
    const picture = { format: 'jpeg', bytes: 3_000_000, width: 4000, height: 3000 } as const;
    expect(sizeWords(transferSize([picture]), 'Crest', formatter)).toBe('About 3 MB.');
    // 90 + 90 + 80 MB of file, 20 for the work, 90 for the picture at hand.
    const many = [90, 90, 80].map((mb) => ({ ...picture, bytes: mb * 1e6 }));
    expect(transferSize(many)).toEqual({ file: 260e6, memory: 370e6 });
    expect(sizeWords(transferSize(many), 'Crest', formatter)).toMatch(
      /^About 260 MB\..*370 MB.*Crest as JPEG/,
    );
    expect(sizeWords(transferSize([]), '', formatter)).toBe('');
  });

  it('is where the printer ends, with the way out', () => {
    const facts = { printerName: 'Inkjet', longestPageMm: 1118, isRoll: true };
    const words = tooLongWords({ ...facts, pageMm: 2400 }, formatter);
    expect(words).toContain('2,400 mm long and Inkjet prints 1,118 mm at most');
    expect(words).toContain('in parts');
  });

  it('is what became of each picture', () => {
    const facts = {
      name: 'x.pdf',
      bytes: 1_250_000,
      lost: ['A', 'B'],
      otherSpace: ['C'],
      unreadable: [],
      converted: [],
    };
    expect(writtenWords(facts, formatter)).toBe(
      '“x.pdf” is written, 1.3 MB. A and B: the picture could not be read, so its place is empty. Take it in again. C: the colour profile is of another kind than the picture. It is taken as sRGB, and colours may differ.',
    );
  });
});
