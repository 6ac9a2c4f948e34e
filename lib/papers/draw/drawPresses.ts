import type { SetLine } from '@/lib/lettering/openLettering';
import { tearLine } from '@/lib/papers/flowPages';
import type { Block, DrawnPress } from '@/lib/papers/paper';
import { drawingRows } from './drawDrawings';
import { pairLines } from './drawPair';
import { scrapLines, tickLines, ticksWide } from './drawTicks';
import {
  beside,
  type Column,
  drawColumns,
  GREY,
  highOf,
  linesOf,
  type Setting,
  SMALL,
  space,
  TEXT,
  widthOf,
} from './setting';
import { headingLines } from './stepHeading';

const GAP = 14;
const NEAR = 8;
/** Of a heading above what stands on one page with it. */
const WITH_HEADING = 60;
/** More than this stand in two columns, drawn small, so that all find room. */
const FEW = 2;
const rooms = {
  few: { wide: 92, high: 92 },
  pair: { wide: 128, high: 92 },
  many: { wide: 46, high: 46 },
} as const;

/** What is done at the press, print by print: where it sits, how it is pressed, squares for the good pieces. */
export function drawPresses(
  setting: Setting,
  { presses }: Extract<Block, { readonly kind: 'presses' }>,
): void {
  const { flow } = setting;
  const whole = widthOf(setting);
  const isFew = presses.length <= FEW;
  const across = isFew ? 1 : 2;
  const widthPt = (whole - GAP * (across - 1)) / across;
  for (let from = 0; from < presses.length; from += across) {
    const row = presses.slice(from, from + across).map(
      (press, at): Column => ({
        at: at * (widthPt + GAP),
        widthPt,
        lines: isFew ? wideLines(setting, press, widthPt) : narrowLines(setting, press, widthPt),
      }),
    );
    const high = Math.max(...row.map(({ lines }) => highOf(lines)));
    if (high > flow.room) flow.newPage();
    tearLine(flow);
    flow.goTo(flow.y - 4);
    drawColumns(setting, row);
  }
  tearLine(flow);
  flow.goTo(flow.y - 6);
}

// Helpers

/** As it lies on the paper and as it is seen; of an artwork that is gone where it sits on the piece. */
const shownLines = (
  setting: Setting,
  { pair, drawings }: DrawnPress,
  room: (typeof rooms)[keyof typeof rooms],
): readonly SetLine[] =>
  pair === null
    ? drawingRows(setting, drawings.slice(0, 1), room.wide, { room })
    : pairLines(setting, pair, drawings, { ...room, high: room.high * setting.closeness.drawings });

/** Drawing, words and sizes beside each other. */
function wideLines(setting: Setting, press: DrawnPress, widthPt: number): readonly SetLine[] {
  const room = press.pair === null ? rooms.few : rooms.pair;
  const { wide } = room;
  const rest = widthPt - wide - 2 * GAP;
  const told = rest * (press.pair === null ? 0.4 : 0.35);
  const sizes = rest - told;
  return [
    ...headingLines(setting, press, widthPt),
    ...asOne(setting, widthPt, [
      {
        at: 0,
        widthPt: wide,
        lines: shownLines(setting, press, room),
      },
      { at: wide + GAP, widthPt: told, lines: wordLines(setting, press, told) },
      { at: wide + told + 2 * GAP, widthPt: sizes, lines: sizeLines(setting, press, sizes) },
    ]),
    space(4),
  ];
}

/** The drawing beside the words, the sizes beneath. */
function narrowLines(setting: Setting, press: DrawnPress, widthPt: number): readonly SetLine[] {
  const { wide } = rooms.many;
  const rest = widthPt - wide - NEAR;
  return [
    ...headingLines(setting, press, widthPt),
    ...asOne(setting, widthPt, [
      {
        at: 0,
        widthPt: wide,
        lines: shownLines(setting, press, rooms.many),
      },
      {
        at: wide + NEAR,
        widthPt: rest,
        lines: [...wordLines(setting, press, rest), space(3), ...sizeLines(setting, press, rest)],
      },
    ]),
    space(4),
  ];
}

/** Columns as one line, which no page parts; what is longer than a page goes on over several. */
function asOne(setting: Setting, widthPt: number, columns: readonly Column[]): readonly SetLine[] {
  const high = Math.max(...columns.map(({ lines }) => highOf(lines)));
  if (high > setting.flow.wholeRoom - WITH_HEADING) return beside(setting, widthPt, columns);
  return [
    {
      high,
      draw(page, { x, top }) {
        for (const { at, widthPt: wide, lines } of columns) {
          const left = setting.isRightToLeft ? x + widthPt - at - wide : x + at;
          let low = top;
          for (const line of lines) {
            line.draw(page, { x: left, top: low });
            low -= line.high;
          }
        }
      },
    },
  ];
}

/** The first line is what the press is set to. */
const wordLines = (setting: Setting, { lines, strong }: DrawnPress, widthPt: number): readonly SetLine[] => [
  ...linesOf(setting, strong, { widthPt, size: 13, weight: 700 }),
  ...lines.flatMap((text) => linesOf(setting, text, { widthPt, size: 9 })),
];

function sizeLines(setting: Setting, { heads, sizes }: DrawnPress, widthPt: number): readonly SetLine[] {
  const measured = (texts: readonly string[]) =>
    Math.max(...texts.map((text) => setting.lettering.measure(text, { size: TEXT }))) + 1;
  const ends = {
    size: Math.min(measured([heads.size, ...sizes.map(({ size }) => size)]), widthPt * 0.3),
    good: measured([heads.good, ...sizes.map(({ good }) => good)]),
    spares: Math.max(
      measured([heads.spares, ...sizes.map(({ spares }) => spares)]),
      ...sizes.map(({ scrap }) => ticksWide(scrap)),
    ),
  };
  const between = 5;
  const ticksAt = ends.size + ends.good + 2 * between;
  const ticks = widthPt - ticksAt - ends.spares - between;
  const row = (cells: readonly (readonly SetLine[])[]): readonly SetLine[] => {
    const [size = [], good = [], squares = [], spares = []] = cells;
    return beside(setting, widthPt, [
      { at: 0, widthPt: ends.size, lines: size },
      { at: ends.size + between, widthPt: ends.good, lines: good },
      { at: ticksAt, widthPt: ticks, lines: squares },
      { at: widthPt - ends.spares, widthPt: ends.spares, lines: spares },
    ]);
  };
  const head = (text: string, wide: number, align: 'start' | 'end' = 'start') =>
    linesOf(setting, text, { widthPt: wide, size: SMALL, colour: GREY, align });
  return [
    ...row([
      head(heads.size, ends.size),
      head(heads.good, ends.good, 'end'),
      head(heads.ticks, ticks),
      head(heads.spares, ends.spares),
    ]),
    ...sizes.flatMap((one) =>
      row([
        linesOf(setting, one.size, { widthPt: ends.size, weight: 700 }),
        linesOf(setting, one.good, { widthPt: ends.good, align: 'end' }),
        tickLines(setting, ticks, one.ticks),
        one.scrap > 0
          ? scrapLines(setting, ends.spares, one.scrap)
          : linesOf(setting, one.spares, { widthPt: ends.spares }),
      ]),
    ),
  ];
}
