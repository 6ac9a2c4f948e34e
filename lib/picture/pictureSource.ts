import type { PixelBox, PixelGrid } from './pixelGrid';

/** A picture that is read piece by piece, so that it need not lie in memory twice. */
export interface PictureSource {
  readonly width: number;
  readonly height: number;
  /** @returns the pixels of a box that lies inside the picture. */
  readonly read: (box: PixelBox) => PixelGrid;
}

/** @returns a source over pixels that are in memory already; whole rows are lent, not copied. */
export const sourceOf = (grid: PixelGrid): PictureSource => ({
  width: grid.width,
  height: grid.height,
  read: (box) => cut(grid, box),
});

/** @returns the part of a picture inside a box, for a picture that is cropped to fill its place. */
export const croppedSource = (source: PictureSource, crop: PixelBox): PictureSource => ({
  width: crop.width,
  height: crop.height,
  read: (box) => source.read({ ...box, x: box.x + crop.x, y: box.y + crop.y }),
});

function cut({ width, rgba }: PixelGrid, box: PixelBox): PixelGrid {
  const row = (y: number) => ((box.y + y) * width + box.x) * 4;
  if (box.width === width) return { ...box, rgba: rgba.subarray(row(0), row(box.height)) };
  const piece =
    rgba instanceof Uint16Array
      ? new Uint16Array(box.width * box.height * 4)
      : new Uint8Array(box.width * box.height * 4);
  for (let y = 0; y < box.height; y += 1) {
    piece.set(rgba.subarray(row(y), row(y) + box.width * 4), y * box.width * 4);
  }
  return { width: box.width, height: box.height, rgba: piece };
}
