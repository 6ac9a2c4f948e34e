import { describe, expect, it } from 'vitest';
import type { SheetsToPrint, SheetWaste } from '@/lib/exports/sheetsToPrint';
import { readSheets, written } from '@/tests/fixtures/readSheets';

const across = { xMm: 3, yMm: 289.5, widthMm: 200, heightMm: 4.5, isUpright: false };
const up = { xMm: 202.5, yMm: 3, widthMm: 4.5, heightMm: 200, isUpright: true };
const line = (name: string, ...words: readonly string[]) => ({ name, words });

const job = (waste: SheetWaste, count = 1): SheetsToPrint => ({
  title: 'Any',
  widthMm: 210,
  sheets: [{ count, heightMm: 297, pieces: [], waste }],
});
const bytesOf = async (sheets: SheetsToPrint) => (await written(sheets, new Map())).bytes;
const near = (found: readonly number[] | undefined, wanted: readonly number[]) => {
  for (const [at, value] of wanted.entries()) expect(found?.[at]).toBeCloseTo(value, 1);
};

/* The letters of the test are 1.5 mm wide each; between two words there are 4 mm. */
describe('a line in the waste', () => {
  it('stands in its strip, its words one after another', async () => {
    const { pictures, painted } = await readSheets(
      await bytesOf(job({ strip: across, lines: [line('ten digits', 'Sheet 1')], marks: [] })),
    );
    expect(painted).toEqual([]);
    expect(pictures).toHaveLength(2);
    for (const { clip } of pictures) near(clip, [3, 289.5, 200, 4.5]);
    // From the left border, and 10 × 1.5 + 4 mm further.
    near(pictures[0]?.bottomLeft.slice(0, 1), [3]);
    near(pictures[1]?.bottomLeft.slice(0, 1), [22]);
  });

  it('runs from the bottom to the top where its strip lies along a side', async () => {
    const { pictures } = await readSheets(
      await bytesOf(job({ strip: up, lines: [line('ten digits', 'Sheet 1')], marks: [] })),
    );
    const [name, sheet] = pictures;
    near(name?.clip, [202.5, 3, 4.5, 200]);
    // Begins 3 mm above the lower edge of the page, and its letters have their heads to the left.
    near(name?.bottomLeft.slice(1), [203]);
    near(sheet?.bottomLeft.slice(1), [184]);
    expect(name?.topLeft[0] ?? 0).toBeLessThan(name?.bottomLeft[0] ?? 0);
  });

  it('shortens the name and nothing else where there is no room', async () => {
    const long = 'a'.repeat(300);
    const { pictures } = await readSheets(
      await bytesOf(job({ strip: across, lines: [line(long, 'b'.repeat(40))], marks: [] })),
    );
    // 200 − 40 × 1.5 − 4 = 136 mm: 90 letters with the dots, 135 mm.
    near(pictures[1]?.bottomLeft.slice(0, 1), [3 + 135 + 4]);
    const only = await readSheets(
      await bytesOf(job({ strip: across, lines: [line(long, 'b'.repeat(200))], marks: [] })),
    );
    // 300 mm of words are set to 200 mm, without the name.
    expect(only.pictures).toHaveLength(1);
    near(only.pictures[0]?.bottomLeft.slice(0, 1), [3]);
    // To one pixel of its 100 an inch.
    expect(Math.abs((only.pictures[0]?.topRight[0] ?? 0) - 203)).toBeLessThan(0.254);
  });

  it('says on each page which it is, and has what is the same on all of them in the file once', async () => {
    const lines = ['Sheet 1', 'Sheet 2', 'Sheet 33'].map((words) => line('Club', words, 'Cut it off'));
    const bytes = await bytesOf(job({ strip: across, lines, marks: [] }, 3));
    const text = new TextDecoder('latin1').decode(bytes);
    expect(text.match(/\/Subtype \/Image/g)).toHaveLength(2 + 3);
    const last = await readSheets(bytes, 3);
    // 4 + 8 + 10 letters: the third begins where the first two and two gaps end.
    near(last.pictures[2]?.bottomLeft.slice(0, 1), [3 + 12 * 1.5 + 8]);
  });

  it('paints the marks of cuts in black where they are', async () => {
    const mark = { xMm: 5, yMm: 157.875, widthMm: 4, heightMm: 0.25 };
    const { painted, pictures } = await readSheets(
      await bytesOf(job({ strip: null, lines: [], marks: [mark] })),
    );
    expect(pictures).toEqual([]);
    expect(painted).toHaveLength(1);
    near(painted[0], [5, 157.875, 4, 0.25]);
  });
});
