import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block, TickGrid } from '@/lib/papers/paper';
import { BEFORE, TICK_SIDE, tickedLines, tickLines } from './drawTicks';
import {
  beside,
  type Column,
  drawColumns,
  GREY,
  INK,
  linesOf,
  type Setting,
  SMALL,
  space,
  TEXT,
  widthOf,
} from './setting';
import { headingLines } from './stepHeading';

type Of<Kind extends Block['kind']> = Extract<Block, { readonly kind: Kind }>;

const GAP = 14;
/** Between things to tick in one line. */
const APART = 16;

/** A step of the work: what is to be done and ticked off, in as few lines as it takes. */
export function drawStep(setting: Setting, step: Of<'step'>): void {
  const widthPt = widthOf(setting);
  const lines = [
    ...headingLines(setting, step, widthPt),
    ...step.lines.flatMap((text) => linesOf(setting, text, { widthPt })),
    ...flowingTicks(setting, step.ticks, widthPt),
    ...gridLines(setting, step.grid, widthPt),
    ...tallyLines(setting, step.tally, widthPt),
    space(5),
  ];
  drawColumns(setting, [{ at: 0, widthPt, lines }]);
}

// Helpers

/** Squares with their words, one after the other as words of a text are. */
function flowingTicks(setting: Setting, ticks: readonly string[], widthPt: number): readonly SetLine[] {
  const rows: Column[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const text of ticks) {
    const wide = Math.min(setting.lettering.measure(text, { size: TEXT }) + 0.5, widthPt - BEFORE);
    if (used + APART + BEFORE + wide > widthPt) {
      rows.push([]);
      used = -APART;
    }
    const at = used + APART;
    rows
      .at(-1)
      ?.push(
        { at, widthPt: TICK_SIDE, lines: tickLines(setting, TICK_SIDE) },
        { at: at + BEFORE, widthPt: wide, lines: linesOf(setting, text, { widthPt: wide }) },
      );
    used = at + BEFORE + wide;
  }
  return rows.flatMap((row) => [...beside(setting, widthPt, row), space(3)]);
}

/** Of the width, for the names at the beginning of its rows. */
const NAMES = 0.3;

function gridLines(setting: Setting, grid: TickGrid | null, widthPt: number): readonly SetLine[] {
  if (grid === null) return [];
  const { heads, last, rows } = grid;
  const names = widthPt * NAMES;
  const wide = (widthPt - names) / (heads.length + 1);
  const placed = (cells: readonly (readonly SetLine[])[]) =>
    beside(
      setting,
      widthPt,
      cells.map((lines, at) =>
        at === 0 ? { at: 0, widthPt: names, lines } : { at: names + (at - 1) * wide, widthPt: wide, lines },
      ),
    );
  const head = { widthPt: wide - 4, size: SMALL, colour: GREY };
  return [
    ...placed([[], ...[...heads, last].map((text) => linesOf(setting, text, head))]),
    ...rows.flatMap((row) =>
      placed([
        linesOf(setting, row.name, { widthPt: names - GAP }),
        ...row.ticks.map((text) => (text === '' ? [] : tickedLines(setting, wide - 4, text))),
        linesOf(setting, row.last, { widthPt: wide - 4 }),
      ]),
    ),
  ];
}

const TALLY_HIGH = 15;

/** Words with a line after each, to count on with a pencil. */
function tallyLines(
  setting: Setting,
  { words, labels }: Of<'step'>['tally'],
  widthPt: number,
): readonly SetLine[] {
  if (labels.length === 0) return [];
  const begin = Math.min(setting.lettering.measure(words, { size: TEXT }) + GAP, widthPt / 2);
  const wide = (widthPt - begin) / labels.length;
  const columns = labels.map((label, at): Column => {
    const from = Math.min(setting.lettering.measure(label, { size: TEXT }) + 4, wide - APART);
    const [line = space(TALLY_HIGH)] = linesOf(setting, label, { widthPt: from });
    return {
      at: begin + at * wide,
      widthPt: wide,
      lines: [
        {
          high: TALLY_HIGH,
          draw(page, place) {
            const { x, top } = place;
            const [wordsX, lineX] = setting.isRightToLeft ? [x + wide - from, x + APART] : [x, x + from];
            line.draw(page, { x: wordsX, top });
            page.drawLine({
              start: { x: lineX, y: top - 11 },
              end: { x: lineX + wide - from - APART, y: top - 11 },
              thickness: 0.6,
              color: INK,
            });
          },
        },
      ],
    };
  });
  const first: Column = { at: 0, widthPt: begin, lines: linesOf(setting, words, { widthPt: begin }) };
  return [space(2), ...beside(setting, widthPt, [first, ...columns])];
}
