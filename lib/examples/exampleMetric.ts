import type { Position } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';

/* The figures of the example where lengths are metric: customary sizes near those in inches, all of them invented. */

type Pair = readonly [number, number];

interface MetricSize {
  readonly name?: string;
  readonly widthMm: number | null;
  readonly print: Pair;
  readonly wrap?: { readonly circumferenceMm: number; readonly handleGapMm: number };
}

/** Blanks by id, their sizes in the order of the example. */
export const blanksMm: Readonly<
  Record<string, { readonly name?: string; readonly sizes: readonly MetricSize[] } | undefined>
> = {
  'white-shirt': {
    sizes: [
      { widthMm: 460, print: [240, 280] },
      { widthMm: 510, print: [255, 305] },
      { widthMm: 560, print: [265, 320] },
      { widthMm: 610, print: [280, 330] },
      { widthMm: 660, print: [280, 330] },
      { widthMm: 710, print: [280, 330] },
    ],
  },
  'white-mug': {
    name: 'White coated mug, 330 mL',
    sizes: [
      {
        name: '330 mL',
        widthMm: null,
        print: [215, 90],
        wrap: { circumferenceMm: 259, handleGapMm: 38 },
      },
    ],
  },
};

/** Width and height of each picture's print: what A4 carries with room for tape on all sides. */
export const printsMm: Readonly<Record<string, Pair | undefined>> = {
  'hill-path': [190, 235],
  'club-crest': [90, 90],
  fern: [190, 225],
  lighthouse: [190, 240],
  otter: [190, 205],
  'star-map': [190, 190],
  'fern-strip': [195, 83],
  'otter-strip': [195, 83],
  'star-map-strip': [195, 83],
};

/** Top of a print below the collar. */
export const dropsMm: Partial<Record<Position, number>> = { back: 90, front: 65, leftChest: 65 };

/** Tax inside the prices, as in many places that write prices so. */
export const channelTax = 0.2;

type Prices = Pick<Line, 'askedPrice' | 'upCharges' | 'marketCeiling'>;

/** What is asked, with tax inside, by the line or else by its blank. */
export const linePrices: Readonly<Record<string, Prices | undefined>> = {
  shirts: {
    askedPrice: 23,
    upCharges: [
      { size: '2XL', amount: 2 },
      { size: '3XL', amount: 3 },
    ],
    marketCeiling: 26,
  },
  'white-shirt': {
    askedPrice: 32,
    upCharges: [
      { size: '2XL', amount: 3 },
      { size: '3XL', amount: 3 },
    ],
    marketCeiling: null,
  },
  'white-mug': { askedPrice: 18, upCharges: [], marketCeiling: null },
};
