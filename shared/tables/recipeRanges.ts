import type { Substrate } from '@/shared/schemas/blank';

export const pressureOrder = ['light', 'lightMedium', 'medium', 'mediumFirm', 'firm'] as const;

/** Where to start with a substrate; the sheet of the blank's maker always wins, and all need a test. */
interface RecipeRange {
  readonly label: string;
  /** Lowest and highest starting temperature, °F as the trade writes it. */
  readonly fahrenheit: readonly [number, number];
  /** Shortest and longest dwell, seconds; of one turn where the piece is turned. */
  readonly dwellSeconds: readonly [number, number];
  readonly pressure: (typeof pressureOrder)[number];
  readonly source: string;
}

const practice = 'common practice';
const memory = 'common practice, from memory';

export const recipeRanges: Record<Substrate, RecipeRange> = {
  polyesterShirt: {
    label: 'polyester shirts',
    fahrenheit: [385, 400],
    dwellSeconds: [45, 60],
    pressure: 'lightMedium',
    source: practice,
  },
  performancePolyester: {
    label: 'performance polyester',
    fahrenheit: [375, 395],
    dwellSeconds: [30, 45],
    pressure: 'light',
    source: memory,
  },
  blend65: {
    label: '65/35 blends',
    fahrenheit: [370, 385],
    dwellSeconds: [45, 55],
    pressure: 'lightMedium',
    source: memory,
  },
  polyesterTote: {
    label: 'polyester totes and cushions',
    fahrenheit: [385, 400],
    dwellSeconds: [45, 60],
    pressure: 'medium',
    source: memory,
  },
  foamMat: {
    label: 'foam-backed mats',
    fahrenheit: [385, 400],
    dwellSeconds: [40, 60],
    pressure: 'lightMedium',
    source: memory,
  },
  aluminiumPanel: {
    label: 'coated aluminium panels',
    fahrenheit: [385, 400],
    dwellSeconds: [60, 120],
    pressure: 'medium',
    source: practice,
  },
  ceramicMug: {
    label: 'ceramic mugs',
    fahrenheit: [360, 400],
    dwellSeconds: [150, 300],
    pressure: 'mediumFirm',
    source: practice,
  },
  glassMug: {
    label: 'glass mugs',
    fahrenheit: [360, 400],
    // Only the upper end is in common use; the lower is that of ceramic mugs.
    dwellSeconds: [150, 480],
    pressure: 'medium',
    source: practice,
  },
  ceramicTile: {
    label: 'tiles and slates',
    fahrenheit: [400, 400],
    dwellSeconds: [240, 720],
    pressure: 'medium',
    source: practice,
  },
  steelTumblerOven: {
    label: 'steel tumblers in an oven',
    fahrenheit: [350, 375],
    dwellSeconds: [300, 480],
    pressure: 'firm',
    source: memory,
  },
  steelTumblerPress: {
    label: 'steel tumblers in a tumbler press',
    fahrenheit: [360, 390],
    dwellSeconds: [60, 100],
    pressure: 'firm',
    source: memory,
  },
  coatedHardboard: {
    label: 'coated hardboard and keyrings',
    fahrenheit: [385, 400],
    dwellSeconds: [60, 90],
    pressure: 'medium',
    source: memory,
  },
};
