import type { PDFPage } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block, PriceCard } from '@/lib/papers/paper';
import { fittedSize } from './fittedSize';
import { beside, drawColumns, highOf, INK, linesOf, type Setting, space, widthOf } from './setting';
import { stacked } from './stacked';

const PAD = 14;
const ACROSS = 2;
/** Rows of a page that is cut up whole: eight cards. */
const ROWS = 4;
const NAME = 20;
const LINE = 12;
const FIGURE = 44;
/** Long words are set smaller before cards are made larger, down to 13 points for names and 8 for what is beneath. */
const LEAST = 0.65;
const STEP = 0.05;
/** Of a card, for its price: as little as it takes. */
const PRICE = { least: 0.4, most: 0.5 } as const;
const BETWEEN = 8;

/** Cards with one large price, in two columns, to be cut along the dashes: all of one size, on pages that are cut up whole. */
export function drawPriceCards(setting: Setting, { cards }: Extract<Block, { kind: 'priceCards' }>): void {
  const whole = widthOf(setting);
  const wide = whole / ACROSS;
  const { set, high } = setCards(setting, cards, wide - 2 * PAD);
  for (let from = 0; from < set.length; from += ACROSS) {
    const row = set.slice(from, from + ACROSS);
    drawColumns(setting, [{ at: 0, widthPt: whole, lines: [rowLine(setting, row, { wide, high })] }]);
  }
}

// Helpers

type SetCard = readonly SetLine[];

/** @returns all cards set alike: as many on a page as their words allow, and these as large as they find room there. */
function setCards(
  setting: Setting,
  cards: readonly PriceCard[],
  widthPt: number,
): { readonly set: readonly SetCard[]; readonly high: number } {
  const { wholeRoom } = setting.flow;
  const price = priceOf(setting, cards, widthPt);
  const setAt = (times: number) => cards.map((card) => cardLines(setting, card, { widthPt, times, price }));
  const tallest = (set: readonly SetCard[]) => 2 * PAD + Math.max(0, ...set.map(highOf));
  const least = tallest(setAt(LEAST));
  const rows = Math.min(ROWS, Math.max(1, Math.floor(wholeRoom / least)));
  // Rounded down, or the last row would not fit by a hair.
  const high = Math.max(least, Math.floor((wholeRoom / rows) * 100) / 100);
  let times = 1;
  while (times > LEAST && tallest(setAt(times)) > high)
    times = Math.max(LEAST, Number((times - STEP).toFixed(2)));
  return { set: setAt(times), high };
}

interface SetPrice {
  readonly widthPt: number;
  readonly size: number;
}

/** The price is read from farthest: words make no room for it, nor it for words. */
function priceOf(setting: Setting, cards: readonly PriceCard[], widthPt: number): SetPrice {
  const figures = cards.map(({ figure }) => figure);
  const style = { size: FIGURE, weight: 700 } as const;
  const widest = Math.max(0, ...figures.map((figure) => setting.lettering.measure(figure, style)));
  const wide = Math.min(PRICE.most * widthPt, Math.max(PRICE.least * widthPt, widest + 1));
  return { widthPt: wide, size: fittedSize(setting, figures, { ...style, widthPt: wide }) };
}

function cardLines(
  setting: Setting,
  card: PriceCard,
  { widthPt, times, price }: { readonly widthPt: number; readonly times: number; readonly price: SetPrice },
): SetCard {
  const words = widthPt - price.widthPt - BETWEEN;
  const name = linesOf(setting, card.name, {
    widthPt: words,
    size: NAME * times,
    weight: 700,
    leading: 1.15,
  });
  const figure = linesOf(setting, card.figure, { ...price, weight: 700, align: 'end', leading: 1.1 });
  const high = Math.max(highOf(name), highOf(figure));
  const middle = (lines: readonly SetLine[]) => [stacked([space((high - highOf(lines)) / 2), ...lines])];
  return [
    ...beside(setting, widthPt, [
      { at: 0, widthPt: words, lines: middle(name) },
      { at: words + BETWEEN, widthPt: price.widthPt, lines: middle(figure) },
    ]),
    space(4),
    ...[...card.lines, card.foot].flatMap((text) =>
      linesOf(setting, text, { widthPt, size: LINE * times, leading: 1.25 }),
    ),
  ];
}

function rowLine(
  { isRightToLeft, flow }: Setting,
  cards: readonly SetCard[],
  { wide, high }: { readonly wide: number; readonly high: number },
): SetLine {
  return {
    high,
    draw(page, { x, top }) {
      const leftOf = (at: number) => x + (isRightToLeft ? ACROSS - 1 - at : at) * wide;
      const low = top - high;
      const from = Math.min(...cards.map((_, at) => leftOf(at)));
      const to = from + cards.length * wide;
      // Each cut is drawn once: dashes over dashes would make a whole line.
      if (flow.room === flow.wholeRoom) cut(page, { x: from, y: top }, { x: to, y: top });
      cut(page, { x: from, y: low }, { x: to, y: low });
      for (let at = 0; at <= cards.length; at += 1) {
        const edge = from + at * wide;
        cut(page, { x: edge, y: top }, { x: edge, y: low });
      }
      cards.forEach((lines, at) => {
        stacked([space((high - highOf(lines)) / 2), ...lines]).draw(page, { x: leftOf(at) + PAD, top });
      });
    },
  };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

const cut = (page: PDFPage, start: Point, end: Point): void =>
  page.drawLine({ start, end, thickness: 0.6, color: INK, dashArray: [3, 3] });
