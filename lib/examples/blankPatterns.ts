import type { Blank, Position } from '@/shared/schemas/blank';
import type { Traits } from '@/shared/schemas/blankTraits';

/** Blanks to begin with, by a short name. */
export const startingBlankNames = [
  'shirt',
  'performance',
  'mug',
  'tumbler',
  'panel',
  'tote',
  'cushion',
  'mat',
  'tile',
  'keyring',
] as const;
export type StartingBlankName = (typeof startingBlankNames)[number];

type Pair = readonly [number, number];

/** One size: lengths in inches, and what a maker in centimetres buys in its place. */
interface PatternSize {
  readonly name: string;
  /** As metric trade names it; absent where the name is the same. */
  readonly metricName?: string;
  /** Price against the typical one of its kind. */
  readonly times: number;
  /** Width of the piece and its largest print, in inches; width 0 where a piece is round. */
  readonly inches: readonly [width: number, print: Pair];
  readonly mm: readonly [width: number, print: Pair];
  /** Round the body and what the handle takes of it, mm. */
  readonly wrapMm?: Pair;
}

interface BlankPattern {
  readonly name: string;
  readonly metricName?: string;
  readonly kind: Blank['kind'];
  readonly substrate: Blank['substrate'];
  readonly sizes: readonly PatternSize[];
  readonly places: readonly Position[];
  /** What is known of it beyond its kind. */
  readonly traits?: Partial<Traits>;
}

const shirtSizes: BlankPattern['sizes'] = [
  { name: 'S', times: 1, inches: [18, [9.5, 11]], mm: [460, [240, 280]] },
  { name: 'M', times: 1, inches: [20, [10, 12]], mm: [510, [255, 305]] },
  { name: 'L', times: 1, inches: [22, [10.5, 12.5]], mm: [560, [265, 320]] },
  { name: 'XL', times: 1, inches: [24, [11, 13]], mm: [610, [280, 330]] },
  { name: '2XL', times: 1.35, inches: [26, [11, 13]], mm: [660, [280, 330]] },
  { name: '3XL', times: 1.55, inches: [28, [11, 13]], mm: [710, [280, 330]] },
];

const shirtPlaces: readonly Position[] = ['front', 'back', 'leftChest', 'rightChest'];

/** The largest print on a chest, in inches and in mm. */
export const chestPrint = { inches: [4.5, 4.5], mm: [115, 115] } as const;

/* Sizes, largest prints and up-prices of large sizes: common practice, from memory. */
export const blankPatterns: Readonly<Record<StartingBlankName, BlankPattern>> = {
  shirt: {
    name: 'White shirt, 100 % polyester',
    kind: 'garment',
    substrate: 'polyesterShirt',
    sizes: shirtSizes,
    places: shirtPlaces,
    traits: { finish: 'plain' },
  },
  performance: {
    name: 'White performance shirt, 100 % polyester',
    kind: 'garment',
    substrate: 'performancePolyester',
    sizes: shirtSizes,
    places: shirtPlaces,
    traits: { finish: 'performance' },
  },
  mug: {
    name: 'White coated mug, 11 oz',
    metricName: 'White coated mug, 330 mL',
    kind: 'drinkware',
    substrate: 'ceramicMug',
    sizes: [
      {
        name: '11 oz',
        metricName: '330 mL',
        times: 1,
        inches: [0, [8.5, 3.6]],
        mm: [0, [215, 90]],
        wrapMm: [259, 38],
      },
    ],
    places: ['wrap'],
  },
  tumbler: {
    name: 'White steel tumbler, 20 oz',
    metricName: 'White steel tumbler, 600 mL',
    kind: 'drinkware',
    substrate: 'steelTumblerPress',
    sizes: [
      { name: '20 oz', metricName: '600 mL', times: 2.5, inches: [0, [9.3, 8.2]], mm: [0, [236, 208]] },
    ],
    places: ['wrap'],
  },
  panel: {
    name: 'White aluminium panel',
    kind: 'panel',
    substrate: 'aluminiumPanel',
    sizes: [
      { name: '5 × 7 in', metricName: '13 × 18 cm', times: 1, inches: [5, [5, 7]], mm: [130, [130, 180]] },
      {
        name: '8 × 10 in',
        metricName: '20 × 25 cm',
        times: 1.6,
        inches: [8, [8, 10]],
        mm: [200, [200, 250]],
      },
    ],
    places: ['face'],
  },
  tote: {
    name: 'White tote, 100 % polyester',
    kind: 'bag',
    substrate: 'polyesterTote',
    sizes: [{ name: 'One size', times: 1, inches: [15, [11, 11]], mm: [380, [280, 280]] }],
    places: ['front', 'back'],
    traits: { finish: 'plain', layers: 'two' },
  },
  cushion: {
    name: 'White cushion cover, 100 % polyester',
    kind: 'cushion',
    substrate: 'polyesterTote',
    sizes: [
      {
        name: '16 × 16 in',
        metricName: '40 × 40 cm',
        times: 1,
        inches: [16, [14, 14]],
        mm: [400, [350, 350]],
      },
    ],
    places: ['front', 'back'],
    traits: { finish: 'plain', layers: 'two' },
  },
  mat: {
    name: 'Mouse mat, polyester face',
    kind: 'mat',
    substrate: 'foamMat',
    sizes: [
      {
        name: '9 × 7.5 in',
        metricName: '23 × 19 cm',
        times: 1,
        inches: [9, [9, 7.5]],
        mm: [230, [230, 190]],
      },
    ],
    places: ['face'],
  },
  tile: {
    name: 'White coated tile',
    kind: 'tile',
    substrate: 'ceramicTile',
    sizes: [
      { name: '6 × 6 in', metricName: '15 × 15 cm', times: 1, inches: [6, [6, 6]], mm: [150, [150, 150]] },
    ],
    places: ['face'],
  },
  keyring: {
    name: 'White hardboard keyring',
    kind: 'small',
    substrate: 'coatedHardboard',
    sizes: [{ name: '2 × 2 in', metricName: '5 × 5 cm', times: 1, inches: [2, [2, 2]], mm: [50, [50, 50]] }],
    places: ['face'],
  },
};
