import type { Blank, Position } from '@/shared/schemas/blank';
import { untoldTraits } from '@/shared/schemas/blankTraits';
import { mmFromInches } from '@/shared/units';
import { ratesOf } from './exampleRates';

/** Invented blanks: a white shirt in six sizes and a coated mug. */
export function exampleBlanks(day: string): { readonly 'white-shirt': Blank; readonly 'white-mug': Blank } {
  const rate = ratesOf(day);
  const shirtSize = (name: string, price: number, width: number, print: readonly [number, number]) => ({
    name,
    price: rate(price, 'money/piece'),
    widthMm: mmFromInches(width),
    packSize: 1,
    wrap: null,
    maxPrints: [
      largest('front', print),
      largest('back', print),
      largest('leftChest', [4.5, 4.5]),
      largest('rightChest', [4.5, 4.5]),
    ],
  });
  return {
    'white-shirt': {
      name: 'White shirt, 100 % polyester',
      kind: 'garment',
      substrate: 'polyesterShirt',
      fibres: [{ fibre: 'polyester', share: 1 }],
      colour: { name: 'White', L: 94, a: 0, b: 2 },
      coating: 'cloth',
      maxTemperatureC: null,
      forChildren: false,
      suppliedBy: 'maker',
      traits: { ...untoldTraits, finish: 'plain', dyed: false, childRisks: [] },
      sizes: [
        shirtSize('S', 4.6, 18, [9.5, 11]),
        shirtSize('M', 4.6, 20, [10, 12]),
        shirtSize('L', 4.6, 22, [10.5, 12.5]),
        shirtSize('XL', 4.6, 24, [11, 13]),
        shirtSize('2XL', 6.1, 26, [11, 13]),
        shirtSize('3XL', 7.1, 28, [11, 13]),
      ],
      blankFault: rate(0.01, 'share'),
      finishMinutes: rate(1.2, 'min'),
      leadWorkingDays: 4,
    },
    'white-mug': {
      name: 'White coated mug, 11 oz',
      kind: 'drinkware',
      substrate: 'ceramicMug',
      fibres: [],
      colour: { name: 'White', L: 95, a: 0, b: 1 },
      coating: 'coated',
      maxTemperatureC: null,
      forChildren: false,
      suppliedBy: 'maker',
      traits: { ...untoldTraits, coatingHardness: 'hard', childRisks: [] },
      sizes: [
        {
          name: '11 oz',
          price: rate(2.1, 'money/piece'),
          widthMm: null,
          packSize: 1,
          wrap: {
            circumferenceMm: mmFromInches(10.2),
            handleGapMm: mmFromInches(1.5),
            taperDegrees: 0,
          },
          maxPrints: [largest('wrap', [8.5, 3.6])],
        },
      ],
      blankFault: rate(0.015, 'share'),
      finishMinutes: rate(1.5, 'min'),
      leadWorkingDays: 4,
    },
  };
}

const largest = (position: Position, [width, height]: readonly [number, number]) => ({
  position,
  widthMm: mmFromInches(width),
  heightMm: mmFromInches(height),
});
