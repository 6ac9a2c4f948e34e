/**
 * Pixels row by row from the top, four numbers each: red, green, blue and alpha, not multiplied together.
 * Eight-bit numbers reach 255, sixteen-bit ones 65,535.
 */
export interface PixelGrid {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array | Uint8ClampedArray | Uint16Array;
}

/** A rectangle of a picture in pixels, from its upper left corner. */
export interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
