import type { PriceListVersion } from '@/shared/schemas/priceList';

/* What the printed parts take in height, in mm, as measured on prints of the paper; rather too much than too little. */
const HEAD_MM = 18;
const FOOT_MM = 18;
const LINE_MM = 4.2;
/** What is included is written in letters of 16 px with lines 1.45 apart, 96 px to an inch. */
const NOTES_MM = (16 * 1.45 * 25.4) / 96;
/** Name of an item, its sizes, and the room around it. */
const ITEM_MM = 13;
/** Letters that stand side by side in the column of an item, and across the whole page. */
const COLUMN_LETTERS = 54;
/** “, up to 8 × 10 in” follows what an item says. */
const SIZE_LETTERS = 20;
const PAGE_LETTERS = 100;

/** Height of the page without its margins of 14 mm. */
const roomMm = { a4: 297 - 28, letter: 279.4 - 28 } as const;

/** @returns about how many pages a version takes when it is printed. */
export function paperPages(
  { items, notes, from, leadTime }: Pick<PriceListVersion, 'items' | 'notes' | 'from' | 'leadTime'>,
  paper: 'a4' | 'letter',
): number {
  const lines = (text: string, letters: number): number =>
    text === ''
      ? 0
      : text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / letters)), 0);
  const words = lines(from, COLUMN_LETTERS) + lines(leadTime, PAGE_LETTERS);
  const charges = new Set(
    items.flatMap((item) => item.charges.map(({ kind, name, amount }) => `${kind} ${name} ${amount}`)),
  );
  const heights = items.map(
    ({ name, says }) =>
      ITEM_MM +
      LINE_MM * (lines(name, COLUMN_LETTERS) - 1 + Math.ceil((says.length + SIZE_LETTERS) / COLUMN_LETTERS)),
  );
  const all =
    HEAD_MM +
    FOOT_MM +
    NOTES_MM * lines(notes, PAGE_LETTERS) +
    LINE_MM * (words + Math.ceil(charges.size / 2)) +
    heights.reduce((sum, height) => sum + height, 0);
  return Math.max(1, Math.ceil(all / roomMm[paper]));
}
