import { PDFDocument } from '@cantoo/pdf-lib';
import { expect, it, vi } from 'vitest';
import type { EmbeddedPicture } from '@/lib/embedding/embeddedPicture';
import { placeDrawing } from '@/lib/papers/draw/outlines';
import { placeMeasures } from '@/lib/papers/draw/placeMeasures';
import { placePicture } from '@/lib/papers/draw/placePicture';
import type { DrawnPrint } from '@/lib/papers/paper';

/* Lengths by hand: a shirt is 490 mm across its body and 700 mm high, its badge 110 mm from the middle. */

const badge: DrawnPrint = {
  name: 'Club crest',
  size: '3.5 × 3.5 in',
  position: 'leftChest',
  widthMm: 88.9,
  heightMm: 88.9,
  dropMm: 63.5,
  picture: null,
};

/** At 0.1 points a millimetre the body reaches 24.5 points to each side and its hem lies at 70. */
const measured = (print: DrawnPrint, wide: number) => {
  const drawing = { shape: 'front', caption: '', prints: [print] } as const;
  return placeMeasures(() => wide, drawing, placeDrawing(drawing), { scale: 0.1, wide: 80 });
};

it('keeps the figure of a badge within the sides of its shirt', () => {
  const [only] = measured(badge, 36);
  expect(only?.box.right).toBeLessThan(24.5);
  expect(only?.box.left).toBeGreaterThan(-24.5);
  expect(only?.box.low).toBeLessThan(70);
});

it.each([
  ['is wider than the body', badge, 52],
  ['would cross the hem', { ...badge, position: 'middle', heightMm: 500, dropMm: 20 } as const, 20],
  ['is of a sleeve', { ...badge, position: 'leftSleeve' } as const, 20],
])('puts a figure beneath the drawing that %s', (_, print, wide) => {
  const [only] = measured(print, wide);
  expect(only?.box.top).toBeGreaterThan(70);
  expect(only?.box.right).toBeLessThanOrEqual(41);
});

it('cuts a picture of another shape to the box of its print', async () => {
  // Twice as wide as high: over a box of 30 points each way it is 60 wide, 15 beyond each side.
  const picture: EmbeddedPicture = {
    stored: { width: 2, height: 1 },
    orientation: 1,
    bits: 8,
    colours: { kind: 'device', channels: 3 },
    packing: { kind: 'jpeg', isPlainRgb: false },
    clearColour: null,
    hasMask: false,
    note: null,
    write: async () => null,
  };
  const pdf = await PDFDocument.create();
  const placed = await placePicture(pdf, picture);
  const page = pdf.addPage();
  const push = vi.spyOn(page, 'pushOperators');
  placed?.draw(page, { x: 100, y: 200, width: 30, height: 30 });
  const drawn = push.mock.calls.flat().map(String);
  expect(drawn.slice(1, 5)).toEqual(['100 200 30 30 re', 'W', 'n', '60 0 0 30 85 200 cm']);
});
