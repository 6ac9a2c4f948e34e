import type { PDFPage } from '@cantoo/pdf-lib';
import { rgb } from '@cantoo/pdf-lib';
import type { Lettering } from '@/lib/lettering/openLettering';
import type { CoverPiece, CoverSheet } from './cover';

/** Where a drawing stands, points from the lower left corner of the page. */
interface DrawingBox {
  readonly x: number;
  readonly top: number;
  /** Points to a millimetre of the sheet. */
  readonly scale: number;
}

/** Room of a drawing at most, and above it of the words at its top edge. */
export const DRAWING_WIDTH = 124;
const DRAWING_HEIGHT = 118;
const EDGE_ROOM = 15;

const INK = rgb(0, 0, 0);
const GREY = rgb(0.45, 0.45, 0.45);
const KEY_SIZE = 10;
const SMALLEST_KEY = 4;
const NAME_SIZE = 6.5;

/** @returns points to a millimetre at which a sheet finds room. */
export const drawingScale = ({ widthMm, heightMm }: CoverSheet): number =>
  Math.min(DRAWING_WIDTH / widthMm, DRAWING_HEIGHT / heightMm);

/** @returns the height that a drawing takes with the words at its top edge. */
export const drawingHeight = (sheet: CoverSheet): number => EDGE_ROOM + sheet.heightMm * drawingScale(sheet);

/** Draws a sheet in its true proportions: outlines of the pieces as they lie, the top edge of each picture thick. */
export function drawCoverSheet(page: PDFPage, sheet: CoverSheet, at: DrawingBox, lettering: Lettering): void {
  const { scale, x } = at;
  const top = at.top - EDGE_ROOM;
  const wide = sheet.widthMm * scale;
  const high = sheet.heightMm * scale;
  drawTopEdge(page, sheet.topEdge, { x, top }, lettering);
  page.drawRectangle({ x, y: top - high, width: wide, height: high, borderColor: INK, borderWidth: 1.2 });
  const margin = sheet.marginMm * scale;
  if (margin > 0.5 && wide > 2 * margin && high > 2 * margin) {
    page.drawRectangle({
      x: x + margin,
      y: top - high + margin,
      width: wide - 2 * margin,
      height: high - 2 * margin,
      borderColor: GREY,
      borderWidth: 0.4,
      borderDashArray: [0.8, 1.6],
    });
  }
  for (const piece of sheet.pieces) drawPiece(page, piece, { x, top, scale }, lettering);
  drawCuts(page, sheet, { x, top, scale }, lettering);
}

// Helpers

function drawTopEdge(
  page: PDFPage,
  words: string,
  { x, top }: { readonly x: number; readonly top: number },
  lettering: Lettering,
): void {
  const middle = x + 4;
  page.drawSvgPath('M0 0L3.2 5H-3.2Z', { x: middle, y: top + 9.5, color: INK });
  page.drawLine({
    start: { x: middle, y: top + 5 },
    end: { x: middle, y: top + 2 },
    thickness: 1.4,
    color: INK,
  });
  lettering.drawLine(page, words, { x: x + 11, y: top + 3.6, size: 7.5 });
}

function drawPiece(
  page: PDFPage,
  piece: CoverPiece,
  { x, top, scale }: DrawingBox,
  lettering: Lettering,
): void {
  const width = piece.widthMm * scale;
  const height = piece.heightMm * scale;
  const left = x + piece.xMm * scale;
  const low = top - (piece.yMm + piece.heightMm) * scale;
  page.drawRectangle({
    x: left,
    y: low,
    width,
    height,
    borderColor: INK,
    borderWidth: 0.7,
    ...(piece.isEmpty ? { borderDashArray: [2, 2] } : {}),
  });
  // A turned picture lies a quarter to the right.
  const thick = Math.min(2.2, Math.min(width, height) / 4);
  if (!piece.isEmpty) {
    page.drawRectangle(
      piece.turned
        ? { x: left + width - thick, y: low, width: thick, height, color: INK }
        : { x: left, y: low + height - thick, width, height: thick, color: INK },
    );
  }
  const size = Math.max(SMALLEST_KEY, Math.min(KEY_SIZE, 0.55 * Math.min(width, height)));
  const isNamed =
    size === KEY_SIZE &&
    height > 2.4 * KEY_SIZE &&
    lettering.measure(piece.name, { size: NAME_SIZE }) < width - 6;
  const middle = low + height / 2 - 0.36 * size + (isNamed ? 4 : 0);
  lettering.drawLine(page, piece.key, {
    x: left,
    y: middle,
    size,
    weight: 700,
    widthPt: width,
    align: 'centre',
  });
  if (isNamed) {
    lettering.drawLine(page, piece.name, {
      x: left,
      y: middle - NAME_SIZE - 3,
      size: NAME_SIZE,
      widthPt: width,
      align: 'centre',
    });
  }
}

/** Distances stand beside the cuts where there is room between them; all of them are told in the facts as well. */
function drawCuts(
  page: PDFPage,
  { cuts, widthMm }: CoverSheet,
  { x, top, scale }: DrawingBox,
  lettering: Lettering,
): void {
  let free = Number.POSITIVE_INFINITY;
  const right = x + widthMm * scale;
  for (const { atMm, words } of cuts) {
    const y = top - atMm * scale;
    page.drawLine({
      start: { x: x - 5, y },
      end: { x: right + 5, y },
      thickness: 0.9,
      color: INK,
      dashArray: [5, 2, 1, 2],
    });
    const hasRoom = right + 8 + lettering.measure(words, { size: 6.5 }) <= x + DRAWING_WIDTH && y + 3 <= free;
    if (!hasRoom) continue;
    lettering.drawLine(page, words, { x: right + 8, y: y - 2.3, size: 6.5 });
    free = y - 5;
  }
}
