import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { PieceToPrint } from '@/lib/exports/sheetsToPrint';
import { readSheets, written } from '@/tests/fixtures/readSheets';
import { cases } from '@/tests/tools/cases';

const WIDTH_MM = 330;
const HEIGHT_MM = 483;
/** A tenth of what can be seen, in mm. */
const NEAR_MM = 0.02;

const length = (most: number) => fc.double({ min: 3, max: most, noNaN: true });

const pieces = fc.array(
  fc.record<PieceToPrint>({
    xMm: length(200),
    yMm: length(300),
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
