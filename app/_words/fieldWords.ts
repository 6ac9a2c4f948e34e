import { draftFacts, isKnownKind } from '@/lib/kinds/draftFacts';
import type { Where } from '@/shared/finding';
import { rateCatalogue } from '@/shared/tables/rateCatalogue';
import type { NameOf } from './formatter';

/** Names of lists, as one entry of them is called. */
const entries: Readonly<Record<string, string>> = {
  lines: 'line',
  placements: 'placement',
  prints: 'print size',
  quantities: 'quantity',
  upCharges: 'up-charge',
  sizes: 'size',
  maxPrints: 'largest print',
  fibres: 'fibre',
  printers: 'printer',
  presses: 'press',
  sheets: 'sheet',
  packagings: 'packaging',
  channels: 'sales channel',
  ownRows: 'own row',
  waivers: 'reason given',
  breaks: 'price break',
  blocks: 'block',
  daysOff: 'days off',
};

/** Fields whose own name says too little. */
const fields: Readonly<Record<string, string>> = {
  job: 'the job',
  workshop: 'the workshop',
  blanks: 'the blanks',
  artworks: 'the artworks',
  asOf: 'day it is asked (asOf)',
  nameList: 'names of pieces',
  colourMatch: 'colour to match',
  madeFor: 'made for order or stock',
  wantedOn: 'day it is wanted',
  deliveryKm: 'delivery distance in km',
  blankId: 'blank of the line',
  artworkId: 'artwork of the placement',
  pressId: 'press of the placement',
  printerId: 'printer of the job',
  sheetId: 'sheet of the job',
  channelId: 'sales channel of the job',
  packagingId: 'packaging of the line',
  widthMm: 'width in mm',
  heightMm: 'height in mm',
  marginMm: 'margin in mm',
  gutterMm: 'gap between pieces in mm',
  tapeMarginMm: 'room for tape in mm',
  dropFromCollarMm: 'distance from the collar in mm',
  maxTemperatureC: 'highest temperature in °C',
  dwellSeconds: 'dwell in seconds',
  preheatSeconds: 'preheat in seconds',
  pressureKpa: 'pressure in kPa',
  coolSeconds: 'cooling in seconds',
  thicknessMm: 'thickness in mm',
  openingMm: 'opening in mm',
  longestPageMm: 'longest page in mm',
  blackShare: 'share of the grey printed with black',
  mediaSetting: 'paper setting',
  belowMm: 'distance below the rim in mm',
  L: 'lightness L*',
  a: 'a* of the colour',
  b: 'b* of the colour',
};

const wholeWords = (document: string): string =>
  `the ${isKnownKind(document) ? draftFacts[document].word : 'file'}`;

/**
 * A place in a document in words, from the inside out.
 *
 * @param itemName what the item of a list at a place is called; null where it goes by its number
 * @example fieldWords({ document: 'job', path: ['lines', 0, 'quantities', 2, 'size'] })
 *   // => 'size of quantity 3 of line 1 of the job'
 */
export function fieldWords(
  { document, id, path }: Where,
  nameOf: NameOf = () => null,
  itemName: (upTo: Where['path']) => string | null = () => null,
): string {
  const words: string[] = [];
  for (let index = 0; index < path.length; index += 1) {
    const step = path[index];
    const next = path[index + 1];
    if (typeof step === 'number') {
      words.push(`entry ${step + 1}`);
    } else if (step !== undefined && typeof next === 'number') {
      const name = itemName(path.slice(0, index + 2));
      words.push(name ?? `${entries[step] ?? plainWords(step)} ${next + 1}`);
      index += 1;
    } else if (step !== undefined) {
      const label = labelOf(step, path[index - 1]);
      // A sentence about a whole list needs one thing to speak of: "List of lines is missing".
      words.push(index === path.length - 1 && isList(step) ? `list of ${label.replace(/^the /, '')}` : label);
    }
  }
  // An id says nothing to anybody: a document without a known name goes by its kind alone.
  const name = id === undefined ? null : nameOf(document, id);
  const whole = name === null ? wholeWords(document) : `${wholeWords(document)} “${name}”`;
  return [...words.reverse(), whole].join(' of ');
}

const isList = (step: string): boolean =>
  Object.hasOwn(entries, step) || step === 'blanks' || step === 'artworks';

function labelOf(step: string, parent: string | number | undefined): string {
  if (parent === 'blanks' || parent === 'artworks') return `“${step}”`;
  if (parent === 'rates' && Object.hasOwn(rateCatalogue, step)) {
    const [, label] = Object.entries(rateCatalogue).find(([name]) => name === step) ?? [];
    return `“${label?.label ?? step}” (${step})`;
  }
  return Object.hasOwn(fields, step) ? (fields[step] ?? step) : plainWords(step);
}

/** `sewnLabel` becomes "sewn label"; what is no name of ours is quoted as it stands. */
const plainWords = (step: string): string =>
  /^[a-z][A-Za-z0-9]{0,40}$/.test(step)
    ? step.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    : `“${step.length > 40 ? `${step.slice(0, 40)}…` : step}”`;
