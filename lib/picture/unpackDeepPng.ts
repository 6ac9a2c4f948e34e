import type { DeepPng } from './deepPng';
import type { PixelGrid } from './pixelGrid';
import { unfilterRow } from './unfilterRow';

/** Passes of Adam7: first column and row, and how far apart. PNG Specification, third edition, section 8.1. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;
const WHOLE = [[0, 0, 1, 1]] as const;
const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 4: 2, 6: 4 };

/**
 * Pixels of a PNG of 16 bits a channel at their full depth; drawing surfaces of browsers cut them to 8, always
 * downwards.
 *
 * @param data its packed pixels after inflating
 * @returns null where the data do not fill the picture
 */
export function unpackDeepPng(png: DeepPng, data: Uint8Array): PixelGrid | null {
  const { width, height, colourType } = png;
  const channels = CHANNELS[colourType] ?? 1;
  const rgba = new Uint16Array(width * height * 4);
  let at = 0;
  for (const [left, top, across, down] of png.isInterlaced ? PASSES : WHOLE) {
    const columns = Math.ceil((width - left) / across);
    const rows = Math.ceil((height - top) / down);
    if (columns <= 0 || rows <= 0) continue;
    const rowBytes = columns * channels * 2;
    let above: Uint8Array = new Uint8Array(rowBytes);
    for (let row = 0; row < rows; row += 1) {
      if (at + 1 + rowBytes > data.length) return null;
      const line = data.slice(at + 1, at + 1 + rowBytes);
      if (!unfilterRow(data[at] ?? 0, line, above, channels * 2)) return null;
      place(line, rgba, ((top + row * down) * width + left) * 4, across * 4, png);
      above = line;
      at += 1 + rowBytes;
    }
  }
  return { width, height, rgba };
}

function place(line: Uint8Array, rgba: Uint16Array, from: number, step: number, png: DeepPng): void {
  const channels = CHANNELS[png.colourType] ?? 1;
  const isColour = channels >= 3;
  const hasAlpha = channels % 2 === 0;
  const clear = png.clearColour;
  const number = (at: number) => (line[at] ?? 0) * 256 + (line[at + 1] ?? 0);
  for (let at = 0, to = from; at < line.length; at += channels * 2, to += step) {
    const red = number(at);
    const green = isColour ? number(at + 2) : red;
    const blue = isColour ? number(at + 4) : red;
    const isClear =
      clear !== null && red === clear[0] && (!isColour || (green === clear[1] && blue === clear[2]));
    rgba[to] = red;
    rgba[to + 1] = green;
    rgba[to + 2] = blue;
    rgba[to + 3] = hasAlpha ? number(at + (channels - 1) * 2) : isClear ? 0 : 65_535;
  }
}
