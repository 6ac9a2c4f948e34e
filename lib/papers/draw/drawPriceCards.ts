import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block, PriceCard } from '@/lib/papers/paper';
import { beside, drawColumns, highOf, INK, linesOf, type Setting, space, widthOf } from './setting';
import { stacked } from './stacked';

const PAD = 14;
const ACROSS = 2;
/** Rows of a page that is cut up whole: eight cards. */
const ROWS = 4;
const NAME = 20;
const LINE = 12;
const FIGURE = 44;
/** Of a card, for its price. */
const PRICE = 0.4;

/** Cards with one large price, in two columns, to be cut along the dashes; all of one size unless their words are longer. */
export function drawPriceCards(setting: Setting, { cards }: Extract<Block, { kind: 'priceCards' }>): void {
  const whole = widthOf(setting);
  const wide = whole / ACROSS;
  // Rounded down, or the last row would not fit by a hair.
  const least = Math.floor((setting.flow.wholeRoom / ROWS) * 100) / 100;
  for (let from = 0; from < cards.length; from += ACROSS) {
    const set = cards.slice(from, from + ACROSS).map((card) => cardLines(setting, card, wide - 2 * PAD));
    const high = Math.max(least, ...set.map((lines) => highOf(lines) + 2 * PAD));
    drawColumns(setting, [{ at: 0, widthPt: whole, lines: [rowLine(setting, set, { wide, high })] }]);
  }
}

// Helpers

function cardLines(setting: Setting, card: PriceCard, widthPt: number): readonly SetLine[] {
  const price = PRICE * widthPt;
  const words = widthPt - price - 8;
  const names = [
    ...linesOf(setting, card.name, { widthPt: words, size: NAME, weight: 700, leading: 1.15 }),
    space(4),
    ...card.lines.flatMap((text) => linesOf(setting, text, { widthPt: words, size: LINE })),
    ...linesOf(setting, card.foot, { widthPt: words, size: LINE }),
  ];
  const figure = linesOf(setting, card.figure, {
    widthPt: price,
    size: FIGURE,
    weight: 700,
    align: 'end',
    leading: 1.1,
  });
  const high = Math.max(highOf(names), highOf(figure));
  const middle = (lines: readonly SetLine[]) => [stacked([space((high - highOf(lines)) / 2), ...lines])];
  return beside(setting, widthPt, [
    { at: 0, widthPt: words, lines: middle(names) },
    { at: words + 8, widthPt: price, lines: middle(figure) },
  ]);
}

function rowLine(
  { isRightToLeft }: Setting,
  cards: readonly (readonly SetLine[])[],
  { wide, high }: { readonly wide: number; readonly high: number },
): SetLine {
  return {
    high,
    draw(page, { x, top }) {
      cards.forEach((lines, at) => {
        const left = x + (isRightToLeft ? ACROSS - 1 - at : at) * wide;
        const box = { x: left, y: top - high, width: wide, height: high };
        page.drawRectangle({ ...box, borderColor: INK, borderWidth: 0.6, borderDashArray: [3, 3] });
        let low = top - (high - highOf(lines)) / 2;
        for (const line of lines) {
          line.draw(page, { x: left + PAD, top: low });
          low -= line.high;
        }
      });
    },
  };
}
