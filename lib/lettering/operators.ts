import {
  beginText,
  concatTransformationMatrix,
  drawObject,
  endText,
  type PDFFont,
  PDFHexString,
  type PDFName,
  PDFOperator,
  PDFOperatorNames,
  type PDFPage,
  type PDFRef,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  setFillingColor,
  setFontAndSize,
  setTextMatrix,
} from '@cantoo/pdf-lib';
import type { Colour, ForeignPicture } from './foreignType';
import type { Shaped } from './openFace';

interface GlyphPlace {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly colour: Colour;
}

/** Draws shaped letters each where the type wants it: closer where they are kerned, marks over their letters. */
export function drawGlyphs(
  page: PDFPage,
  font: PDFFont,
  { glyphs }: Shaped,
  { x, y, size, colour: [red, green, blue] }: GlyphPlace,
): void {
  const shown: PDFOperator[] = [];
  let row: string[] = [];
  /** Where a reader of the file stands, and on which line. */
  let at = 0;
  let rise = 0;
  const show = () => {
    if (row.length > 0) shown.push(PDFOperator.of(PDFOperatorNames.ShowTextAdjusted, [`[${row.join(' ')}]`]));
    row = [];
  };
  for (const glyph of glyphs) {
    if (glyph.y !== rise) {
      show();
      rise = glyph.y;
      shown.push(PDFOperator.of(PDFOperatorNames.SetTextRise, [number((rise * size) / 1000)]));
    }
    const back = at - glyph.x;
    if (Math.abs(back) > 0.01) row.push(number(back));
    row.push(`<${glyph.code}>`);
    at = glyph.x + glyph.advance;
  }
  show();
  if (rise !== 0) shown.push(PDFOperator.of(PDFOperatorNames.SetTextRise, ['0']));
  page.pushOperators(
    beginText(),
    setFillingColor(rgb(red, green, blue)),
    setFontAndSize(keyOn(page, font), size),
    setTextMatrix(1, 0, 0, 1, x, y),
    ...shown,
    endText(),
  );
}

/** Draws a run as a picture; whoever copies or searches gets its letters. */
export function drawPicture(
  page: PDFPage,
  ref: PDFRef,
  { widthPx, heightPx, pixelsPerPt, originPx: [left, base] }: ForeignPicture,
  { x, y, text }: { readonly x: number; readonly y: number; readonly text: string },
): void {
  const says = `<</ActualText ${PDFHexString.fromText(text).toString()}>>`;
  page.pushOperators(
    PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, ['/Span', says]),
    pushGraphicsState(),
    concatTransformationMatrix(
      widthPx / pixelsPerPt,
      0,
      0,
      heightPx / pixelsPerPt,
      x - left / pixelsPerPt,
      y - (heightPx - base) / pixelsPerPt,
    ),
    drawObject(page.node.newXObject('Letters', ref)),
    popGraphicsState(),
    PDFOperator.of(PDFOperatorNames.EndMarkedContent),
  );
}

// Helpers

/** A page names each face once. */
const keys = new WeakMap<PDFPage, Map<PDFFont, PDFName>>();

function keyOn(page: PDFPage, font: PDFFont): PDFName {
  const known = keys.get(page) ?? new Map<PDFFont, PDFName>();
  keys.set(page, known);
  const key = known.get(font) ?? page.node.newFontDictionary(font.name, font.ref);
  known.set(font, key);
  return key;
}

/** The format knows no powers of ten. */
const number = (value: number): string => String(Number(value.toFixed(3)));
