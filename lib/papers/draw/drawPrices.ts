import type { SetLine } from '@/lib/lettering/openLettering';
import { heavyLine } from '@/lib/papers/flowPages';
import type { Block, LargePrice } from '@/lib/papers/paper';
import { fittedSize } from './fittedSize';
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

/** A list to be read from afar: on as few pages as it can take, and as large as it stands on these. */
export function drawPrices(setting: Setting, block: Prices): void {
  const { flow } = setting;
  const widthPt = widthOf(setting);
  const times = largest((at) => pagesOf(flow, setList(setting, block, at)));
  const { head, rows, feet } = setList(setting, block, times);
  drawColumns(setting, [{ at: 0, widthPt, lines: head }]);
  heavyLine(flow);
  // A row is one line of the page: it is never broken over two.
  for (const row of rows) drawColumns(setting, [{ at: 0, widthPt, lines: [row] }]);
  drawColumns(setting, [{ at: 0, widthPt, lines: feet }]);
}

// Helpers

interface SetList {
  readonly head: readonly SetLine[];
  readonly rows: readonly SetLine[];
  readonly feet: readonly SetLine[];
}

/** @returns the largest of the sizes that take no more pages than the least of them. */
function largest(pagesAt: (times: number) => number): number {
  const fewest = pagesAt(LEAST);
  let times: number = MOST;
  while (times > LEAST && pagesAt(times) > fewest) times = Math.max(LEAST, Number((times - STEP).toFixed(2)));
  return times;
}

function pagesOf({ room, wholeRoom }: Setting['flow'], { head, rows, feet }: SetList): number {
  let pages = 1;
  let left = room - highOf(head);
  for (const high of [...rows.map((row) => row.high), highOf(feet)]) {
    if (high > left) {
      pages += 1;
      left = wholeRoom;
    }
    left -= high;
  }
  return pages;
}

function setList(setting: Setting, block: Prices, times: number): SetList {
  const widthPt = widthOf(setting);
  return {
    head: [
      ...linesOf(setting, block.name, { widthPt, size: LARGE.name * times, weight: 700, leading: 1.15 }),
      ...linesOf(setting, block.tagline, { widthPt, size: LARGE.tagline * times }),
      space(8),
    ],
    rows: rowsOf(setting, block.rows, times),
    feet: [
      space(LARGE.pad),
      ...block.foot.flatMap((text, at) =>
        linesOf(setting, text, { widthPt, size: LARGE.foot * times, weight: at === 0 ? 400 : 700 }),
      ),
    ],
  };
}

/** All prices of one size: that of the longest where it would not find room. */
function rowsOf(setting: Setting, rows: readonly LargePrice[], times: number): readonly SetLine[] {
  const figureSize = fittedSize(
    setting,
    rows.map(({ figure }) => figure),
    { size: LARGE.figure * times, weight: 700, widthPt: (1 - WHAT) * (widthOf(setting) - 2 * LARGE.pad) },
  );
  return rows.map((row) => rowLine(setting, row, { times, figureSize }));
}

function rowLine(
  setting: Setting,
  row: LargePrice,
  { times, figureSize }: { readonly times: number; readonly figureSize: number },
): SetLine {
  const whole = widthOf(setting);
  const inset = row.isOffer ? LARGE.pad : 0;
  const widthPt = whole - 2 * inset;
  const wide = WHAT * widthPt;
  const words = wide - LARGE.pad;
  const what = [
    ...linesOf(setting, row.what, { widthPt: words, size: LARGE.what * times, weight: 700, leading: 1.15 }),
    ...linesOf(setting, row.under, { widthPt: words, size: LARGE.under * times }),
  ];
  const figure = linesOf(setting, row.figure, {
    widthPt: widthPt - wide,
    size: figureSize,
    weight: 700,
    align: 'end',
    leading: 1.1,
  });
  const inner = Math.max(highOf(what), highOf(figure));
  const middle = (lines: readonly SetLine[]) => [space((inner - highOf(lines)) / 2), ...lines];
  const first = stacked(
    beside(setting, widthPt, [
      { at: 0, widthPt: words, lines: [stacked(middle(what))] },
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
