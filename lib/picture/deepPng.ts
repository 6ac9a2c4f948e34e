import { byteReader } from './byteReader';
import { pngChunks } from './pngChunks';

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
  const reader = byteReader(bytes);
  const { chunks } = pngChunks(bytes);
  const dataOf = (type: string) =>
    chunks
      .filter((chunk) => chunk.type === type)
      .map(({ at, length }) => bytes.subarray(at + 8, at + 8 + length));
  const clear = byteReader(dataOf('tRNS')[0] ?? new Uint8Array());
  const numbers = [clear.u16(0), clear.u16(2), clear.u16(4)].filter((number) => number !== null);
  const colourType = reader.u8(25) ?? 0;
  const channels = colourType === 2 ? 3 : 1;
  return {
    width: reader.u32(16) ?? 0,
    height: reader.u32(20) ?? 0,
    colourType,
    isInterlaced: reader.u8(28) === 1,
    clearColour: numbers.length >= channels ? numbers.slice(0, channels) : null,
    packed: dataOf('IDAT'),
  };
}
