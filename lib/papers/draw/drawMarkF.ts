import { type PDFPage, rgb } from '@cantoo/pdf-lib';
import type { Reads } from '@/lib/papers/paper';
import { markF, placeMarkF } from './markF';

const MARK_INK = rgb(0.35, 0.35, 0.35);

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An F in the middle of a box whose lower left corner is told, points. */
export function drawMarkF(page: PDFPage, { x, y, width, height }: Place, reads: Reads): void {
  const at = placeMarkF({ width, height });
  page.drawSvgPath(markF[reads], {
    ...{ x: x + at.x, y: y + height - at.y, scale: at.scale },
    color: MARK_INK,
    borderWidth: 0,
  });
}
