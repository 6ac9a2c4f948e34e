import { type PDFDocument, PDFName, type PDFRef } from '@cantoo/pdf-lib';
import type { Weight } from './faceTable';

/** A run of letters that no face has, as the device's own type is to draw it. */
export interface ForeignRun {
  readonly text: string;
  readonly weight: Weight;
  readonly sizePt: number;
  readonly isRightToLeft: boolean;
  /** Red, green and blue, 0 to 1. */
  readonly colour: Colour;
}

export type Colour = readonly [number, number, number];

/** A run as a picture. */
export interface ForeignPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Four bytes a pixel, from the top left; alpha not multiplied in. */
  readonly rgba: Uint8ClampedArray;
  readonly pixelsPerPt: number;
  /** Pixels from the left edge to where the run begins, and from the top edge to the line it stands on. */
  readonly originPx: readonly [number, number];
}

/** The device's type: what has a canvas has one, a command line has none. */
export interface ForeignType {
  /** Advance of a run, points. */
  readonly width: (run: ForeignRun) => number;
  readonly draw: (run: ForeignRun) => ForeignPicture;
}

/** Letters that nobody here can draw: no file is made with a gap in their place. */
export class LettersNotDrawn extends Error {
  constructor(readonly letters: string) {
    super(`no type here has the letters “${letters}”`);
    this.name = 'LettersNotDrawn';
  }
}

/** @returns a picture as the page can show it, with its clear parts clear. */
export function embedForeign(pdf: PDFDocument, { widthPx, heightPx, rgba }: ForeignPicture): PDFRef {
  const pixels = widthPx * heightPx;
  const colours = new Uint8Array(pixels * 3);
  const clear = new Uint8Array(pixels);
  for (let pixel = 0; pixel < pixels; pixel += 1) {
    for (let channel = 0; channel < 3; channel += 1) {
      colours[pixel * 3 + channel] = rgba[pixel * 4 + channel] ?? 0;
    }
    clear[pixel] = rgba[pixel * 4 + 3] ?? 0;
  }
  const size = { Type: 'XObject', Subtype: 'Image', Width: widthPx, Height: heightPx, BitsPerComponent: 8 };
  const mask = pdf.context.register(pdf.context.flateStream(clear, { ...size, ColorSpace: 'DeviceGray' }));
  const picture = pdf.context.flateStream(colours, { ...size, ColorSpace: 'DeviceRGB' });
  picture.dict.set(PDFName.of('SMask'), mask);
  return pdf.context.register(picture);
}
