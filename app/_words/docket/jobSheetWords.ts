import type { Formatter } from '@/app/_words/formatter';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import type { Placement, Recipe } from '@/shared/schemas/job';
import { choiceWords, jobChoices } from './choiceWords';
import { sizesWords } from './sizesWords';

/** The heart of a recipe as it is set at the press: “390 °F · 55 s”. */
export const heatWords = ({ temperature, dwellSeconds }: Recipe, formatter: Formatter): string =>
  `${formatter.number(temperature.value)} °${temperature.unit} · ${formatter.number(dwellSeconds)} s`;

/** @returns the rest of a recipe, a line for what belongs together; times nobody has typed are left to be written in. */
export function recipeWords(recipe: Recipe, formatter: Formatter): readonly string[] {
  const { pressure, pressureKpa, preheatSeconds, protectivePaper, reliefFromRaisedParts, barrierPaper } =
    recipe;
  const named = choiceWords(jobChoices.pressure, pressure);
  const papers = [
    protectivePaper === 'none' ? null : `${choiceWords(jobChoices.protectivePaper, protectivePaper)} over it`,
    barrierPaper ? 'clean paper inside and under' : null,
    reliefFromRaisedParts ? 'pillow, or raised parts off the platen' : null,
  ].filter((part) => part !== null);
  return [
    pressureKpa === null ? `${named} pressure` : `${formatter.pressure(pressureKpa)}, ${named}`,
    [
      preheatSeconds === null ? 'no preheat' : `preheat ${formatter.number(preheatSeconds)} s`,
      'cool ____ s',
    ].join(', '),
    ...(papers.length === 0 ? ['no paper over it'] : [papers.join(', ')]),
  ];
}

/** @returns where a print sits: “back, 3.5 in below the collar”. */
export const placeWords = (
  { position, dropFromCollarMm }: Pick<Placement, 'position' | 'dropFromCollarMm'>,
  formatter: Formatter,
): string =>
  [
    choiceWords(jobChoices.position, position),
    dropFromCollarMm === null ? null : `${formatter.length(dropFromCollarMm)} below the collar`,
  ]
    .filter((part) => part !== null)
    .join(', ');

/** @returns how large a placement is printed, and for which sizes where they differ. */
export const printSizesWords = (prints: readonly LaidOutPrint[], formatter: Formatter): string =>
  prints
    .map(({ widthMm, heightMm, sizes }) =>
      prints.length === 1
        ? formatter.size(widthMm, heightMm)
        : `${formatter.size(widthMm, heightMm)} for ${sizesWords(sizes)}`,
    )
    .join('; ');

/** @returns how many sheets a placement takes and how they lie: “10 of Chest badge, 4 a sheet”. */
export function layoutWords(name: string, prints: readonly LaidOutPrint[], formatter: Formatter): string {
  const pieces = prints.reduce((sum, print) => sum + print.pieces, 0);
  if (prints.some(({ ganged }) => ganged !== undefined))
    return `${formatter.count(pieces, 'print')} of ${name}, on shared sheets`;
  if (prints.some(({ roll }) => roll !== undefined))
    return `${formatter.count(pieces, 'print')} of ${name}, ${across(prints, formatter)} across the roll`;
  const sheets = prints.reduce((sum, print) => sum + print.sheets, 0);
  return `${formatter.number(sheets)} of ${name}, ${across(prints, formatter)} a sheet`;
}

/** @returns what is to be printed: “53 sheets”, or a length of roll. */
export const toPrintWords = (sheets: number, rollMm: number | null, formatter: Formatter): string =>
  rollMm === null
    ? formatter.count(sheets, 'sheet')
    : `${formatter.number(Math.ceil(rollMm / 100) / 10, 1)} m of roll`;

/** @returns what is printed beside the sheets of the good pieces; null where that is nothing. */
export function moreSheetsWords(more: number, tests: number, formatter: Formatter): string | null {
  if (more <= 0) return null;
  return tests === 0
    ? `${formatter.number(more)} for spoiled ones`
    : `${formatter.number(more)} for spoiled ones and ${formatter.count(tests, 'test')}`;
}

/** One box of a row of them stands for so many pieces: as many as leave a row short enough to print. */
export function piecesPerBox(pieces: number, most: number): number {
  for (let per = 1; ; per *= 10)
    for (const step of [1, 2, 5]) if (Math.ceil(pieces / (per * step)) <= most) return per * step;
}

// Helpers

const across = (prints: readonly LaidOutPrint[], formatter: Formatter): string =>
  [...new Set(prints.map(({ perSheet }) => formatter.number(perSheet, 0)))].join(' or ');
