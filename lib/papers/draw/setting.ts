import { rgb } from '@cantoo/pdf-lib';
import type { Colour } from '@/lib/lettering/foreignType';
import type { Lettering, SetLine } from '@/lib/lettering/openLettering';
import type { Flow } from '@/lib/papers/flowPages';
import type { DrawPicture } from './placePicture';

/** What blocks are drawn with. Distances across a page are counted from where its lines begin: `at`. */
export interface Setting {
  readonly flow: Flow;
  readonly lettering: Lettering;
  readonly isRightToLeft: boolean;
  readonly closeness: Closeness;
  /** Null where no picture can be shown. */
  readonly pictureOf: (id: string | null) => DrawPicture | null;
}

/** How close everything on a page stands. */
interface Closeness {
  /** Of the size that a text has by itself. */
  readonly type: number;
  readonly leading: number;
  /** Of gaps, and of the room of small drawings. */
  readonly gaps: number;
  readonly drawings: number;
  /** How much nearer to the edges of the page than usual, in points. */
  readonly nearer: number;
}

/** Fixed, so that one body always gives one file. */
export const closenesses = {
  normal: { type: 1, leading: 1.35, gaps: 1, drawings: 1, nearer: 0 },
  tight: { type: 0.89, leading: 1.25, gaps: 0.6, drawings: 0.85, nearer: 8 },
} as const satisfies Record<string, Closeness>;

/** No text of a paper is set smaller than this, however close it stands. */
const LEAST_TYPE = 8;

export const INK = rgb(0, 0, 0);
export const PALE = rgb(0.62, 0.62, 0.62);
export const GREY: Colour = [0.3, 0.3, 0.3];

/** Size of the text, and of what is less than it. */
export const TEXT = 9.5;
export const SMALL = 8.5;

interface TextStyle {
  readonly widthPt: number;
  readonly size?: number;
  readonly weight?: 400 | 700;
  readonly colour?: Colour;
  readonly align?: 'start' | 'end' | 'centre';
  readonly leading?: number;
  readonly lead?: string;
  /** Whether its lines are those that were typed. */
  readonly isTyped?: boolean;
}

/**
 * @returns a text in lines, at the side where lines of the page begin unless told otherwise; none of an empty text. A name
 * that somebody typed in several lines is set in one, for it could take a whole page.
 */
export function linesOf(
  { lettering, isRightToLeft, closeness }: Setting,
  text: string,
  { align = 'start', size = TEXT, isTyped = false, ...style }: TextStyle,
): readonly SetLine[] {
  const set = isTyped ? text : inOneLine(text);
  if (set === '') return [];
  const side = align === 'centre' ? align : (align === 'start') === isRightToLeft ? 'right' : 'left';
  return lettering.setParagraph(set, {
    leading: closeness.leading,
    ...style,
    size: Math.max(LEAST_TYPE, size * closeness.type),
    align: side,
  });
}

export const inOneLine = (text: string): string => text.trim().replaceAll(/[\r\n\u0085\u2028\u2029]+/g, ' ');

/** Room between lines, as high as it says. */
export const space = (high: number): SetLine => ({ high, draw: () => undefined });

/** Room between parts, less where everything stands closer. */
export const gap = (setting: Setting, high: number): SetLine => space(gapHigh(setting, high));

export const gapHigh = ({ closeness }: Setting, high: number): number => high * closeness.gaps;

export const highOf = (lines: readonly SetLine[]): number => lines.reduce((sum, { high }) => sum + high, 0);

/** Lines one below the other, within a width that begins at a place of the page. */
export interface Column {
  readonly at: number;
  readonly widthPt: number;
  readonly lines: readonly SetLine[];
}

/** @returns the left edge of what begins at a place and is so wide. */
export const leftOf = ({ flow, isRightToLeft }: Setting, at: number, widthPt: number): number =>
  isRightToLeft ? flow.right - at - widthPt : flow.left + at;

export const widthOf = ({ flow }: Setting): number => flow.right - flow.left;

/** Columns side by side as lines that hold one of each, to stand in a column themselves. */
export function beside(
  { isRightToLeft }: Setting,
  widthPt: number,
  columns: readonly Column[],
): readonly SetLine[] {
  const count = Math.max(0, ...columns.map(({ lines }) => lines.length));
  return Array.from({ length: count }, (_, place) => ({
    high: Math.max(...columns.map(({ lines }) => lines[place]?.high ?? 0)),
    draw(page, { x, top }) {
      for (const column of columns) {
        const left = isRightToLeft ? x + widthPt - column.at - column.widthPt : x + column.at;
        column.lines[place]?.draw(page, { x: left, top });
      }
    },
  }));
}

/**
 * Draws columns side by side: on this page, on the next where they do not fit, and over several where they are longer
 * than a page.
 *
 * @param onPage draws what each new page begins with
 */
export function drawColumns(
  setting: Setting,
  columns: readonly Column[],
  onPage: () => void = () => undefined,
): void {
  const { flow } = setting;
  const begin = () => {
    flow.newPage();
    onPage();
  };
  const high = Math.max(0, ...columns.map(({ lines }) => highOf(lines)));
  if (high > flow.room && high <= flow.wholeRoom) begin();
  let rest = columns;
  let isFresh = false;
  while (rest.some(({ lines }) => lines.length > 0)) {
    const parts = rest.map((column) => ({ column, fitting: fittingIn(column.lines, flow.room) }));
    const isStuck = parts.every(({ fitting }) => fitting === 0);
    // What does not fit on an empty page is drawn all the same: it would not on any.
    if (!isStuck || isFresh) {
      const least = isStuck ? 1 : 0;
      drawParts(
        setting,
        parts.map(({ column, fitting }) => ({
          ...column,
          lines: column.lines.slice(0, Math.max(least, fitting)),
        })),
      );
      rest = parts.map(({ column, fitting }) => ({
        ...column,
        lines: column.lines.slice(Math.max(least, fitting)),
      }));
    }
    if (rest.every(({ lines }) => lines.length === 0)) return;
    begin();
    isFresh = true;
  }
}

function drawParts(setting: Setting, columns: readonly Column[]): void {
  const { flow } = setting;
  let low = flow.y;
  for (const { at, widthPt, lines } of columns) {
    const x = leftOf(setting, at, widthPt);
    let top = flow.y;
    for (const line of lines) {
      line.draw(flow.page, { x, top });
      top -= line.high;
    }
    low = Math.min(low, top);
  }
  flow.goTo(low);
}

/** @returns how many lines find room one below the other. */
function fittingIn(lines: readonly SetLine[], room: number): number {
  let used = 0;
  const at = lines.findIndex(({ high }) => {
    used += high;
    return used > room + 0.01;
  });
  return at < 0 ? lines.length : at;
}
