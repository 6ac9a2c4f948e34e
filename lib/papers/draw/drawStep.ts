import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block } from '@/lib/papers/paper';
import { BEFORE, TICK_SIDE, tickLines } from './drawTicks';
import {
  beside,
  type Column,
  drawColumns,
  highOf,
  INK,
  linesOf,
  type Setting,
  space,
  TEXT,
  widthOf,
} from './setting';
import { headingLines } from './stepHeading';
import { type GridPart, tickGrid } from './tickGrid';

type Of<Kind extends Block['kind']> = Extract<Block, { readonly kind: Kind }>;

const GAP = 14;
/** Between things to tick in one line. */
const APART = 16;

/**
 * A step of the work: what is to be done and ticked off, in as few lines as it takes.
 *
 * @param keep room that is wanted beneath
 */
export function drawStep(setting: Setting, step: Of<'step'>, keep: number): void {
  const { wholeRoom, room, newPage } = setting.flow;
  const widthPt = widthOf(setting);
  const draw = (lines: readonly SetLine[], onPage?: () => void) =>
    drawColumns(setting, [{ at: 0, widthPt, lines }], onPage);
  const grid = step.grid === null ? [] : tickGrid(setting, step.grid, widthPt);
  const before = [
    ...headingLines(setting, step, widthPt),
    ...step.lines.flatMap((text) => linesOf(setting, text, { widthPt })),
    ...flowingTicks(setting, step.ticks, widthPt),
  ];
  const after = [...tallyLines(setting, step.tally, widthPt), space(5)];
  const whole = [...before, ...grid.flatMap(linesOfPart), ...after];
  if (highOf(whole) <= wholeRoom) {
    if (highOf(whole) + keep > room && highOf(whole) + keep <= wholeRoom) newPage();
    draw(whole);
    return;
  }
  draw(before);
  for (const part of grid) draw(linesOfPart(part), () => draw(part.head));
  draw(after);
}

// Helpers

const linesOfPart = ({ head, rows }: GridPart): readonly SetLine[] => [...head, ...rows];

/** Squares with their words, one after the other as words of a text are. */
function flowingTicks(setting: Setting, ticks: readonly string[], widthPt: number): readonly SetLine[] {
  const rows: Column[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const text of ticks) {
    const size = TEXT * setting.closeness.type;
    const wide = Math.min(setting.lettering.measure(text, { size }) + 0.5, widthPt - BEFORE);
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
