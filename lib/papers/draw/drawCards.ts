import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block } from '@/lib/papers/paper';
import { drawColumns, GREY, gap, highOf, linesOf, PALE, type Setting, SMALL, widthOf } from './setting';

type Card = Extract<Block, { kind: 'cards' }>['cards'][number];

const PAD = 10;
/** A card is read in the hand: its lines stand closer than those of a page, so that eight of a shirt find room on one. */
const STYLE = { size: 8.5, leading: 1.25 } as const;
const ACROSS = 2;

/** Cards in two columns, to be cut along the dashes. Rows share what is left of their page, so that it is cut up whole. */
export function drawCards(setting: Setting, { cards }: Extract<Block, { kind: 'cards' }>): void {
  const whole = widthOf(setting);
  const widthPt = whole / ACROSS - 2 * PAD;
  const rows: Row[] = [];
  for (let from = 0; from < cards.length; from += ACROSS) {
    const set = cards.slice(from, from + ACROSS).map((card) => cardLines(setting, card, widthPt));
    rows.push({ cards: set, high: Math.max(...set.map(highOf)) });
  }
  const { room, wholeRoom } = setting.flow;
  const pages = inPages(rows, room, wholeRoom);
  pages.forEach((page, at) => {
    const more = moreOfEach(page, at === 0 ? room : wholeRoom, at === pages.length - 1);
    for (const row of page)
      drawColumns(setting, [{ at: 0, widthPt: whole, lines: [rowLine(setting, row, whole, more)] }]);
  });
}

// Helpers

interface Row {
  readonly cards: readonly (readonly SetLine[])[];
  readonly high: number;
}

const cardLines = (setting: Setting, { heading, lines, foot }: Card, widthPt: number): readonly SetLine[] => [
  gap(setting, PAD),
  ...linesOf(setting, heading, { ...STYLE, widthPt, size: 12, weight: 700 }),
  gap(setting, 3),
  ...lines.flatMap((text) => [...linesOf(setting, text, { ...STYLE, widthPt }), gap(setting, 2)]),
  gap(setting, 4),
  ...linesOf(setting, foot, { ...STYLE, widthPt, size: SMALL, colour: GREY }),
  gap(setting, PAD),
];

/** @returns rows as pages hold them; the first page has less room where something stands on it. */
function inPages(rows: readonly Row[], first: number, whole: number): readonly (readonly Row[])[] {
  const pages: Row[][] = [[]];
  let room = first;
  for (const row of rows) {
    if (row.high > room && pages.at(-1)?.length !== 0) {
      pages.push([]);
      room = whole;
    }
    pages.at(-1)?.push(row);
    room -= row.high;
  }
  return pages;
}

/** @returns how much higher each row of a page is than its text; on the last no higher than on a page full of such. */
function moreOfEach(rows: readonly Row[], room: number, isLast: boolean): number {
  const free = room - rows.reduce((sum, { high }) => sum + high, 0);
  const tallest = Math.max(...rows.map(({ high }) => high));
  const most = Math.floor(room / tallest);
  if (free <= 0 || most === 0) return 0;
  const share = free / rows.length;
  const more = isLast ? Math.min(share, room / most - tallest) : share;
  // Rounded down, or the last row would not fit by a hair.
  return Math.floor(more * 100) / 100;
}

function rowLine(setting: Setting, { cards, high: least }: Row, whole: number, more: number): SetLine {
  const high = least + more;
  const wide = whole / ACROSS;
  return {
    high,
    draw(page, { x, top }) {
      cards.forEach((lines, at) => {
        const left = x + (setting.isRightToLeft ? ACROSS - 1 - at : at) * wide;
        page.drawRectangle({
          x: left,
          y: top - high,
          width: wide,
          height: high,
          borderColor: PALE,
          borderWidth: 0.6,
          borderDashArray: [3, 3],
        });
        let low = top - more / 2;
        for (const line of lines) {
          line.draw(page, { x: left + PAD, top: low });
          low -= line.high;
        }
      });
    },
  };
}
