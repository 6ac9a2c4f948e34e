import type { PixelSize } from '@/lib/picture/pictureHeader';
import { unfilterRow } from '@/lib/picture/unfilterRow';
import { DamagedPicture, type PackedMask, type TakeBytes, type Zip } from './embeddedPicture';
import { filterRow } from './filterRow';
import { eachRow } from './rowReader';
import { roomIn, stripPacker } from './stripPacker';

interface PackedRows {
  readonly stored: PixelSize;
  /** Of colour, without alpha; 0 for a palette. */
  readonly channels: number;
  readonly bits: number;
  readonly packed: readonly Uint8Array[];
  readonly zip: Zip;
}

/**
 * Takes colours and alpha of packed rows apart, to the bit, a strip at a time. A filter of a PNG reckons each byte from
 * those of the same channel beside it, so that rows are taken apart as they are filtered and keep their filters.
 */
export async function splitRows(
  { stored: { width, height }, channels, bits, packed, zip }: PackedRows,
  take: TakeBytes,
  goOn: (share: number) => void,
): Promise<PackedMask> {
  const size = bits / 8;
  const colour = channels * size;
  const data: Uint8Array[] = [];
  const colours = stripPacker(zip, take);
  const alphas = stripPacker(zip, (bytes) => void data.push(bytes));
  await eachRow(zip.inflate(packed), 1 + width * (colour + size), height, async (row, y) => {
    checkFilter(row[0] ?? 0);
    const left = await roomIn(colours, 1 + width * colour);
    const right = await roomIn(alphas, 1 + width * size);
    left[0] = row[0] ?? 0;
    right[0] = row[0] ?? 0;
    for (let from = 1, to = 1, mask = 1; from < row.length; ) {
      for (let end = to + colour; to < end; to += 1, from += 1) left[to] = row[from] ?? 0;
      for (let end = mask + size; mask < end; mask += 1, from += 1) right[mask] = row[from] ?? 0;
    }
    goOn((y + 1) / height);
  });
  await colours.end();
  await alphas.end();
  return { bits, data };
}

/**
 * How see-through the pixels of a palette are, eight bits each.
 *
 * @param alphaOf by the number of a colour; those beyond its end are opaque
 */
export async function maskOfPalette(
  { stored: { width, height }, bits, packed, zip }: PackedRows,
  alphaOf: Uint8Array,
  goOn: (share: number) => void,
): Promise<PackedMask> {
  const data: Uint8Array[] = [];
  const packer = stripPacker(zip, (bytes) => void data.push(bytes));
  const rowBytes = Math.ceil((width * bits) / 8);
  let above: Uint8Array = new Uint8Array(rowBytes);
  let line: Uint8Array = new Uint8Array(rowBytes);
  let maskAbove = new Uint8Array(width);
  let mask = new Uint8Array(width);
  await eachRow(zip.inflate(packed), 1 + rowBytes, height, async (row, y) => {
    line.set(row.subarray(1));
    checkFilter(row[0] ?? 0);
    unfilterRow(row[0] ?? 0, line, above, 1);
    for (let x = 0; x < width; x += 1) {
      const bit = x * bits;
      const index = ((line[bit >> 3] ?? 0) >> (8 - bits - (bit & 7))) & (2 ** bits - 1);
      mask[x] = alphaOf[index] ?? 255;
    }
    filterRow(mask, maskAbove, 1, await roomIn(packer, 1 + width));
    [above, line] = [line, above];
    [maskAbove, mask] = [mask, maskAbove];
    goOn((y + 1) / height);
  });
  await packer.end();
  return { bits: 8, data };
}

function checkFilter(filter: number): void {
  if (filter > 4) throw new DamagedPicture(`a row has filter ${filter}, and there are four`);
}
