import { type PDFPage, rgb } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Block, Drawing, DrawnGoods } from '@/lib/papers/paper';
import { noteLines } from './drawNotes';
import { type PlacedPrint, placeDrawing } from './outlines';
import {
  beside,
  type Column,
  drawColumns,
  GREY,
  gap,
  gapHigh,
  INK,
  linesOf,
  PALE,
  type Setting,
  SMALL,
  widthOf,
} from './setting';

const WHITE = rgb(1, 1, 1);
const LABEL = 8;
/** Room of a measure with its figure beneath a print. */
const MEASURE = 20;
/** Between drawings. */
const APART = 14;
/** Drawings side by side. */
const ACROSS = 2;

interface DrawingRoom {
  readonly wide: number;
  readonly high: number;
}

const rooms: Readonly<Record<'small' | 'large', DrawingRoom>> = {
  small: { wide: 116, high: 114 },
  large: { wide: 248, high: 222 },
};

/** What is made, drawn with its prints, and told beside it; on a sheet to approve the drawings are large. */
export function drawGoods(setting: Setting, { goods, isLarge }: Extract<Block, { kind: 'goods' }>): void {
  for (const one of goods) {
    const room = roomIn(setting, isLarge ? 'large' : 'small');
    if (isLarge && one.drawings.length > 1) drawLarge(setting, one, room);
    else drawBeside(setting, one, room);
  }
  setting.flow.goTo(setting.flow.y - gapHigh(setting, 4));
}

function drawBeside(setting: Setting, goods: DrawnGoods, room: DrawingRoom): void {
  const whole = widthOf(setting);
  const { wide } = room;
  const across = Math.min(ACROSS, goods.drawings.length);
  const at = across === 0 ? 0 : across * (wide + APART) + 16;
  const widthPt = whole - at;
  const drawn = drawingRows(setting, goods.drawings, at, room);
  drawColumns(setting, [
    { at: 0, widthPt: at, lines: drawn },
    { at, widthPt, lines: [gap(setting, 8), ...wordsOf(setting, goods, widthPt), gap(setting, 8)] },
  ]);
}

function roomIn({ closeness }: Setting, size: keyof typeof rooms): DrawingRoom {
  const { wide, high } = rooms[size];
  return { wide: wide * closeness.drawings, high: high * closeness.drawings };
}

function drawLarge(setting: Setting, goods: DrawnGoods, room: DrawingRoom): void {
  const widthPt = widthOf(setting);
  const drawn = drawingRows(setting, goods.drawings, widthPt, room);
  drawColumns(setting, [
    {
      at: 0,
      widthPt,
      lines: [...drawn, gap(setting, 6), ...wordsOf(setting, goods, widthPt), gap(setting, 10)],
    },
  ]);
}

function wordsOf(
  setting: Setting,
  { heading, lines, prints }: DrawnGoods,
  widthPt: number,
): readonly SetLine[] {
  return [
    ...linesOf(setting, heading, { widthPt, size: 10.5, weight: 700 }),
    ...lines.flatMap((text) => linesOf(setting, text, { widthPt, size: 9 })),
    gap(setting, 4),
    ...prints.flatMap((note) => [...noteLines(setting, note, widthPt, '\n'), gap(setting, 3)]),
  ];
}

/** Drawings in rows of two, as lines of a column that are as high as a drawing. */
export function drawingRows(
  setting: Setting,
  drawings: readonly Drawing[],
  widthPt: number,
  room: DrawingRoom,
): readonly SetLine[] {
  const rows: SetLine[] = [];
  for (let from = 0; from < drawings.length; from += ACROSS) {
    const row = drawings.slice(from, from + ACROSS).map(
      (drawing, at): Column => ({
        at: at * (room.wide + APART),
        widthPt: room.wide,
        lines: [drawingLine(setting, drawing, room)],
      }),
    );
    rows.push(...beside(setting, widthPt, row));
  }
  return rows;
}

function drawingLine(setting: Setting, drawing: Drawing, room: DrawingRoom): SetLine {
  const placed = placeDrawing(drawing);
  // Beneath what is no shirt the measure stands below the outline.
  const under = drawing.shape === 'front' || drawing.shape === 'back' ? 0 : MEASURE;
  const scale = Math.min(room.wide / (2 * placed.halfWidthMm), (room.high - under) / placed.heightMm);
  // A measure may lie below the hem.
  const measured = placed.prints.map(({ print, yMm }) => (yMm + print.heightMm) * scale + MEASURE);
  const drawnHigh = Math.max(placed.heightMm * scale, ...measured);
  const caption = linesOf(setting, drawing.caption, {
    widthPt: room.wide,
    size: SMALL,
    align: 'centre',
    colour: GREY,
  });
  return {
    high: drawnHigh + 12 + caption.reduce((sum, { high }) => sum + high, 0),
    draw(page, { x, top }) {
      const middle = x + room.wide / 2;
      const at = { middle, top: top - 4, scale, left: x, right: x + room.wide };
      placed.paths.forEach((path, place) => {
        page.drawSvgPath(path, {
          x: middle,
          y: at.top,
          scale: scale * placed.grown,
          borderColor: INK,
          // The path is scaled with its line.
          borderWidth: (place === 0 ? 1.4 : 0.6) / (scale * placed.grown),
        });
      });
      const taken: Taken[] = [];
      for (const print of placed.prints) drawPrint(setting, page, print, at, taken);
      let low = at.top - drawnHigh - 3;
      for (const line of caption) {
        line.draw(page, { x, top: low });
        low -= line.high;
      }
    },
  };
}

interface DrawingPlace {
  readonly middle: number;
  readonly top: number;
  /** Points to a millimetre. */
  readonly scale: number;
  readonly left: number;
  readonly right: number;
}

interface Taken {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly top: number;
}

/** A print where it will be, to scale, its picture in it, and a measure with its printed size beneath. */
function drawPrint(
  setting: Setting,
  page: PDFPage,
  { print, xMm, yMm }: PlacedPrint,
  at: DrawingPlace,
  taken: Taken[],
): void {
  const { lettering } = setting;
  const width = print.widthMm * at.scale;
  const height = print.heightMm * at.scale;
  const x = at.middle + xMm * at.scale - width / 2;
  const top = at.top - yMm * at.scale;
  const picture = setting.pictureOf(print.picture);
  if (picture !== null) picture.draw(page, { x, y: top - height, width, height });
  else drawEmpty(setting, page, print.name, { x, top, width, height });
  taken.push({ left: x, right: x + width, low: top - height, top });
  const y = top - height - 5;
  const wide = lettering.measure(print.size, { size: LABEL });
  const labelX = Math.min(Math.max(x + width / 2 - wide / 2, at.left), at.right - wide);
  const box = { left: labelX - 1, right: labelX + wide + 1, low: y - 13, top: y - 2 };
  // The size stands in the words beside the drawing as well: two figures in one place would say nothing.
  if (taken.slice(0, -1).some((other) => overlap(other, box))) return;
  page.drawLine({ start: { x, y }, end: { x: x + width, y }, thickness: 0.7, color: INK });
  for (const end of [x, x + width])
    page.drawLine({ start: { x: end, y: y - 2.5 }, end: { x: end, y: y + 2.5 }, thickness: 0.7, color: INK });
  page.drawRectangle({ x: box.left, y: box.low + 1, width: box.right - box.left, height: 9.5, color: WHITE });
  lettering.drawLine(page, print.size, { x: labelX, y: y - 10.5, size: LABEL });
  taken.push(box);
}

const overlap = (a: Taken, b: Taken): boolean =>
  a.left < b.right && b.left < a.right && a.low < b.top && b.low < a.top;

/** Where no picture can be shown its place stays, with its name where that finds room. */
function drawEmpty(
  setting: Setting,
  page: PDFPage,
  name: string,
  { x, top, width, height }: { x: number; top: number; width: number; height: number },
): void {
  page.drawRectangle({
    x,
    y: top - height,
    width,
    height,
    borderColor: PALE,
    borderWidth: 0.8,
    borderDashArray: [2, 2],
  });
  const lines = linesOf(setting, name, { widthPt: Math.max(1, width - 4), size: LABEL, align: 'centre' });
  const high = lines.reduce((sum, line) => sum + line.high, 0);
  const longest = Math.max(
    0,
    ...name.split(/\s+/).map((word) => setting.lettering.measure(word, { size: LABEL })),
  );
  if (high > height - 4 || longest > width - 4) return;
  let low = top - (height - high) / 2;
  for (const line of lines) {
    line.draw(page, { x: x + 2, top: low });
    low -= line.high;
  }
}
