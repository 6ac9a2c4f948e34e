import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PieceToPrint, SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { writeSheets } from '@/lib/exports/writeSheets';

/* Read back by a reader that shares nothing with the writer. Lengths in mm; 1 pt = 25.4 ÷ 72 mm. */
const MM = 25.4 / 72;

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

async function sheets(
  pieces: readonly PieceToPrint[],
  changes: Partial<SheetsToPrint> = {},
): Promise<SheetsToPrint> {
  return {
    title: 'Club shirts',
    widthMm: 215.9,
    sheets: [{ heightMm: 279.4, pieces }],
    pictures: new Map([['art', { kind: 'png', bytes: await png(1400, 1000) }]]),
    ...changes,
  };
}

type Six = readonly [number, number, number, number, number, number];

/** Corner of the unit square of every picture on the first page, in mm from the page's top left. */
async function readBack(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const { fnArray, argsArray } = await page.getOperatorList();
  const stack: Six[] = [];
  let now: Six = [1, 0, 0, 1, 0, 0];
  const pictures: { topLeft: number[]; topRight: number[]; bottomLeft: number[]; pixels: unknown[] }[] = [];
  fnArray.forEach((operator, index) => {
    const args = argsArray[index];
    if (operator === OPS.save) stack.push(now);
    else if (operator === OPS.restore) now = stack.pop() ?? now;
    else if (operator === OPS.transform) now = times([...args] as unknown as Six, now);
    else if (operator === OPS.paintImageXObject) {
      const at = (x: number, y: number) => [
        (now[0] * x + now[2] * y + now[4] - left) * MM,
        (top - (now[1] * x + now[3] * y + now[5])) * MM,
      ];
      pictures.push({
        topLeft: at(0, 1),
        topRight: at(1, 1),
        bottomLeft: at(0, 0),
        pixels: [args[1], args[2]],
      });
    }
  });
  const text = (await page.getTextContent()).items.flatMap((item) =>
    'str' in item && item.str !== '' ? [item] : [],
  );
  return {
    pages: document.numPages,
    page: [(right - left) * MM, (top - bottom) * MM],
    preferences: await document.getViewerPreferences(),
    pictures,
    text,
  };
}

const times = (a: Six, b: Six): Six => [
  a[0] * b[0] + a[1] * b[2],
  a[0] * b[1] + a[1] * b[3],
  a[2] * b[0] + a[3] * b[2],
  a[2] * b[1] + a[3] * b[3],
  a[4] * b[0] + a[5] * b[2] + b[4],
  a[4] * b[1] + a[5] * b[3] + b[5],
];

const near = (found: readonly number[] | undefined, wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  for (const [index, value] of wanted.entries()) {
    expect(Math.abs((found?.[index] ?? Number.NaN) - value)).toBeLessThan(0.01);
  }
};

const written = async (job: SheetsToPrint) => readBack(await writeSheets(job));

describe('sheets to print', () => {
  it('have pages as large as the paper and ask for no scaling', async () => {
    const { pages, page, preferences } = await written(
      await sheets([piece({})], {
        sheets: [
          { heightMm: 279.4, pieces: [piece({})] },
          { heightMm: 100, pieces: [] },
        ],
      }),
    );
    expect(pages).toBe(2);
    near(page, [215.9, 279.4]);
    expect(preferences).toMatchObject({ PrintScaling: 'None' });
  });

  it('are as long as their prints where they are cut off a roll', async () => {
    const { page, pictures } = await written(
      await sheets([], { widthMm: 609.6, sheets: [{ heightMm: 628.65, pieces: [piece({ yMm: 500 })] }] }),
    );
    near(page, [609.6, 628.65]);
    near(pictures[0]?.topRight, [10, 500]);
  });

  it('lay a picture of the box’s shape over the whole box, flipped, with every pixel of its file', async () => {
    const { pictures } = await written(await sheets([piece({})]));
    const [one] = pictures;
    // Flipped: the picture's left edge lies at the right.
    near(one?.topLeft, [98.9, 20]);
    near(one?.topRight, [10, 20]);
    near(one?.bottomLeft, [98.9, 83.5]);
    expect(one?.pixels).toEqual([1400, 1000]);
  });

  it('leave a picture that is not to be flipped as it is', async () => {
    const { pictures } = await written(await sheets([piece({ flipped: false })]));
    near(pictures[0]?.topLeft, [10, 20]);
    near(pictures[0]?.topRight, [98.9, 20]);
  });

  it('turn a piece a quarter to the right', async () => {
    const turned = { turned: true, widthMm: 63.5, heightMm: 88.9 };
    const plain = await written(await sheets([piece({ ...turned, flipped: false })]));
    near(plain.pictures[0]?.topLeft, [73.5, 20]);
    near(plain.pictures[0]?.topRight, [73.5, 108.9]);
    const flipped = await written(await sheets([piece({ ...turned, flipped: true })]));
    near(flipped.pictures[0]?.topLeft, [73.5, 108.9]);
    near(flipped.pictures[0]?.topRight, [73.5, 20]);
  });

  it('lay the part of a picture that is left of trimming over its box, and its clear edges around it', async () => {
    // 700 × 800 of 1400 × 1000 pixels in 88.9 × 63.5 mm: 63.5 high, 55.5625 wide, 16.66875 bare on either side.
    const shown = { x: 0.25, y: 0.1, width: 0.5, height: 0.8 };
    const { pictures } = await written(await sheets([piece({ flipped: false, shown })]));
    // The whole file is 111.125 × 79.375 mm then, a quarter of it to the left and a tenth above.
    near(pictures[0]?.topLeft, [10 + 16.66875 - 27.78125, 20 - 7.9375]);
    near(pictures[0]?.topRight, [10 + 16.66875 - 27.78125 + 111.125, 20 - 7.9375]);
    near(pictures[0]?.bottomLeft, [10 + 16.66875 - 27.78125, 20 - 7.9375 + 79.375]);
    const flipped = await written(await sheets([piece({ flipped: true, shown })]));
    near(flipped.pictures[0]?.topRight, [10 + 88.9 - (16.66875 - 27.78125 + 111.125), 20 - 7.9375]);
  });

  it('keep the shape of a picture: inside leaves bare strips, fill runs over and is cut, stretch takes the box', async () => {
    const box = { widthMm: 80, heightMm: 80, flipped: false };
    const of = async (fit: PieceToPrint['fit']) =>
      (await written(await sheets([piece({ ...box, fit })]))).pictures[0];
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
    const { pictures, text } = await written(await sheets([piece({ picture: null })]));
    expect(pictures).toEqual([]);
    expect(text).toEqual([]);
  });

  it('embed a JPEG as it is', async () => {
    const jpeg = new Uint8Array(
      await sharp({ create: { width: 700, height: 500, channels: 3, background: '#36c' } })
        .jpeg()
        .toBuffer(),
    );
    const job = await sheets([piece({})], { pictures: new Map([['art', { kind: 'jpeg', bytes: jpeg }]]) });
    const bytes = await writeSheets(job);
    expect((await readBack(bytes)).pictures[0]?.pixels).toEqual([700, 500]);
    expect(Buffer.from(bytes).includes(Buffer.from(jpeg))).toBe(true);
  });

  it('give the same file for the same sheets', async () => {
    const job = await sheets([piece({})]);
    expect(await writeSheets(job)).toEqual(await writeSheets(job));
  });
});
