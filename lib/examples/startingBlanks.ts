import { typicalsOf } from '@/lib/drafts/typicalsOf';
import { roundDecimal } from '@/shared/decimal';
import { type Blank, textileKinds } from '@/shared/schemas/blank';
import { untoldTraits } from '@/shared/schemas/blankTraits';
import type { Workshop } from '@/shared/schemas/workshop';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { mmFromInches } from '@/shared/units';
import { blankPatterns, chestPrint, type StartingBlankName } from './blankPatterns';

type Place = Pick<Workshop, 'currency' | 'units'>;

/** @returns what the starting blank is called where its sizes are named by these units. */
export function startingBlankLabel(name: StartingBlankName, { units }: Pick<Workshop, 'units'>): string {
  const pattern = blankPatterns[name];
  return units.length === 'in' ? pattern.name : (pattern.metricName ?? pattern.name);
}

/**
 * A blank to begin with; every figure is typical, its colour white.
 *
 * @param day the day its figures are set, YYYY-MM-DD
 * @param place its money and units: where lengths are metric it has the sizes sold there
 */
export function startingBlank(name: StartingBlankName, day: string, place: Place): Blank {
  const { kind, substrate, sizes, places, traits } = blankPatterns[name];
  const typical = typicalsOf(day, place.currency);
  const { price, blankFault, finishMinutes } = blankTypicals[kind];
  const isInch = place.units.length === 'in';
  const isCloth = textileKinds.includes(kind);
  const inMm = ([width, height]: readonly [number, number]) =>
    isInch
      ? { widthMm: mmFromInches(width), heightMm: mmFromInches(height) }
      : { widthMm: width, heightMm: height };
  return {
    name: startingBlankLabel(name, place),
    kind,
    substrate,
    fibres: isCloth ? [{ fibre: 'polyester', share: 1 }] : [],
    colour: isCloth ? { name: 'White', L: 94, a: 0, b: 2 } : { name: 'White', L: 95, a: 0, b: 1 },
    coating: isCloth || kind === 'mat' ? 'cloth' : 'coated',
    maxTemperatureC: null,
    forChildren: null,
    suppliedBy: 'maker',
    traits: { ...untoldTraits, ...traits, ...(isCloth ? { dyed: false } : {}) },
    sizes: sizes.map((size) => {
      const [width, print] = isInch ? size.inches : size.mm;
      const chest = isInch ? chestPrint.inches : chestPrint.mm;
      return {
        name: isInch ? size.name : (size.metricName ?? size.name),
        price: typical(
          price.typical === null ? null : roundDecimal(price.typical * size.times, 2, 'halfUp'),
          'money/piece',
        ),
        widthMm: width === 0 ? null : inMm([width, 0]).widthMm,
        packSize: 1,
        wrap:
          size.wrapMm === undefined
            ? null
            : { circumferenceMm: size.wrapMm[0], handleGapMm: size.wrapMm[1], taperDegrees: 0 },
        maxPrints: places.map((position) => ({
          position,
          ...inMm(position.endsWith('Chest') ? chest : print),
        })),
      };
    }),
    blankFault: typical(blankFault.typical, 'share'),
    finishMinutes: typical(finishMinutes.typical, 'min'),
    leadWorkingDays: null,
  };
}
