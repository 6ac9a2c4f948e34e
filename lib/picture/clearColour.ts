import { byteReader } from './byteReader';

/**
 * @param told by the chunk tRNS of a PNG of grey or colours, two bytes a channel
 * @returns the one colour that is clear, a number for each channel; null where the chunk is too short to say
 */
export function clearColour(told: Uint8Array, channels: 1 | 3): readonly number[] | null {
  const { u16 } = byteReader(told);
  const values = Array.from({ length: channels }, (_, at) => u16(at * 2));
  const known = values.filter((value) => value !== null);
  return known.length < channels ? null : known;
}
