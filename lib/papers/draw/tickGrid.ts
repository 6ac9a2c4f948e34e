import type { SetLine } from '@/lib/lettering/openLettering';
import type { TickGrid } from '@/lib/papers/paper';
import { BEFORE, TICK_SIDE, tickedLines } from './drawTicks';
import { beside, GREY, linesOf, type Setting, SMALL, space, TEXT } from './setting';

/** As many columns of a grid as stand side by side, and what names them. */
export interface GridPart {
  readonly head: readonly SetLine[];
  readonly rows: readonly SetLine[];
}

/** Of the width, for the names at the beginning of the rows. */
const NAMES = 0.3;
const GAP = 14;
/** From a column to the next. */
const APART = 3;
/** Between a square and its figure where many columns share the page. */
const CLOSE = TICK_SIDE + 3;
/** Names of columns are broken beyond this. */
const MOST_HEAD = 60;

/**
 * Squares to tick in columns with a name each, in as many parts below each other as it takes: a figure that went on in
 * its next line would be read as two.
 */
export function tickGrid(setting: Setting, grid: TickGrid, widthPt: number): readonly GridPart[] {
  const { heads, last, rows } = grid;
  const free = widthPt * (1 - NAMES);
  const inOne = free / (heads.length + 1);
  const before = wideOf(setting, grid, BEFORE) <= inOne ? BEFORE : CLOSE;
  // The sums stand beside the last part, so a place for them is kept in each.
  const most = Math.max(1, Math.floor(free / wideOf(setting, grid, before)) - 1);
  const parts = Math.ceil(heads.length / most);
  const inPart = Math.ceil(heads.length / Math.max(1, parts));
  return Array.from({ length: parts }, (_, part) => {
    const [from, to] = [part * inPart, (part + 1) * inPart];
    const isLast = part === parts - 1;
    return partOf(
      setting,
      {
        heads: heads.slice(from, to),
        last: isLast ? last : '',
        rows: rows.map((row) => ({
          name: row.name,
          ticks: row.ticks.slice(from, to),
          last: isLast ? row.last : '',
        })),
      },
      { widthPt, wide: free / (inPart + 1), before },
    );
  });
}

// Helpers

/** @returns the room that a column takes, so that no figure and no word of its name is broken. */
function wideOf({ lettering }: Setting, { heads, last, rows }: TickGrid, before: number): number {
  const wide = (texts: readonly string[], size: number) =>
    Math.max(0, ...texts.map((text) => lettering.measure(text, { size })));
  const words = [...heads, last].flatMap((text) => text.split(/\s+/));
  return (
    Math.max(
      before +
        wide(
          rows.flatMap(({ ticks }) => ticks),
          TEXT,
        ),
      wide(
        rows.map((row) => row.last),
        TEXT,
      ),
      Math.min(MOST_HEAD, wide(words, SMALL)),
    ) +
    APART +
    0.5
  );
}

function partOf(
  setting: Setting,
  { heads, last, rows }: TickGrid,
  { widthPt, wide, before }: { readonly widthPt: number; readonly wide: number; readonly before: number },
): GridPart {
  const names = widthPt * NAMES;
  const cell = wide - APART;
  const placed = (cells: readonly (readonly SetLine[])[]) =>
    beside(
      setting,
      widthPt,
      cells.map((lines, at) =>
        at === 0
          ? { at: 0, widthPt: names - GAP, lines }
          : { at: names + (at - 1) * wide, widthPt: cell, lines },
      ),
    );
  const head = { widthPt: cell, size: SMALL, colour: GREY };
  return {
    head: placed([[], ...[...heads, last].map((text) => linesOf(setting, text, head))]),
    rows: rows.flatMap((row) => {
      const lines = placed([
        linesOf(setting, row.name, { widthPt: names - GAP }),
        ...row.ticks.map((text) => (text === '' ? [] : tickedLines(setting, cell, text, before))),
        linesOf(setting, row.last, { widthPt: cell }),
      ]);
      // A name of two lines is kept apart from the next.
      return lines.length > 1 ? [...lines, space(3)] : lines;
    }),
  };
}
