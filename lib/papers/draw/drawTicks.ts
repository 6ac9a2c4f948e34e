import type { PDFPage } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block } from '@/lib/papers/paper';
import {
  beside,
  type Column,
  drawColumns,
  gap,
  highOf,
  INK,
  linesOf,
  PALE,
  type Setting,
  widthOf,
} from './setting';

/** Of a square to tick. */
export const TICK_SIDE = 9;
const HIGH = 12.8;

/** Before the words of what is ticked. */
export const BEFORE = 18;

/** From one square to the next. */
const PITCH = 13;

/** @returns the room of so many squares side by side. */
export const ticksWide = (count: number): number => TICK_SIDE + PITCH * Math.max(0, count - 1) + 1;

/** Squares to tick in a column, in as many lines as they take. */
export const tickLines = (setting: Setting, widthPt: number, count = 1): readonly SetLine[] =>
  squareLines(setting, widthPt, { count, draw: tick });

/** Squares for what is spoiled: hatched, so that they are not taken for those of good ones. */
export const scrapLines = (setting: Setting, widthPt: number, count: number): readonly SetLine[] =>
  squareLines(setting, widthPt, { count, draw: scrap });

interface Squares {
  readonly count: number;
  readonly draw: (page: PDFPage, x: number, top: number) => void;
}

function squareLines(
  { isRightToLeft }: Setting,
  widthPt: number,
  { count, draw: drawOne }: Squares,
): readonly SetLine[] {
  const inLine = Math.max(1, Math.floor((widthPt + PITCH - TICK_SIDE) / PITCH));
  return Array.from({ length: Math.ceil(count / inLine) }, (_, line) => ({
    high: HIGH,
    draw(page, { x, top }) {
      for (let at = 0; at < Math.min(inLine, count - line * inLine); at += 1) {
        const from = at * PITCH;
        drawOne(page, isRightToLeft ? x + widthPt - TICK_SIDE - from : x + from, top - 2);
      }
    },
  }));
}

/**
 * A square to tick with its words beside it.
 *
 * @param before from the edge of the square to its words, points
 */
export const tickedLines = (
  setting: Setting,
  widthPt: number,
  text: string,
  before: number = BEFORE,
): readonly SetLine[] =>
  beside(setting, widthPt, [
    { at: 0, widthPt: TICK_SIDE, lines: tickLines(setting, TICK_SIDE) },
    { at: before, widthPt: widthPt - before, lines: linesOf(setting, text, { widthPt: widthPt - before }) },
  ]);

/** A square to tick. @param top its upper edge */
function tick(page: PDFPage, x: number, top: number): void {
  page.drawRectangle({
    x,
    y: top - TICK_SIDE,
    width: TICK_SIDE,
    height: TICK_SIDE,
    borderColor: INK,
    borderWidth: 0.8,
  });
}

/** A hatched square. @param top its upper edge */
function scrap(page: PDFPage, x: number, top: number): void {
  page.drawRectangle({
    ...{ x, y: top - TICK_SIDE, width: TICK_SIDE, height: TICK_SIDE },
    borderColor: INK,
    borderWidth: 0.8,
    borderDashArray: [1.8, 1.2],
  });
  for (const [left, right] of [
    [0, 0.5],
    [0, 1],
    [0.5, 1],
  ] as const) {
    const start = {
      x: x + left * TICK_SIDE,
      y: top - TICK_SIDE + (left === 0 && right < 1 ? TICK_SIDE / 2 : 0),
    };
    const end = { x: x + right * TICK_SIDE, y: top - (left > 0 ? TICK_SIDE / 2 : 0) };
    page.drawLine({ start, end, thickness: 0.5, color: INK });
  }
}

const SHORT_COLUMNS = 3;

/**
 * Answers to tick, with lines to write on beneath those that want words; short ones stand three in a row.
 *
 * @param keep room that is wanted beneath
 */
export function drawTicks(
  setting: Setting,
  { answers, about = [] }: Extract<Block, { kind: 'ticks' }>,
  keep: number,
): void {
  const { flow } = setting;
  const inRow = answers.every(({ lines }) => lines === 0) ? SHORT_COLUMNS : 1;
  const wide = widthOf(setting) / inRow;
  const widthPt = wide - BEFORE - (inRow > 1 ? TICK_SIDE : 0);
  const set = answers.map(({ text, lines }) => [
    ...linesOf(setting, text, { widthPt }),
    ...Array.from({ length: lines }, () => writingLine(widthPt)),
    gap(setting, 5),
  ]);
  const all = set.reduce((sum, lines) => sum + highOf(lines), keep);
  const again = aboutLines(setting, about);
  const isApart = flow.pages.length > 1 || all > flow.room;
  const whole = all + (isApart ? highOf(again) : 0);
  if (inRow === 1 && whole > flow.room && all <= flow.wholeRoom) flow.newPage();
  if (isApart) drawColumns(setting, [{ at: 0, widthPt: widthOf(setting), lines: again }]);
  for (let from = 0; from < set.length; from += inRow) {
    const row = set.slice(from, from + inRow).flatMap((lines, at): readonly Column[] => [
      { at: at * wide, widthPt: TICK_SIDE, lines: tickLines(setting, TICK_SIDE) },
      { at: at * wide + BEFORE, widthPt, lines },
    ]);
    drawColumns(setting, row);
  }
}

/** @returns what answers are about, a part below the other. */
function aboutLines(
  setting: Setting,
  about: NonNullable<Extract<Block, { kind: 'ticks' }>['about']>,
): readonly SetLine[] {
  const widthPt = widthOf(setting);
  return about.flatMap(({ heading, lines }) => [
    ...linesOf(setting, heading, { widthPt, weight: 700 }),
    ...lines.flatMap((text) => linesOf(setting, text, { widthPt })),
    gap(setting, 5),
  ]);
}

const writingLine = (widthPt: number): SetLine => ({
  high: 20,
  draw: (page, { x, top }) =>
    page.drawLine({
      start: { x, y: top - 18 },
      end: { x: x + widthPt, y: top - 18 },
      thickness: 0.5,
      color: PALE,
    }),
});
