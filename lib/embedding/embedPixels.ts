import type { PictureSource } from '@/lib/picture/pictureSource';
import type { ColourNote, EmbeddedPicture, PackedMask, TakeBytes, Zip } from './embeddedPicture';
import { filterRow } from './filterRow';
import { roomIn, stripPacker } from './stripPacker';

/** Pixels that are taken at once. */
const STRIP_PIXELS = 262_144;

interface Pixels {
  /** Upright. */
  readonly source: PixelRows;
  readonly bits: 8 | 16;
  readonly hasMask: boolean;
  readonly note: ColourNote | null;
}

/** Pixels that come strip by strip, perhaps from elsewhere. */
interface PixelRows {
  readonly width: number;
  readonly height: number;
  readonly read: (
    box: Parameters<PictureSource['read']>[0],
  ) => ReturnType<PictureSource['read']> | Promise<ReturnType<PictureSource['read']>>;
}

/** A picture by its pixels, without loss, a strip at a time: what a page cannot hold as it came. */
export function embedPixels({ source, bits, hasMask, note }: Pixels, zip: Zip): EmbeddedPicture {
  const { width, height } = source;
  return {
    stored: { width, height },
    orientation: 1,
    bits,
    colours: { kind: 'device', channels: 3 },
    packing: { kind: 'rows', channels: 3, bits },
    clearColour: null,
    hasMask,
    note,
    write,
  };

  async function write(take: TakeBytes, goOn: (share: number) => void): Promise<PackedMask | null> {
    const size = bits / 8;
    const data: Uint8Array[] = [];
    const colours = stripPacker(zip, take);
    const alphas = hasMask ? stripPacker(zip, (bytes) => void data.push(bytes)) : null;
    const rows = rowPair(width * 3 * size);
    const masks = rowPair(width * size);
    const strip = Math.max(1, Math.floor(STRIP_PIXELS / width));
    for (let top = 0; top < height; top += strip) {
      const count = Math.min(strip, height - top);
      const { rgba } = await source.read({ x: 0, y: top, width, height: count });
      for (let y = 0; y < count; y += 1) {
        splitPixels(rgba.subarray(y * width * 4, (y + 1) * width * 4), rows.now(), masks.now());
        filterRow(rows.now(), rows.above(), 3 * size, await roomIn(colours, 1 + width * 3 * size));
        if (alphas !== null) {
          filterRow(masks.now(), masks.above(), size, await roomIn(alphas, 1 + width * size));
        }
        rows.next();
        masks.next();
      }
      goOn((top + count) / height);
    }
    await colours.end();
    await alphas?.end();
    return alphas === null ? null : { bits, data };
  }
}

/** A row and the one above it, changing places. */
function rowPair(bytes: number) {
  let above: Uint8Array = new Uint8Array(bytes);
  let now: Uint8Array = new Uint8Array(bytes);
  return {
    now: () => now,
    above: () => above,
    next() {
      [above, now] = [now, above];
    },
  };
}

/** Numbers of sixteen bits are stored with their large byte first. */
function splitPixels(
  rgba: Uint8Array | Uint8ClampedArray | Uint16Array,
  colours: Uint8Array,
  alphas: Uint8Array,
): void {
  const isDeep = rgba instanceof Uint16Array;
  for (let from = 0, to = 0, mask = 0; from < rgba.length; from += 1) {
    const isAlpha = from % 4 === 3;
    const value = rgba[from] ?? 0;
    const into = isAlpha ? alphas : colours;
    let at = isAlpha ? mask : to;
    if (isDeep) into[at++] = value >> 8;
    into[at++] = value & 255;
    if (isAlpha) mask = at;
    else to = at;
  }
}
