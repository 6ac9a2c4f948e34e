import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PieceToPrint, SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { readSheets, written as writtenSheets } from '@/tests/fixtures/readSheets';

const png = async (width: number, height: number) =>
  new Uint8Array(
    await sharp({ create: { width, height, channels: 3, background: '#c33' } })
      .png()
      .toBuffer(),
  );

const piece = (changes: Partial<PieceToPrint>): PieceToPrint => ({
  xMm: 10,
  yMm: 20,
  widthMm: 88.9,
  heightMm: 63.5,
  turned: false,
  picture: 'art',
  flipped: true,
  fit: 'inside',
  shown: null,
  ...changes,
});

const sheets = (pieces: readonly PieceToPrint[], changes: Partial<SheetsToPrint> = {}): SheetsToPrint => ({
  title: 'Club shirts',
  widthMm: 215.9,
  sheets: [{ count: 1, heightMm: 279.4, pieces }],
  ...changes,
});

const pictures = png(1400, 1000).then((bytes) => new Map([['art', bytes]]));

const near = (found: readonly number[] | undefined, wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  for (const [index, value] of wanted.entries()) {
    expect(Math.abs((found?.[index] ?? Number.NaN) - value)).toBeLessThan(0.01);
  }
};

const written = async (job: SheetsToPrint) => readSheets((await writtenSheets(job, await pictures)).bytes);

describe('sheets to print', () => {
  it('have pages as large as the paper and ask for no scaling', async () => {
    const { pages, page, preferences } = await written(
      sheets([piece({})], {
        sheets: [
          { count: 1, heightMm: 279.4, pieces: [piece({})] },
          { count: 1, heightMm: 100, pieces: [] },
        ],
      }),
    );
    expect(pages).toBe(2);
    near(page, [215.9, 279.4]);
    expect(preferences).toMatchObject({ PrintScaling: 'None' });
  });

  it('are as long as their prints where they are cut off a roll', async () => {
    const { page, pictures } = await written(
      sheets([], { widthMm: 609.6, sheets: [{ count: 1, heightMm: 628.65, pieces: [piece({ yMm: 500 })] }] }),
    );
    near(page, [609.6, 628.65]);
    near(pictures[0]?.topRight, [10, 500]);
  });

  it('lay a picture of the box’s shape over the whole box, flipped, with every pixel of its file', async () => {
    const { pictures } = await written(sheets([piece({})]));
    const [one] = pictures;
    // Flipped: the picture's left edge lies at the right.
    near(one?.topLeft, [98.9, 20]);
    near(one?.topRight, [10, 20]);
    near(one?.bottomLeft, [98.9, 83.5]);
    expect(one?.pixels).toEqual([1400, 1000]);
  });

  it('leave a picture that is not to be flipped as it is', async () => {
    const { pictures } = await written(sheets([piece({ flipped: false })]));
    near(pictures[0]?.topLeft, [10, 20]);
    near(pictures[0]?.topRight, [98.9, 20]);
  });

  it('turn a piece a quarter to the right', async () => {
    const turned = { turned: true, widthMm: 63.5, heightMm: 88.9 };
    const plain = await written(sheets([piece({ ...turned, flipped: false })]));
    near(plain.pictures[0]?.topLeft, [73.5, 20]);
    near(plain.pictures[0]?.topRight, [73.5, 108.9]);
    const flipped = await written(sheets([piece({ ...turned, flipped: true })]));
    near(flipped.pictures[0]?.topLeft, [73.5, 108.9]);
    near(flipped.pictures[0]?.topRight, [73.5, 20]);
  });

  it('lay the part of a picture that is left of trimming over its box, and its clear edges around it', async () => {
    // 700 × 800 of 1400 × 1000 pixels in 88.9 × 63.5 mm: 63.5 high, 55.5625 wide, 16.66875 bare on either side.
    const shown = { x: 0.25, y: 0.1, width: 0.5, height: 0.8 };
    const { pictures } = await written(sheets([piece({ flipped: false, shown })]));
    // The whole file is 111.125 × 79.375 mm then, a quarter of it to the left and a tenth above.
    near(pictures[0]?.topLeft, [10 + 16.66875 - 27.78125, 20 - 7.9375]);
    near(pictures[0]?.topRight, [10 + 16.66875 - 27.78125 + 111.125, 20 - 7.9375]);
    near(pictures[0]?.bottomLeft, [10 + 16.66875 - 27.78125, 20 - 7.9375 + 79.375]);
    const flipped = await written(sheets([piece({ flipped: true, shown })]));
    near(flipped.pictures[0]?.topRight, [10 + 88.9 - (16.66875 - 27.78125 + 111.125), 20 - 7.9375]);
  });

  it('keep the shape of a picture: inside leaves bare strips, fill runs over and is cut, stretch takes the box', async () => {
    const box = { widthMm: 80, heightMm: 80, flipped: false };
    const of = async (fit: PieceToPrint['fit']) =>
      (await written(sheets([piece({ ...box, fit })]))).pictures[0];
    // 1400 × 1000 pixels in 80 mm: 57.14 mm high, or 112 mm wide.
    const inside = await of('inside');
    near(inside?.topLeft, [10, 20 + (80 - 80 / 1.4) / 2]);
    near(inside?.topRight, [90, 20 + (80 - 80 / 1.4) / 2]);
    const fill = await of('fill');
    near(fill?.topLeft, [10 - 16, 20]);
    near(fill?.bottomLeft, [10 - 16, 100]);
    near((await of('stretch'))?.bottomLeft, [10, 100]);
  });

  it('leave the place of a print without a kept file empty', async () => {
    const { pictures, text } = await written(sheets([piece({ picture: null })]));
    expect(pictures).toEqual([]);
    expect(text).toEqual([]);
  });

  it('hold a picture once, however many pieces and pages use it, and a page for every copy', async () => {
    const job = sheets([], {
      sheets: [
        { count: 3, heightMm: 279.4, pieces: [piece({}), piece({ yMm: 120 })] },
        { count: 1, heightMm: 279.4, pieces: [piece({})] },
      ],
    });
    const { bytes } = await writtenSheets(job, await pictures);
    expect((await readSheets(bytes)).pages).toBe(4);
    expect((await readSheets(bytes, 3)).pictures).toHaveLength(2);
    expect((await readSheets(bytes, 4)).pictures).toHaveLength(1);
    expect(
      Buffer.from(bytes)
        .toString('latin1')
        .match(/\/Subtype \/Image/g),
    ).toHaveLength(1);
  });

  it('name a picture that cannot be read and leave its place empty, and print the others', async () => {
    const job = sheets([piece({}), piece({ yMm: 120, picture: 'gone' })]);
    const { bytes, lost } = await writtenSheets(job, await pictures);
    expect(lost).toEqual(['gone']);
    expect((await readSheets(bytes)).pictures).toHaveLength(1);
  });

  it('bear their title in any script', async () => {
    const { metadata } = await written(sheets([piece({})], { title: 'Löwe (Ж) 漢 \\' }));
    expect(metadata.info).toMatchObject({ Title: 'Löwe (Ж) 漢 \\', Creator: 'Pressminute' });
  });

  it('give the same file for the same sheets', async () => {
    const job = sheets([piece({})]);
    const files = [await writtenSheets(job, await pictures), await writtenSheets(job, await pictures)];
    expect(files[0]?.bytes).toEqual(files[1]?.bytes);
  });
});
