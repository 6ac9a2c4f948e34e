import { clearColour } from './clearColour';
import { chunkData, packedPixels, pngChunks } from './pngChunks';
import { pngStart } from './pngStart';

/** The packed pixels of a PNG of 16 bits a channel, with what unpacking them needs. */
export interface DeepPng {
  readonly width: number;
  readonly height: number;
  /** 0 grey, 2 colour, 4 grey with alpha, 6 colour with alpha. */
  readonly colourType: number;
  readonly isInterlaced: boolean;
  /** The one colour that is clear, a number for each channel; null where none is. */
  readonly clearColour: readonly number[] | null;
  /** One zlib stream, in the pieces it is stored in. */
  readonly packed: readonly Uint8Array[];
}

/** Takes a whole PNG whose header said 16 bits apart, without unpacking it. */
export function deepPng(bytes: Uint8Array): DeepPng {
  const { width, height, colourType, interlace } = pngStart(bytes);
  const clear = pngChunks(bytes).chunks.find(({ type }) => type === 'tRNS');
  return {
    width: width ?? 0,
    height: height ?? 0,
    colourType: colourType ?? 0,
    isInterlaced: interlace === 1,
    clearColour: clear === undefined ? null : clearColour(chunkData(bytes, clear), colourType === 2 ? 3 : 1),
    packed: packedPixels(bytes),
  };
}
