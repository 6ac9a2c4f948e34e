/** CRC-32 as archives have it: ISO 3309, polynomial 0xEDB88320 in reflected form. */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/** @param before of the bytes that came before these, so that it can be worked out piece by piece */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = ~before;
  for (const byte of bytes) crc = (crc >>> 8) ^ (table[(crc ^ byte) & 255] ?? 0);
  return ~crc >>> 0;
}
