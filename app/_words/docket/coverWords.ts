import type { Formatter } from '@/app/_words/formatter';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Printer, Sheet } from '@/shared/schemas/workshop';

/** A name inside a sentence of another script keeps its place: first strong isolate, pop directional isolate. */
const apart = (name: string): string => `\u2068${name}\u2069`;

/** Fixed sentences of a cover page. */
export const coverWords = {
  banner: 'Cover page – plain paper, do not press',
  settings: 'Set up the printer',
  sheets: 'Print the sheets',
  continued: 'continued',
  watch: 'At the press',
  foot: { page: 'page', of: 'of' },
} as const;

/** How the drawings are to be read. */
export const coverNote = (isAnyFull: boolean, isAnyEmpty: boolean): string =>
  [
    'Spares for what is spoiled, rejected and tested are not counted here.',
    'Each drawing shows the page as the file has it, seen from the printed side.',
    ...(isAnyFull ? ['The thick edge of a print is the top of its picture.'] : []),
    ...(isAnyEmpty ? ['Dashed: no picture is kept, its place stays empty.'] : []),
  ].join(' ');

/** Whose it is and of which day. */
export const coverUnder = (workshop: string, day: string): string => `${apart(workshop)}, made ${day}`;

/** What stands under the number of all. */
export const coverTotalWords = (count: number, isRoll: boolean): string =>
  `${isRoll ? 'print' : 'sheet'}${count === 1 ? '' : 's'} for the good pieces`;

/** What the 100 mm line is for. */
export function coverRuleWords(formatter: Formatter): string {
  const inches = formatter.length(100);
  const also = inches.endsWith('in') ? ` (${inches})` : '';
  return `This line must measure 100 mm${also}: print every file at “actual size”, with no scaling.`;
}

interface PrinterFacts {
  readonly printer: Printer | undefined;
  readonly paper: Sheet;
  readonly formatter: Formatter;
}

/** What to choose in the printer's window, and how the paper lies. */
export function coverSettings({ printer, paper, formatter }: PrinterFacts) {
  const side = printer?.printedSide ?? null;
  const media = paper.mediaSetting;
  const profile = printer?.colourProfile ?? null;
  return [
    ...(printer === undefined ? [] : [told('Printer', printer.name)]),
    told('Paper', `${apart(paper.name)}, ${paperSize(paper, formatter)}`),
    { name: 'Side', value: sideWords(side), isTold: side === 'up' || side === 'down' },
    media === null
      ? open('Kind of paper', 'not noted in the workshop: choose what the seller of the paper names')
      : told('Kind of paper', media),
    profile === null
      ? open('Colours', 'not noted in the workshop: choose what the seller of the ink names')
      : told('Colours', profile),
    told('Scale', 'actual size, 100 %, no scaling'),
    told('Mirror', 'off: what must be mirrored is mirrored in the file already'),
  ];
}

const told = (name: string, value: string) => ({ name, value, isTold: true });
const open = (name: string, value: string) => ({ name, value, isTold: false });

const paperSize = (paper: Sheet, formatter: Formatter): string =>
  paper.form === 'roll'
    ? `a roll ${formatter.length(paper.widthMm)} wide`
    : formatter.size(paper.widthMm, paper.heightMm);

function sideWords(side: Printer['printedSide']): string {
  switch (side) {
    case 'up':
      return 'coated side up in the tray';
    case 'down':
      return 'coated side down in the tray';
    case 'unsure':
    case null:
      return 'not known: mark a plain sheet and print a test; the coated side must be the printed one';
    default:
      return side satisfies never;
  }
}

interface SheetFacts {
  readonly first: number;
  readonly count: number;
  readonly of: number;
  readonly isRoll: boolean;
  readonly formatter: Formatter;
}

/** Which of all sheets these are. */
export function coverSheetHeading({ first, count, of, isRoll, formatter }: SheetFacts): string {
  const number = (value: number) => formatter.number(value, 0);
  const last = first + count - 1;
  const one = isRoll ? 'Print' : 'Sheet';
  return count === 1
    ? `${one} ${number(first)} of ${number(of)}`
    : `${one}s ${number(first)}–${number(last)} of ${number(of)}`;
}

/** How many are laid alike. */
export const coverCopies = (count: number, formatter: Formatter): string =>
  count === 1 ? '1 copy' : `${formatter.number(count, 0)} copies alike`;

/** How much of the roll it takes and where it is cut. */
export function coverRollFacts(
  lengthMm: number,
  cutsMm: readonly number[],
  formatter: Formatter,
): readonly string[] {
  const length = `Cut off the roll at ${formatter.length(lengthMm)}.`;
  if (cutsMm.length === 0) return [length];
  const at = cutsMm.map((cut) => formatter.length(cut)).join(', ');
  return [length, `Then cut into ${formatter.number(cutsMm.length + 1, 0)} strips at ${at} from its start.`];
}

/** The edge a drawing has on top. */
export const coverTopEdge = (isRoll: boolean): string => (isRoll ? 'start of the roll' : 'top of the page');

/** Which picture it is, so that two versions can be told apart at the printer. */
export const coverPictureWords = ({ name, version, picture }: Artwork): string =>
  `${apart(name)}, version ${version}${picture === null ? '' : `, ${apart(picture.fileName)}`}`;

interface PrintFacts {
  readonly count: number;
  readonly size: string;
  readonly picture: string | null;
  readonly item: string | null;
  readonly sizes: string | null;
  readonly isMirrored: boolean;
  readonly isEmpty: boolean;
  readonly isRoll: boolean;
}

/** What a print on a sheet is, a line each. */
export function coverPrintDetails(print: PrintFacts, formatter: Formatter): readonly string[] {
  const { count, size, picture, item, sizes, isMirrored, isEmpty, isRoll } = print;
  return [
    `${formatter.number(count, 0)} to a ${isRoll ? 'print' : 'sheet'}, ${size}, ${isMirrored ? 'mirrored' : 'not mirrored'}`,
    ...(item === null ? [] : [sizes === null ? item : `${apart(item)}, ${sizes}`]),
    ...(picture === null ? [] : [`picture: ${picture}`]),
    ...(isEmpty ? ['no picture kept: its place stays empty'] : []),
  ];
}

interface PressFacts {
  readonly isVentilated: boolean | null;
  /** Whether a transfer has words in its waste. */
  readonly hasStrip: boolean;
}

/** What to mind at the press. */
export const coverWatch = ({ isVentilated, hasStrip }: PressFacts): readonly string[] => [
  'A sublimation print lies mirrored on its paper and reads right on the piece. Press transfers only, never this page.',
  ...(hasStrip ? ['A strip with words is cut off before pressing.'] : []),
  isVentilated === true
    ? 'The platen is hot, and hot dye gives off fumes: keep the air moving, and keep hands, children and food away.'
    : 'The platen is hot, and hot dye gives off fumes: open a window with a fan, and keep hands, children and food away.',
];

/** What is said of letters that no type here has. */
export const drawnLettersWords = (letters: readonly string[]): string =>
  letters.length === 0
    ? ''
    : `These letters are drawn as a picture of this device’s type: ${letters.map(apart).join(' ')}. One that this device lacks too comes out as an empty box.`;

/** What is said of characters that have no shape. */
export const leftOutWords = (codePoints: readonly string[]): string =>
  codePoints.length === 0 ? '' : `Left out, for they have no shape: ${codePoints.join(', ')}.`;
