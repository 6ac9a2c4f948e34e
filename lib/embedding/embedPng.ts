import { clearColour } from '@/lib/picture/clearColour';
import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { packedPixels } from '@/lib/picture/pngChunks';
import { pngStart } from '@/lib/picture/pngStart';
import { pngFacts } from '@/lib/picture/pngSums';
import type { ColourNote, Colours, EmbeddedPicture, PackedMask, TakeBytes, Zip } from './embeddedPicture';
import { embedPngColours } from './embedPngColours';
import { maskOfPalette, splitRows } from './splitRows';

/* Colour types of a PNG: bit 0 palette, bit 1 colour, bit 2 alpha. */
const PALETTE = 3;
const ALPHA = 4;

/**
 * A PNG with its packed rows as they came; where it is see-through, colours and alpha are taken apart.
 *
 * @returns null where a page has no words for it: its rows are woven together, or its colours coded in a way of film
 */
export async function embedPng(
  bytes: Uint8Array,
  header: RasterHeader,
  zip: Zip,
): Promise<EmbeddedPicture | null> {
  const { depth, colourType: told, interlace } = pngStart(bytes);
  if (interlace !== 0) return null;
  const bits = depth ?? 8;
  const colourType = told ?? 0;
  const { stored, orientation } = header;
  const channels = (colourType & 2) === 0 ? 1 : 3;
  const named = await embedPngColours(bytes, header, channels, zip);
  if (named === null) return null;
  const packed = packedPixels(bytes);
  const { data } = pngFacts(bytes);
  const clear = data('tRNS');
  const base = { stored, orientation, bits, note: named.note } as const;
  const asItCame = async (take: TakeBytes) => {
    for (const piece of packed) take(piece);
    return null;
  };
  if (colourType === PALETTE) {
    return palettePicture({ base, colours: named.colours, entries: data('PLTE'), clear, packed, zip });
  }
  if ((colourType & ALPHA) === 0) {
    return {
      ...base,
      colours: named.colours,
      packing: { kind: 'rows', channels, bits },
      clearColour: clear === null ? null : colourKey(clear, channels),
      hasMask: false,
      write: asItCame,
    };
  }
  return {
    ...base,
    colours: named.colours,
    packing: { kind: 'rows', channels, bits },
    clearColour: null,
    hasMask: true,
    write: (take, goOn) => splitRows({ stored, channels, bits, packed, zip }, take, goOn),
  };
}

interface PaletteParts {
  readonly base: Pick<EmbeddedPicture, 'stored' | 'orientation' | 'bits'> & {
    readonly note: ColourNote | null;
  };
  readonly colours: Colours;
  readonly entries: Uint8Array | null;
  readonly clear: Uint8Array | null;
  readonly packed: readonly Uint8Array[];
  readonly zip: Zip;
}

function palettePicture({
  base,
  colours,
  entries,
  clear,
  packed,
  zip,
}: PaletteParts): EmbeddedPicture | null {
  if (entries === null || entries.length < 3) return null;
  const sheer = [...(clear ?? [])].flatMap((alpha, index) => (alpha === 255 ? [] : [{ alpha, index }]));
  const [only] = sheer;
  // One entry that is wholly clear is a colour to leave out, which needs no mask.
  const key = only !== undefined && sheer.length === 1 && only.alpha === 0 ? only.index : null;
  const hasMask = sheer.length > 0 && key === null;
  return {
    ...base,
    colours: { kind: 'palette', base: colours, entries },
    packing: { kind: 'rows', channels: 1, bits: base.bits },
    clearColour: key === null ? null : [key, key],
    hasMask,
    write: async (take, goOn): Promise<PackedMask | null> => {
      for (const piece of packed) take(piece);
      if (!hasMask || clear === null) return null;
      return maskOfPalette({ stored: base.stored, channels: 0, bits: base.bits, packed, zip }, clear, goOn);
    },
  };
}

/** The clear colour of tRNS, from and to of each channel. */
const colourKey = (clear: Uint8Array, channels: 1 | 3): readonly number[] | null =>
  clearColour(clear, channels)?.flatMap((value) => [value, value]) ?? null;
