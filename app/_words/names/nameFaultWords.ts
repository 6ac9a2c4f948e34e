import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import type { NameFault, Understood } from '@/lib/names/namePreview';
import type { SizeCount } from '@/lib/names/readSize';

/** @returns what is wrong with a row of names, and what comes of it or mends it */
export function nameFaultWords(fault: NameFault, formatter: Pick<Formatter, 'number' | 'count'>): Wording {
  switch (fault.code) {
    case 'noName':
      return wording('No name.', 'The piece is counted; add the name before it is printed or packed.');
    case 'noSize':
      return wording('No size.', 'The piece is counted in no size until one is told.');
    case 'unknownSize':
      return wording(
        `The blank has no size “${fault.asWritten}”.`,
        fault.nearest === null ? 'Choose one it has.' : `Nearest is ${fault.nearest}.`,
      );
    case 'severalSizes':
      return wording(
        `Two sizes in one cell: ${fault.sizes.map(piecesOf).join(' and ')}.`,
        'Choose one, or make a row of each.',
      );
    case 'twoMeanings':
      return wording(
        `“${fault.asWritten}” can be ${fault.offers.map(piecesOf).join(' or ')}.`,
        'Choose which is meant.',
      );
    case 'samePerson':
      return wording('The same name stands twice.', samePlaces(fault.lines));
    case 'noNumber':
      return wording(`“${fault.asWritten}” is no number.`, 'It is kept as it is written.');
    case 'noCount':
      return wording(`“${fault.asWritten}” says no number of pieces.`, 'It is counted as one.');
    case 'lineBreaks':
      return wording(
        'The name runs over several lines.',
        'They are joined by spaces. A quotation mark may have closed too late.',
      );
    case 'moreCells':
      return wording(
        `Nothing is taken of ${fault.cells.map((cell) => `“${cell}”`).join(', ')}.`,
        'The row has more cells than the others.',
      );
    case 'tooLong':
      return wording(
        `The ${fault.part} has ${formatter.count(fault.letters, 'letter')}; ${formatter.number(fault.most, 0)} can be kept.`,
        'The row waits here until it is shorter.',
      );
    case 'overMost':
      return wording(
        `An order keeps ${formatter.count(fault.most, 'name')} for one item.`,
        'The row waits here; put it into another item of the order.',
      );
    default:
      return fault satisfies never;
  }
}

/** @returns how something was read that is written otherwise: “XX-Large” is 2XL. */
export function understoodWords(understood: Understood): string {
  switch (understood.code) {
    case 'size':
      return `“${understood.asWritten}” read as ${piecesOf(understood)}.`;
    case 'onlySize':
      return `${understood.size}, the only size of the blank.`;
    case 'number':
      return `“${understood.asWritten}” read as ${understood.number}.`;
    default:
      return understood satisfies never;
  }
}

// Helpers

const piecesOf = ({ size, pieces }: SizeCount): string => (pieces === 1 ? size : `${pieces} of ${size}`);

function samePlaces(lines: readonly number[]): string {
  const pasted = lines.filter((line) => line > 0);
  const more = pasted.length > 5 ? `, and ${pasted.length - 5} more` : '';
  const places = [
    ...(pasted.length === 0 ? [] : [`on line ${pasted.slice(0, 5).join(', ')}${more}`]),
    ...(pasted.length < lines.length ? ['in the order already'] : []),
  ];
  return `Also ${places.join(' and ')}. Two people may share it; else remove one.`;
}
