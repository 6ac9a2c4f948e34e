import type { Formatter } from '@/app/_words/formatter';
import type { StartingBlankName } from '@/lib/examples/blankPatterns';
import type { StartChoices, StartPaper, StartPress } from '@/lib/examples/startChoices';
import { paperSizeOf, platenOf } from '@/lib/examples/startParts';

/** What is made, as cards name it. */
export const makeWords: Readonly<Record<StartingBlankName, string>> = {
  shirt: 'Shirts',
  performance: 'Sports shirts',
  mug: 'Mugs',
  tumbler: 'Tumblers',
  panel: 'Panels',
  tote: 'Bags',
  cushion: 'Cushions',
  mat: 'Mats',
  tile: 'Tiles',
  keyring: 'Keyrings',
};

const pressWords: Readonly<Record<StartPress, string>> = {
  flat: 'Flat press',
  large: 'Large flat press',
  other: 'Another one',
  mug: 'Mug press',
  tumbler: 'Tumbler press',
  oven: 'Oven',
};

/** @returns a press and its size, as its card says them. */
export function pressCardWords(press: StartPress, choices: StartChoices, formatter: Formatter) {
  const platen = platenOf(press, choices);
  const isInch = choices.region.units.length === 'in';
  const round: Partial<Record<StartPress, string>> = {
    mug: isInch ? '11 to 15 oz' : '300 to 450 mL',
    tumbler: 'wraps all round',
    oven: 'with shrink wrap',
  };
  const size = platen === null ? (round[press] ?? '') : formatter.size(platen.widthMm, platen.heightMm);
  return {
    label: pressWords[press],
    small: press === 'other' && choices.platen === null ? 'say its platen' : size,
  };
}

/** @returns a paper and its size, as its card says them. */
export function paperCardWords(paper: StartPaper, choices: StartChoices, formatter: Formatter) {
  const { widthMm, heightMm } = paperSizeOf(paper, choices);
  const isInch = choices.region.units.length === 'in';
  const labels: Readonly<Record<StartPaper, string>> = {
    letter: 'Letter',
    a4: 'A4',
    a3: 'A3',
    wide: isInch ? 'Wide sheet' : 'A3+',
    roll: 'A roll',
  };
  return {
    label: labels[paper],
    small: paper === 'roll' ? `${formatter.length(widthMm)} wide` : formatter.size(widthMm, heightMm),
  };
}
