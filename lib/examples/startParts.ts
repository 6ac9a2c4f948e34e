import { newParts } from '@/lib/drafts/newParts';
import { typicalsOf } from '@/lib/drafts/typicalsOf';
import type { Packaging, Press, Sheet } from '@/shared/schemas/workshop';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { otherTypicals } from '@/shared/tables/typicalRates';
import { mmFromInches } from '@/shared/units';
import { pressKindOf, type StartChoices, type StartPaper, type StartPress } from './startChoices';

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What a printer of the wide sheet takes; where lengths are metric it is called A3+ (13 × 19 in all the same). */
const wide = sheetSizes.superB;
/** From memory: between 0.35 and 0.90 a sheet. */
const WIDE_SHEET_PRICE = 0.6;
/** From memory: prices of mug boxes go from 0.45 to 1.20. */
const MUG_BOX_PRICE = 0.6;

/** @returns the platen of a press that is offered; null where its kind has none. */
export function platenOf(
  press: StartPress,
  { region, platen }: Pick<StartChoices, 'region' | 'platen'>,
): Size | null {
  const isInch = region.units.length === 'in';
  const size = (width: number, height: number, inMm: readonly [number, number]): Size =>
    isInch
      ? { widthMm: mmFromInches(width), heightMm: mmFromInches(height) }
      : { widthMm: inMm[0], heightMm: inMm[1] };
  switch (press) {
    case 'flat':
      return size(15, 15, [380, 380]);
    case 'large':
      return size(16, 20, [400, 500]);
    case 'other':
      return platen ?? size(9, 12, [230, 300]);
    case 'mug':
    case 'tumbler':
    case 'oven':
      return null;
    default:
      return press satisfies never;
  }
}

/** @returns the width and the height of a paper that is offered; of a roll its width and its longest print. */
export function paperSizeOf(
  paper: StartPaper,
  { region, rollWidthMm }: Pick<StartChoices, 'region' | 'rollWidthMm'>,
): Size {
  const isInch = region.units.length === 'in';
  switch (paper) {
    case 'letter':
      return sheetSizes.letter;
    case 'a4':
      return sheetSizes.a4;
    case 'a3':
      return sheetSizes.a3;
    case 'wide':
      return isInch ? wide : { widthMm: 329, heightMm: 483 };
    case 'roll':
      return {
        widthMm: rollWidthMm ?? (isInch ? mmFromInches(24) : 610),
        heightMm: isInch ? mmFromInches(40) : 1000,
      };
    default:
      return paper satisfies never;
  }
}

const pressNames: Readonly<Record<StartPress, string>> = {
  flat: 'Flat press',
  large: 'Large flat press',
  other: 'Flat press',
  mug: 'Mug press',
  tumbler: 'Tumbler press',
  oven: 'Oven',
};

/** @returns the press that was chosen; every figure is typical. */
export function startPress(press: StartPress, id: string, day: string, choices: StartChoices): Press {
  const made = newParts(day, choices.region).press(id, pressNames[press], pressKindOf(press));
  const platen = platenOf(press, choices);
  return { ...made, platen: platen && { widthMm: platen.widthMm, heightMm: platen.heightMm } };
}

/** @returns the paper that was chosen; its price is typical. */
export function startSheet(paper: StartPaper, id: string, day: string, choices: StartChoices): Sheet {
  const { region } = choices;
  const typical = typicalsOf(day, region.currency);
  const { widthMm, heightMm } = paperSizeOf(paper, choices);
  const names: Readonly<Record<StartPaper, string>> = {
    letter: 'Letter sheet',
    a4: 'A4 sheet',
    a3: 'A3 sheet',
    wide: region.units.length === 'in' ? 'Wide sheet 13 × 19' : 'A3+ sheet',
    roll: 'Roll of transfer paper',
  };
  const sheet = newParts(day, region).sheet(id, names[paper], { widthMm, heightMm });
  if (paper === 'roll') {
    return { ...sheet, form: 'roll', price: typical(otherTypicals.rollPrice.typical, 'money/m') };
  }
  return paper === 'letter' || paper === 'a4'
    ? sheet
    : { ...sheet, price: typical(WIDE_SHEET_PRICE, 'money/sheet') };
}

/** @returns what a piece goes out in; its price is typical. */
export function startPackaging(
  isDrinkware: boolean,
  id: string,
  day: string,
  { region }: StartChoices,
): Packaging {
  const typical = typicalsOf(day, region.currency);
  return isDrinkware
    ? { id, name: 'Mug box', perPiece: typical(MUG_BOX_PRICE, 'money/piece') }
    : newParts(day, region).packaging(id, 'Bag and sticker');
}
