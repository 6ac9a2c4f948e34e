import { utf8ToBytes } from '@noble/hashes/utils.js';

/*
 * The records of a ZIP archive: PKWARE APPNOTE 6.3.10, 4.3.7 (local header), 4.3.12 (central header), 4.3.16 (end of
 * the directory).
 */
export const LOCAL = 0x04034b50;
export const CENTRAL = 0x02014b50;
export const END = 0x06054b50;
export const LOCAL_BYTES = 30;
export const CENTRAL_BYTES = 46;
export const END_BYTES = 22;
/** Where a size or place stands that takes more than 32 bits: it is then told elsewhere, in the manner of ZIP64. */
export const BEYOND = 0xffffffff;
export const STORED = 0;
export const DEFLATED = 8;

/** 2.0, the oldest that knows folders and Deflate. */
const VERSION = 20;

/** An entry as it is written: stored, its size known beforehand. */
export interface WrittenEntry {
  readonly name: string;
  readonly crc: number;
  readonly bytes: number;
  /** Where its local header begins. */
  readonly at: number;
}

export const localHeader = (entry: WrittenEntry, madeAt: number): Uint8Array =>
  record(LOCAL, [[2, VERSION], ...common(entry, madeAt)], entry.name);

export const centralHeader = (entry: WrittenEntry, madeAt: number): Uint8Array =>
  record(
    CENTRAL,
    [
      [2, VERSION],
      [2, VERSION],
      ...common(entry, madeAt),
      // Comment, disk, inner and outer attributes.
      [2, 0],
      [2, 0],
      [2, 0],
      [4, 0],
      [4, entry.at],
    ],
    entry.name,
  );

export const endOfDirectory = (count: number, bytes: number, at: number): Uint8Array =>
  record(
    END,
    [
      [2, 0],
      [2, 0],
      [2, count],
      [2, count],
      [4, bytes],
      [4, at],
      [2, 0],
    ],
    '',
  );

// Helpers

type Field = readonly [width: 2 | 4, value: number];

const common = ({ name, crc, bytes }: WrittenEntry, madeAt: number): readonly Field[] => [
  [2, 0],
  [2, STORED],
  ...dosTime(madeAt),
  [4, crc],
  [4, bytes],
  [4, bytes],
  [2, utf8ToBytes(name).length],
  [2, 0],
];

function record(signature: number, fields: readonly Field[], name: string): Uint8Array {
  const tail = utf8ToBytes(name);
  const length = 4 + fields.reduce((sum, [width]) => sum + width, 0);
  const bytes = new Uint8Array(length + tail.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, signature, true);
  let at = 4;
  for (const [width, value] of fields) {
    if (width === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += width;
  }
  bytes.set(tail, length);
  return bytes;
}

/** In steps of two seconds from 1980 to 2107, in universal time: whoever opens it elsewhere sees one and the same. */
function dosTime(madeAt: number): readonly Field[] {
  const date = new Date(Math.min(Math.max(madeAt, Date.UTC(1980, 0, 1)), Date.UTC(2107, 11, 31)));
  const time = (date.getUTCHours() << 11) | (date.getUTCMinutes() << 5) | (date.getUTCSeconds() >> 1);
  const day = ((date.getUTCFullYear() - 1980) << 9) | ((date.getUTCMonth() + 1) << 5) | date.getUTCDate();
  return [
    [2, time],
    [2, day],
  ];
}
