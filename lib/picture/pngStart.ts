import { byteReader } from './byteReader';

/** What every PNG says at the same places (IHDR), unjudged; null where the file ends before. */
interface PngStart {
  readonly width: number | null;
  readonly height: number | null;
  /** Bits a channel, or of a number in the palette. */
  readonly depth: number | null;
  /** Bit 0 palette, bit 1 colour, bit 2 alpha. */
  readonly colourType: number | null;
  /** 0 row by row, 1 woven together (Adam7). */
  readonly interlace: number | null;
}

/** @returns the first chunk of a PNG: PNG Specification, third edition, 11.2.1. */
export function pngStart(bytes: Uint8Array): PngStart {
  const { u8, u32 } = byteReader(bytes);
  return { width: u32(16), height: u32(20), depth: u8(24), colourType: u8(25), interlace: u8(28) };
}
