import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PieceToPrint } from '@/lib/exports/sheetsToPrint';
import { cutMarks, wasteStrip } from '@/lib/exports/wasteStrip';
import { readSheets, written } from '@/tests/fixtures/readSheets';
import { cases } from '@/tests/tools/cases';

const WIDTH_MM = 330;
const HEIGHT_MM = 483;
/** A tenth of what can be seen, in mm. */
const NEAR_MM = 0.02;

const length = (most: number) => fc.double({ min: 3, max: most, noNaN: true });

const piecesWithin = (right: number, low: number) =>
  fc.array(
    fc.record<PieceToPrint>({
      xMm: length(right),
      yMm: length(low),
      widthMm: length(120),
      heightMm: length(150),
      turned: fc.boolean(),
      flipped: fc.boolean(),
      picture: fc.constantFrom('wide', 'tall', 'turned', 'clear', null, 'gone'),
      fit: fc.constantFrom('inside', 'fill', 'stretch'),
      shown: fc.constantFrom(null, { x: 0.1, y: 0.25, width: 0.5, height: 0.7 }),
    }),
    { maxLength: 12 },
  );
const pieces = piecesWithin(200, 300);
/** Some reach every edge of the page, some leave one free. */
const layout = fc
  .tuple(fc.constantFrom(120, 190, 207), fc.constantFrom(200, 315, 330))
  .chain(([right, low]) => piecesWithin(right, low));

const plain = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#c63' } });
const pictures = (async () =>
  new Map<string, Uint8Array>([
    ['wide', new Uint8Array(await plain(90, 40).jpeg().toBuffer())],
    ['tall', new Uint8Array(await plain(40, 90).png().toBuffer())],
    ['turned', new Uint8Array(await plain(90, 40).jpeg().withMetadata({ orientation: 6 }).toBuffer())],
    ['clear', new Uint8Array(await plain(50, 50).ensureAlpha(0.5).png().toBuffer())],
  ]))();

describe('pages of transfers', () => {
  it('hold pictures within the boxes of their pieces and nothing else', async () => {
    await fc.assert(
      fc.asyncProperty(pieces, async (drawn) => {
        const job = {
          title: 'Any',
          widthMm: WIDTH_MM,
          sheets: [{ count: 1, heightMm: HEIGHT_MM, pieces: drawn }],
        };
        const { bytes } = await written(job, await pictures);
        const read = await readSheets(bytes);
        expect(read.others).toEqual([]);
        expect(read.text).toEqual([]);
        const kept = drawn.filter(({ picture }) => picture !== null && picture !== 'gone');
        expect(read.pictures).toHaveLength(kept.length);
        for (const [at, { xMm, yMm, widthMm, heightMm, fit, shown }] of kept.entries()) {
          const found = read.pictures[at];
          const box = [xMm, yMm, widthMm, heightMm];
          expect(furthest(found?.clip ?? [], box)).toBeLessThan(NEAR_MM);
          // A whole picture that is pulled to its box lies on it with all four corners.
          if (fit === 'stretch' && shown === null) {
            expect(furthest(boxAround(found), box)).toBeLessThan(NEAR_MM);
          }
          // Whatever the fit, a whole picture has its middle in the middle of the box.
          if (shown === null) {
            const [x = 0, y = 0, width = 0, height = 0] = boxAround(found);
            const middle = [x + width / 2, y + height / 2];
            expect(furthest(middle, [xMm + widthMm / 2, yMm + heightMm / 2])).toBeLessThan(NEAR_MM);
          }
        }
      }),
      cases(60),
    );
  });

  it('have whatever else is asked for within the printer’s border and 6 mm from every piece', async () => {
    let lines = 0;
    let marked = 0;
    await fc.assert(
      fc.asyncProperty(
        layout,
        fc.constantFrom(0, 3, 6.35),
        fc.array(fc.integer({ min: 10, max: HEIGHT_MM - 10 }), { maxLength: 6 }),
        fc.string({ maxLength: 40, unit: 'grapheme' }),
        async (drawn, marginMm, cuts, name) => {
          const page = { widthMm: WIDTH_MM, heightMm: HEIGHT_MM, marginMm, pieces: drawn };
          const strip = wasteStrip(page);
          const marks = cutMarks(page, cuts, strip);
          const words = [{ name, words: ['Sheet 1 of 1', 'Cut this strip off before pressing'] }];
          const waste = { strip, lines: words, marks };
          const sheets = [{ count: 1, heightMm: HEIGHT_MM, pieces: drawn, waste }];
          const { bytes } = await written({ title: 'Any', widthMm: WIDTH_MM, sheets }, await pictures);
          const read = await readSheets(bytes);
          const art = drawn.filter(({ picture }) => picture !== null && picture !== 'gone').length;
          const beside = [...read.pictures.slice(art).map(({ clip }) => clip), ...read.painted];
          expect(read.text).toEqual([]);
          expect(read.pictures.length > art).toBe(strip !== null);
          expect(read.painted).toHaveLength(marks.length);
          lines += strip === null ? 0 : 1;
          marked += marks.length;
          for (const [x = 0, y = 0, width = 0, height = 0] of beside) {
            const edge = Math.min(x, y, WIDTH_MM - x - width, HEIGHT_MM - y - height);
            expect(edge).toBeGreaterThan(marginMm - NEAR_MM);
            for (const { xMm, yMm, widthMm, heightMm } of drawn) {
              const aside = Math.max(0, xMm - x - width, x - xMm - widthMm);
              const above = Math.max(0, yMm - y - height, y - yMm - heightMm);
              expect(Math.hypot(aside, above)).toBeGreaterThan(6 - NEAR_MM);
            }
          }
        },
      ),
      cases(60),
    );
    // Or nothing was looked at.
    expect(Math.min(lines, marked)).toBeGreaterThan(0);
  });
});

// Helpers

const furthest = (found: readonly number[], wanted: readonly number[]): number =>
  Math.max(...wanted.map((value, at) => Math.abs(value - (found[at] ?? Number.NaN))));

function boxAround(found: Awaited<ReturnType<typeof readSheets>>['pictures'][number] | undefined) {
  const corners = [found?.topLeft, found?.topRight, found?.bottomLeft];
  const xs = corners.map((corner) => corner?.[0] ?? Number.NaN);
  const ys = corners.map((corner) => corner?.[1] ?? Number.NaN);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return [x, y, Math.max(...xs) - x, Math.max(...ys) - y];
}
