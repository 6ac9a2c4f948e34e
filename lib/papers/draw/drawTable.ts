import { rgb } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Row, Sum, TableBlock } from '@/lib/papers/paper';
import { tickLines, ticksWide } from './drawTicks';
import {
  type Column,
  drawColumns,
  GREY,
  gap,
  gapHigh,
  highOf,
  INK,
  linesOf,
  type Setting,
  SMALL,
  space,
  TEXT,
  widthOf,
} from './setting';

const GAP = 14;
const PAD = 2.8;
/** So that columns of short figures do not stand on each other's heads. */
const LEAST = 44;
const looks = {
  plain: { size: TEXT, weight: 400 },
  strong: { size: 11, weight: 700 },
  total: { size: 14, weight: 700 },
} as const;
/** A column of figures takes no more of the page than this; what is longer goes on in its next line. */
const MOST = 0.3;
/** A row that is filled by hand, as on ruled paper. */
const TO_FILL = 24;
/** Of the page's width, for a note beside the sums. */
const NOTE = 0.36;

interface Place {
  readonly at: number;
  readonly widthPt: number;
  readonly isFigure: boolean;
}

/**
 * A table whose head stands on every page. No row is parted from its own lines, none that names others from the first
 * of them, and the sums stand with the last row: alone at the top of a page they would say nothing.
 */
export function drawTable(setting: Setting, { columns, rows, sums, note, shares }: TableBlock): void {
  const { flow } = setting;
  const places =
    shares === undefined ? placesOf(setting, columns, rows, sums) : sharedPlaces(setting, columns, shares);
  const head = headOf(setting, columns, places);
  const set = rows.map((row) => ({
    row,
    columns: roomy(setRow(setting, row, places), shares === undefined ? 0 : TO_FILL),
  }));
  const under = sumRows(setting, sums, places, note);
  const headHigh = highest(head) + 3;
  const underHigh = under.reduce((sum, one) => sum + highest(one.columns), 0);
  const needs = (at: number): number => {
    const one = set[at];
    if (one === undefined) return underHigh;
    const isLast = at === set.length - 1;
    const after = isLast ? underHigh : one.row.kind === 'group' ? needs(at + 1) : 0;
    return highest(one.columns) + after;
  };
  const drawHead = () => {
    drawColumns(setting, head);
    line(setting, 1.1, INK);
    flow.goTo(flow.y - gapHigh(setting, 3));
  };
  const isTooMuch = (high: number) => high > flow.room && high <= flow.wholeRoom - headHigh;
  if (isTooMuch(headHigh + needs(0))) flow.newPage();
  drawHead();
  set.forEach(({ row, columns: cells }, at) => {
    if (at > 0 && isTooMuch(needs(at))) {
      flow.newPage();
      drawHead();
    }
    drawColumns(setting, cells, drawHead);
    if (row.kind === 'row') line(setting, 0.5, rgb(0.75, 0.75, 0.75));
  });
  for (const { columns: cells, isTotal } of under) {
    if (isTotal) line(setting, 1.1, INK);
    drawColumns(setting, cells);
  }
  flow.goTo(flow.y - gapHigh(setting, 8));
}

// Helpers

const highest = (columns: readonly Column[]): number =>
  Math.max(0, ...columns.map(({ lines }) => highOf(lines)));

function line({ flow }: Setting, thickness: number, color: ReturnType<typeof rgb>): void {
  const { page, left, right, y } = flow;
  page.drawLine({ start: { x: left, y }, end: { x: right, y }, thickness, color });
}

/** Figures take the room of the widest, the first column of words what is left. */
function placesOf(
  { lettering, ...rest }: Setting,
  columns: TableBlock['columns'],
  rows: readonly Row[],
  sums: readonly Sum[],
): readonly Place[] {
  const whole = widthOf({ lettering, ...rest });
  const cellsOf = (at: number) => rows.flatMap((row) => (row.kind === 'row' ? [row.cells[at] ?? ''] : []));
  const wide = columns.map(({ head, isFigure }, at) => {
    const cells = cellsOf(at);
    const last = at === columns.length - 1;
    const natural = Math.max(
      lettering.measure(head, { size: SMALL, weight: 700 }),
      ...cells.map((cell) =>
        typeof cell === 'string' ? lettering.measure(cell, { size: TEXT }) : ticksWide(cell.ticks),
      ),
      ...(last ? sums.map(({ value, look }) => lettering.measure(value, looks[look ?? 'plain'])) : []),
    );
    return { isFigure, natural: Math.min(Math.max(natural + 0.5, isFigure ? LEAST : 0), whole * MOST) };
  });
  const gaps = GAP * (columns.length - 1);
  const figures = wide.reduce((sum, { isFigure, natural }) => sum + (isFigure ? natural : 0), 0);
  const words = wide.filter(({ isFigure }) => !isFigure);
  const wanted = words.reduce((sum, { natural }) => sum + natural, 0);
  const free = whole - gaps - figures;
  let at = 0;
  return wide.map(({ isFigure, natural }) => {
    const widthPt = isFigure ? natural : (free * natural) / Math.max(1, wanted);
    const place = { at, widthPt, isFigure };
    at += widthPt + GAP;
    return place;
  });
}

/** Nothing that is written decides the width of what is to be filled. */
function sharedPlaces(
  setting: Setting,
  columns: TableBlock['columns'],
  shares: readonly number[],
): readonly Place[] {
  const free = widthOf(setting) - GAP * (columns.length - 1);
  let at = 0;
  return columns.map(({ isFigure }, column) => {
    const widthPt = free * (shares[column] ?? 0);
    const place = { at, widthPt, isFigure };
    at += widthPt + GAP;
    return place;
  });
}

/** Columns of a row that is no lower than asked, its words at the foot. */
function roomy(columns: readonly Column[], leastHigh: number): readonly Column[] {
  const missing = leastHigh - highest(columns);
  return missing <= 0
    ? columns
    : columns.map((column) => ({ ...column, lines: [space(missing), ...column.lines] }));
}

function headOf(
  setting: Setting,
  columns: TableBlock['columns'],
  places: readonly Place[],
): readonly Column[] {
  return places.map((place, at) => ({
    ...place,
    lines: [
      ...linesOf(setting, columns[at]?.head ?? '', {
        widthPt: place.widthPt,
        size: SMALL,
        weight: 700,
        colour: GREY,
        align: place.isFigure ? 'end' : 'start',
      }),
      gap(setting, 3),
    ],
  }));
}

function setRow(setting: Setting, row: Row, places: readonly Place[]): readonly Column[] {
  const padded = (lines: readonly SetLine[]) => [gap(setting, PAD), ...lines, gap(setting, PAD)];
  const noteOf = (widthPt: number) =>
    linesOf(setting, row.note ?? '', { widthPt, size: SMALL, colour: GREY, isTyped: true });
  if (row.kind === 'group') {
    const widthPt = widthOf(setting);
    return [
      {
        at: 0,
        widthPt,
        lines: [
          gap(setting, PAD + 2),
          ...linesOf(setting, row.text, { widthPt, weight: 700 }),
          ...noteOf(widthPt),
          gap(setting, 1),
        ],
      },
    ];
  }
  return places.map((place, at) => {
    const { widthPt } = place;
    const cell = row.cells[at] ?? '';
    const align = place.isFigure ? 'end' : 'start';
    const lines =
      typeof cell === 'string'
        ? linesOf(setting, cell, { widthPt, align })
        : tickLines(setting, widthPt, cell.ticks);
    return { ...place, lines: padded(at === 0 ? [...lines, ...noteOf(widthPt)] : lines) };
  });
}

/** The value in the last column, what it is in all before it; a note where the first of them begins. */
function sumRows(
  setting: Setting,
  sums: readonly Sum[],
  places: readonly Place[],
  note: string,
): readonly { readonly columns: readonly Column[]; readonly isTotal: boolean }[] {
  const last = places.at(-1);
  if (last === undefined) return [];
  const noteWide = NOTE * widthOf(setting);
  const noted = linesOf(setting, note, { widthPt: noteWide, size: SMALL, colour: GREY });
  return sums.map((sum, at) => {
    const look = sum.look ?? 'plain';
    const isTotal = look === 'total';
    const style = { align: 'end', ...looks[look] } as const;
    const around = isTotal ? 5 : 1.8;
    const padded = (lines: readonly SetLine[]) => [
      gap(setting, at === 0 ? 4 : around),
      ...lines,
      gap(setting, around),
    ];
    const nameAt = at === 0 && noted.length > 0 ? noteWide + GAP : 0;
    const widthPt = last.at - GAP - nameAt;
    return {
      isTotal,
      columns: [
        ...(nameAt === 0 ? [] : [{ at: 0, widthPt: noteWide, lines: padded(noted) }]),
        { at: nameAt, widthPt, lines: padded(linesOf(setting, sum.name, { ...style, widthPt })) },
        { ...last, lines: padded(linesOf(setting, sum.value, { ...style, widthPt: last.widthPt })) },
      ],
    };
  });
}
