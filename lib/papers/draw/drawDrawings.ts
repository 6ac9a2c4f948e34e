import { type PDFPage, rgb } from '@cantoo/pdf-lib';
import type { SetLine } from '@/lib/lettering/openLettering';
import type { Drawing, DrawnPrint } from '@/lib/papers/paper';
import { drawMarkF } from './drawMarkF';
import { type PlacedDrawing, type PlacedPrint, placeDrawing } from './outlines';
import { LABEL, MEASURE, type Measure, placeMeasures } from './placeMeasures';
import { beside, type Column, GREY, highOf, INK, linesOf, PALE, type Setting, SMALL } from './setting';

const WHITE = rgb(1, 1, 1);
/** Between drawings. */
export const APART = 14;
/** More than two digits take. */
const MARK_WIDE = 20;
/** Drawings side by side. */
export const ACROSS = 2;

/** Of one drawing, in points. */
export interface DrawingRoom {
  readonly wide: number;
  readonly high: number;
}

interface InRows {
  readonly room: DrawingRoom;
  /** Whether each stands in the middle of its half, and not next to the other. */
  readonly isSpread?: boolean;
  /** Whether prints bear their numbers. */
  readonly isNumbered?: boolean;
}

/** Drawings in rows of two, as lines of a column that are as high as a drawing. */
export function drawingRows(
  setting: Setting,
  drawings: readonly Drawing[],
  widthPt: number,
  { room, isSpread = false, isNumbered = false }: InRows,
): readonly SetLine[] {
  const half = (widthPt - APART) / ACROSS;
  const [step, first] = isSpread ? [half + APART, (half - room.wide) / 2] : [room.wide + APART, 0];
  const rows: SetLine[] = [];
  for (let from = 0; from < drawings.length; from += ACROSS) {
    const row = drawings.slice(from, from + ACROSS).map(
      (drawing, at): Column => ({
        at: first + at * step,
        widthPt: room.wide,
        lines: [drawingLine(setting, drawing, room, isNumbered)],
      }),
    );
    rows.push(...beside(setting, widthPt, row));
  }
  return rows;
}

function drawingLine(setting: Setting, drawing: Drawing, room: DrawingRoom, isNumbered: boolean): SetLine {
  const placed = placeDrawing(drawing);
  const scale = scaleOf(drawing, placed, room);
  const measures = placeMeasures(
    (text) => setting.lettering.measure(text, { size: LABEL }),
    drawing,
    placed,
    { scale, wide: room.wide },
  );
  // A measure may lie below the hem.
  const measured = measures.map(({ y }) => y - 5 + MEASURE);
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
      const at = { middle, top: top - 4, scale, wide: room.wide, isNumbered };
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
      for (const print of placed.prints) drawPrint(setting, page, print, at);
      for (const measure of measures) drawMeasure(setting, page, measure, at);
      let low = at.top - drawnHigh - 3;
      for (const line of caption) {
        line.draw(page, { x, top: low });
        low -= line.high;
      }
    },
  };
}

/** Points to a millimetre. */
function scaleOf({ shape }: Drawing, placed: PlacedDrawing, room: DrawingRoom): number {
  // Beneath what is no shirt the measure stands below the outline.
  const under = shape === 'front' || shape === 'back' ? 0 : MEASURE;
  return Math.min(room.wide / (2 * placed.halfWidthMm), (room.high - under) / placed.heightMm);
}

/** Whether a print that could be taken for another shows neither its picture nor its name in its place. */
export function isMarkNeeded(setting: Setting, drawing: Drawing, room: DrawingRoom): boolean {
  const scale = scaleOf(drawing, placeDrawing(drawing), room);
  return drawing.prints.some(
    (print) =>
      print.mark !== undefined &&
      setting.pictureOf(print.picture) === null &&
      nameLines(setting, print.name, sizeAt(print, scale)) === null,
  );
}

const sizeAt = ({ widthMm, heightMm }: DrawnPrint, scale: number) => ({
  width: widthMm * scale,
  height: heightMm * scale,
});

interface DrawingPlace {
  readonly middle: number;
  readonly top: number;
  /** Points to a millimetre. */
  readonly scale: number;
  /** Room of the drawing, which nothing leaves. */
  readonly wide: number;
  readonly isNumbered: boolean;
}

/** A print where it will be, to scale, its picture in it. */
function drawPrint(
  setting: Setting,
  page: PDFPage,
  { print, xMm, yMm }: PlacedPrint,
  at: DrawingPlace,
): void {
  const width = print.widthMm * at.scale;
  const height = print.heightMm * at.scale;
  const x = at.middle + xMm * at.scale - width / 2;
  const top = at.top - yMm * at.scale;
  const picture = setting.pictureOf(print.picture);
  if (picture === null) drawEmpty(setting, page, print, { x, top, width, height }, at);
  else {
    picture.draw(page, { x, y: top - height, width, height });
    if (at.isNumbered) drawMark(setting, page, print, { x, top }, at);
  }
}

/** The number of a print whose picture fills its place: at its upper corner, over the picture where nothing is free. */
function drawMark(
  { lettering }: Setting,
  page: PDFPage,
  { mark = '' }: DrawnPrint,
  { x, top }: { readonly x: number; readonly top: number },
  { middle, wide }: DrawingPlace,
): void {
  const style = { size: LABEL, weight: 700 } as const;
  const width = lettering.measure(mark, style) + 2;
  const left = Math.max(x - width - 1, middle - wide / 2);
  page.drawRectangle({ x: left, y: top - 10, width, height: 10, color: WHITE });
  lettering.drawLine(page, mark, { ...style, x: left + 1, y: top - 8 });
}

/** The printed size of a print. */
function drawMeasure({ lettering }: Setting, page: PDFPage, measure: Measure, at: DrawingPlace): void {
  const y = at.top - measure.y;
  const [left, right] = [at.middle + measure.left, at.middle + measure.right];
  const boxLeft = at.middle + measure.box.left;
  page.drawLine({ start: { x: left, y }, end: { x: right, y }, thickness: 0.7, color: INK });
  for (const end of [left, right])
    page.drawLine({ start: { x: end, y: y - 2.5 }, end: { x: end, y: y + 2.5 }, thickness: 0.7, color: INK });
  const width = measure.box.right - measure.box.left;
  page.drawRectangle({ x: boxLeft, y: y - 12, width, height: 9.5, color: WHITE });
  lettering.drawLine(page, measure.text, { x: boxLeft + 1, y: y - 10.5, size: LABEL });
}

/** Where no picture can be shown its place stays, with its number where prints bear some, else with its name where that finds room. */
function drawEmpty(
  setting: Setting,
  page: PDFPage,
  { name, mark = '', reads }: DrawnPrint,
  { x, top, width, height }: { x: number; top: number; width: number; height: number },
  { middle, wide, isNumbered }: DrawingPlace,
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
  if (reads !== undefined) {
    drawMarkF(page, { x, y: top - height, width, height }, reads);
    return;
  }
  const named = isNumbered ? null : nameLines(setting, name, { width, height });
  // A mark is short: it is read even where it reaches beyond its place.
  const widthPt = named === null ? MARK_WIDE : width - 4;
  const lines =
    named ?? linesOf(setting, mark, { widthPt, size: LABEL, weight: 700, align: 'centre', leading: 1.1 });
  const centred = x + (width - widthPt) / 2;
  const left = Math.min(Math.max(centred, middle - wide / 2), middle + wide / 2 - widthPt);
  let low = top - (height - highOf(lines)) / 2;
  for (const line of lines) {
    line.draw(page, { x: left, top: low });
    low -= line.high;
  }
}

/** @returns a name in the place of its print; null where it finds no room there. */
function nameLines(
  setting: Setting,
  name: string,
  { width, height }: { readonly width: number; readonly height: number },
): readonly SetLine[] | null {
  const lines = linesOf(setting, name, { widthPt: Math.max(1, width - 4), size: LABEL, align: 'centre' });
  const longest = Math.max(
    0,
    ...name.split(/\s+/).map((word) => setting.lettering.measure(word, { size: LABEL })),
  );
  return highOf(lines) > height - 4 || longest > width - 4 ? null : lines;
}
