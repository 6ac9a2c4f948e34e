import type { SetLine } from '@/lib/lettering/openLettering';
import { heavyLine } from '@/lib/papers/flowPages';
import type { Block, LargePrice } from '@/lib/papers/paper';
import { beside, drawColumns, highOf, INK, linesOf, type Setting, space, widthOf } from './setting';
import { stacked } from './stacked';

type Prices = Extract<Block, { kind: 'prices' }>;

/** Read from two steps away: sizes in points where all rows find room on the page. */
const LARGE = { name: 34, tagline: 14, what: 26, under: 13, figure: 54, foot: 13, pad: 12 } as const;
/** A page with room to spare is filled by larger type. */
const MOST = 1.4;
/** What finds no room even at this size goes on to the next page. */
const LEAST = 0.55;
const STEP = 0.05;
/** Of the width, for what is sold; the price stands in the rest. */
const WHAT = 0.72;

/** A list to be read from afar, as large as it stands on one page. */
export function drawPrices(setting: Setting, block: Prices): void {
  const { flow } = setting;
  const widthPt = widthOf(setting);
  const head = (times: number) => [
    ...linesOf(setting, block.name, { widthPt, size: LARGE.name * times, weight: 700, leading: 1.15 }),
    ...linesOf(setting, block.tagline, { widthPt, size: LARGE.tagline * times }),
    space(8),
  ];
  const feet = (times: number) =>
    block.foot.flatMap((text, at) =>
      linesOf(setting, text, { widthPt, size: LARGE.foot * times, weight: at === 0 ? 400 : 700 }),
    );
  const high = (times: number) =>
    highOf(head(times)) +
    block.rows.reduce((sum, row) => sum + rowLine(setting, row, times).high, 0) +
    highOf(feet(times)) +
    2 * LARGE.pad;
  let times: number = MOST;
  while (times > LEAST && high(times) > flow.room) times = Math.max(LEAST, Number((times - STEP).toFixed(2)));
  drawColumns(setting, [{ at: 0, widthPt, lines: head(times) }]);
  heavyLine(flow);
  for (const row of block.rows) {
    // A row is one line of the page: it is never broken over two.
    drawColumns(setting, [{ at: 0, widthPt, lines: [rowLine(setting, row, times)] }]);
  }
  drawColumns(setting, [{ at: 0, widthPt, lines: [space(LARGE.pad), ...feet(times)] }]);
}

// Helpers

function rowLine(setting: Setting, row: LargePrice, times: number): SetLine {
  const whole = widthOf(setting);
  const inset = row.isOffer ? LARGE.pad : 0;
  const widthPt = whole - 2 * inset;
  const wide = WHAT * widthPt;
  const what = [
    ...linesOf(setting, row.what, {
      widthPt: wide - LARGE.pad,
      size: LARGE.what * times,
      weight: 700,
      leading: 1.15,
    }),
    ...linesOf(setting, row.under, { widthPt: wide - LARGE.pad, size: LARGE.under * times }),
  ];
  const figure = linesOf(setting, row.figure, {
    widthPt: widthPt - wide,
    size: LARGE.figure * times,
    weight: 700,
    align: 'end',
    leading: 1.1,
  });
  const inner = Math.max(highOf(what), highOf(figure));
  const middle = (lines: readonly SetLine[]) => [space((inner - highOf(lines)) / 2), ...lines];
  const first = stacked(
    beside(setting, widthPt, [
      { at: 0, widthPt: wide, lines: [stacked(middle(what))] },
      { at: wide, widthPt: widthPt - wide, lines: [stacked(middle(figure))] },
    ]),
  );
  const pad = LARGE.pad * times;
  const high = first.high + 2 * pad;
  return {
    high: high + (row.isOffer ? pad : 0),
    draw(page, { x, top }) {
      const low = top - high;
      if (row.isOffer) {
        const box = { x, y: low, width: whole, height: high - pad / 2 };
        page.drawRectangle({ ...box, borderColor: INK, borderWidth: 2 });
      } else {
        const line = { start: { x, y: low }, end: { x: x + whole, y: low } };
        page.drawLine({ ...line, thickness: 1.2, color: INK, dashArray: [1.2, 2.4] });
      }
      first.draw(page, { x: x + inset, top: top - (row.isOffer ? pad * 1.25 : pad) });
    },
  };
}
