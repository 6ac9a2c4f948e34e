import { typicalsOf } from '@/lib/drafts/typicalsOf';
import { roundDecimal } from '@/shared/decimal';
import type { Blank, Position } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { mmFromInches } from '@/shared/units';

/** Blanks to begin with, by a short name. */
export const startingBlankNames = ['shirt', 'performance', 'tote', 'mug', 'panel', 'mat'] as const;
type StartingBlankName = (typeof startingBlankNames)[number];

interface Pattern {
  readonly name: string;
  readonly kind: Blank['kind'];
  readonly substrate: Blank['substrate'];
  /** Name, price against the typical one of its kind, width, and the largest print, in inches. */
  readonly sizes: readonly (readonly [string, number, number, readonly [number, number]])[];
  readonly places: readonly Position[];
}

const badge: readonly [number, number] = [4.5, 4.5];
const shirtSizes: Pattern['sizes'] = [
  ['S', 1, 18, [9.5, 11]],
  ['M', 1, 20, [10, 12]],
  ['L', 1, 22, [10.5, 12.5]],
  ['XL', 1, 24, [11, 13]],
  ['2XL', 1.35, 26, [11, 13]],
  ['3XL', 1.55, 28, [11, 13]],
];

/* Sizes, largest prints and up-prices of large sizes: common practice, from memory. */
const patterns: Readonly<Record<StartingBlankName, Pattern>> = {
  shirt: {
    name: 'White shirt, 100 % polyester',
    kind: 'garment',
    substrate: 'polyesterShirt',
    sizes: shirtSizes,
    places: ['front', 'back', 'leftChest', 'rightChest'],
  },
  performance: {
    name: 'White performance shirt, 100 % polyester',
    kind: 'garment',
    substrate: 'performancePolyester',
    sizes: shirtSizes,
    places: ['front', 'back', 'leftChest', 'rightChest'],
  },
  tote: {
    name: 'White tote, 100 % polyester',
    kind: 'bag',
    substrate: 'polyesterTote',
    sizes: [['One size', 1, 15, [11, 11]]],
    places: ['front', 'back'],
  },
  mug: {
    name: 'White coated mug, 11 oz',
    kind: 'drinkware',
    substrate: 'ceramicMug',
    sizes: [['11 oz', 1, 0, [8.5, 3.6]]],
    places: ['wrap'],
  },
  panel: {
    name: 'White aluminium panel',
    kind: 'panel',
    substrate: 'aluminiumPanel',
    sizes: [
      ['5 × 7 in', 1, 5, [5, 7]],
      ['8 × 10 in', 1.6, 8, [8, 10]],
    ],
    places: ['face'],
  },
  mat: {
    name: 'Mouse mat, polyester face',
    kind: 'mat',
    substrate: 'foamMat',
    sizes: [['9 × 7.5 in', 1, 9, [9, 7.5]]],
    places: ['face'],
  },
};

/** @returns what the starting blank is called. */
export const startingBlankLabel = (name: StartingBlankName): string => patterns[name].name;

/**
 * A blank to begin with; every figure is typical, its colour white.
 *
 * @param day the day its figures are set, YYYY-MM-DD
 * @param workshop its money and units: metric lengths are rounded to half centimetres
 */
export function startingBlank(
  name: StartingBlankName,
  day: string,
  { currency, units }: Pick<Workshop, 'currency' | 'units'>,
): Blank {
  const { sizes, places, ...pattern } = patterns[name];
  const typical = typicalsOf(day, currency);
  const { price, blankFault, finishMinutes } = blankTypicals[pattern.kind];
  const isCloth = pattern.kind === 'garment' || pattern.kind === 'bag';
  const length = (inches: number) =>
    units.length === 'in' ? mmFromInches(inches) : Math.round(mmFromInches(inches) / 5) * 5;
  return {
    ...pattern,
    fibres: isCloth ? [{ fibre: 'polyester', share: 1 }] : [],
    colour: isCloth ? { name: 'White', L: 94, a: 0, b: 2 } : { name: 'White', L: 95, a: 0, b: 1 },
    coating: isCloth || pattern.kind === 'mat' ? 'cloth' : 'coated',
    maxTemperatureC: null,
    forChildren: null,
    suppliedBy: 'maker',
    sizes: sizes.map(([size, times, width, [printWidth, printHeight]]) => ({
      name: size,
      price: typical(
        price.typical === null ? null : roundDecimal(price.typical * times, 2, 'halfUp'),
        'money/piece',
      ),
      widthMm: width === 0 ? null : length(width),
      packSize: 1,
      wrap: null,
      onHand: 0,
      maxPrints: places.map((position) => {
        const [most, tall] = position.endsWith('Chest') ? badge : [printWidth, printHeight];
        return { position, widthMm: length(most), heightMm: length(tall) };
      }),
    })),
    blankFault: typical(blankFault.typical, 'share'),
    finishMinutes: typical(finishMinutes.typical, 'min'),
    leadWorkingDays: null,
  };
}
