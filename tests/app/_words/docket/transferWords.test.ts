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
import { memoryOf, transferSize } from '@/lib/exports/transferSize';

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
    expect(sizeWords([{ name: 'Crest', picture }], formatter)).toBe('About 3 MB.');
    // 90 + 90 + 80 MB of file, 20 for the work, 90 for the picture at hand.
    const many = [90, 90, 80].map((mb) => ({ ...picture, bytes: mb * 1e6 }));
    expect(transferSize(many)).toEqual({ file: 260e6, memory: 370e6 });
    const kept = many.map((one, at) => ({ name: ['Crest', 'Logo', 'Dog'][at] ?? '', picture: one }));
    expect(sizeWords(kept, formatter)).toMatch(
      /^About 260 MB\..*370 MB.*computer, or save Crest at the size/,
    );
    expect(sizeWords([], formatter)).toBe('');
  });

  it('names what makes the file smaller by the kind of picture', () => {
    const sides = { width: 9000, height: 8000 };
    const words = (format: 'jpeg' | 'png' | 'webp') =>
      sizeWords([{ name: 'Crest', picture: { ...sides, format, bytes: 190e6 } }], formatter);
    // A JPEG is no smaller as a JPEG.
    expect(words('jpeg')).toContain(
      'or save Crest at the size it is printed (300 pixels an inch are plenty) and take it in again.',
    );
    expect(words('jpeg')).not.toContain('JPEG');
    expect(words('png')).toContain('or take in Crest as JPEG, about a tenth of the size.');
    expect(words('webp')).toContain('Crest as JPEG');
  });

  it('names the picture that takes most memory, which need not be the longest file', () => {
    const sides = { width: 9000, height: 8000 };
    // 2 × 60 MB for the photo; 72 million pixels at 1.5 + 4 bytes, 396 MB and 5 MB of file, for the other.
    const kept = [
      { name: 'Photo', picture: { ...sides, format: 'jpeg', bytes: 60e6 } },
      { name: 'Web', picture: { ...sides, format: 'webp', bytes: 5e6 } },
    ] as const;
    expect(memoryOf(kept[1].picture)).toBe(20e6 + 401e6);
    expect(sizeWords(kept, formatter)).toContain('take in Web as JPEG');
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
