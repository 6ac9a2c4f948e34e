import { byteReader } from '@/lib/picture/byteReader';
import { type BitReader, bitReader } from './bitReader';
import { type BlockReader, bandBlocks, finerBlocks, firstBlocks, wholeBlocks } from './blockReaders';
import { type HuffmanTable, readTables } from './huffman';
import { type JpegComponent, type JpegFrame, jpegFrame } from './jpegFrame';
import { HUFFMAN_FRAMES, MARKER } from './jpegMarkers';
import { FIRST_SEGMENT, markerFrom, segmentAt } from './jpegSegments';

/** Some cameras leave a few bytes beside padding; a damaged picture leaves far more, or lacks as much. */
const MOST_LEFT_BYTES = 64;

interface Known {
  readonly bits: BitReader;
  readonly tables: Map<number, HuffmanTable>;
  frame: JpegFrame | null;
  restartEvery: number;
}

/**
 * Whether the packed pixels of a JPEG are broken in the middle: zeroed, overwritten or with a piece missing. Decoders
 * show such a picture with grey or shifted parts and say nothing. Every symbol is read, no pixel is worked out; the
 * data have to come out even at each restart and at the end of each scan.
 */
export function hasDamagedScan(bytes: Uint8Array): boolean {
  const reader = byteReader(bytes);
  const known: Known = { bits: bitReader(bytes), tables: new Map(), frame: null, restartEvery: 0 };
  for (let from = FIRST_SEGMENT; ; ) {
    const found = markerFrom(reader, from);
    if (found.kind !== 'marker') return true;
    if (found.marker === MARKER.end) return false;
    const segment = segmentAt(found, reader, bytes);
    if (segment === null) return true;
    const { marker, data } = segment;
    from = segment.next;
    if (HUFFMAN_FRAMES.includes(marker)) known.frame = jpegFrame(marker, data);
    else if (marker === MARKER.tables && !readTables(data, known.tables)) return true;
    else if (marker === MARKER.restartEvery) known.restartEvery = byteReader(data).u16(0) ?? 0;
    else if (marker === MARKER.scan) {
      const end = known.frame === null ? null : endOfScan(from, data, known.frame, known, bytes);
      if (end === null) return true;
      from = end;
    }
  }
}

/** Where the marker after the scan stands; null where the data do not come out even. */
function endOfScan(
  at: number,
  data: Uint8Array,
  frame: JpegFrame,
  { bits, tables, restartEvery }: Known,
  bytes: Uint8Array,
): number | null {
  const parts = partsOf(data, frame, bits, tables);
  if (parts === null) return null;
  const units = unitsOf(parts, frame);
  bits.startAt(at);
  for (let unit = 0, restarts = 0; unit < units.count; ) {
    const until = restartEvery === 0 ? units.count : Math.min(units.count, unit + restartEvery);
    for (; unit < until; unit += 1) {
      if (!units.read(unit) || bits.isExhausted()) return null;
    }
    if (bits.leftBytes() > MOST_LEFT_BYTES) return null;
    if (unit === units.count) break;
    let mark = bits.markerAt();
    // Any number of FF bytes may lead a marker: B.1.1.2.
    while (bytes[mark] === 0xff && bytes[mark + 1] === 0xff) mark += 1;
    if (bytes[mark] !== 0xff || bytes[mark + 1] !== MARKER.restart + (restarts & 7)) return null;
    restarts += 1;
    bits.startAt(mark + 2);
    for (const { restart } of parts) restart();
  }
  return bits.markerAt();
}

interface ScanPart {
  readonly component: JpegComponent;
  readonly read: BlockReader;
  readonly restart: () => void;
}

/** ITU-T T.81, B.2.3. */
function partsOf(
  data: Uint8Array,
  { isProgressive, components }: JpegFrame,
  bits: BitReader,
  tables: ReadonlyMap<number, HuffmanTable>,
): readonly ScanPart[] | null {
  const { u8 } = byteReader(data);
  const count = u8(0) ?? 0;
  const [from, to, steps] = [u8(count * 2 + 1), u8(count * 2 + 2), u8(count * 2 + 3)];
  if (count < 1 || from === null || to === null || steps === null || from > to || to > 63) return null;
  const parts: ScanPart[] = [];
  for (let index = 0; index < count; index += 1) {
    const component = components.find(({ id }) => id === u8(1 + index * 2));
    if (component === undefined) return null;
    const choice = u8(2 + index * 2) ?? 0;
    const table = tables.get(choice >> 4);
    const others = tables.get(16 + (choice & 15));
    const isRefining = steps >> 4 > 0;
    const nothing = { component, restart: () => undefined };
    if (!isProgressive) parts.push({ ...nothing, read: wholeBlocks(bits, table, others) });
    else if (from === 0) parts.push({ ...nothing, read: firstBlocks(bits, isRefining, table) });
    else {
      const make = isRefining ? finerBlocks : bandBlocks;
      parts.push({ component, ...make(bits, { from, to, isSet: component.isSet }, others) });
    }
  }
  return parts;
}

/** One component alone goes block by block, several go unit by unit: A.2. */
function unitsOf(parts: readonly ScanPart[], { unitColumns, unitRows }: JpegFrame) {
  const [alone, ...more] = parts;
  if (alone !== undefined && more.length === 0) {
    const { component, read } = alone;
    const { columns, rows, storedColumns } = component;
    return {
      count: columns * rows,
      read: (unit: number) => read(Math.floor(unit / columns) * storedColumns + (unit % columns)),
    };
  }
  const all = parts.flatMap(({ component: { across, down }, read }) =>
    Array.from({ length: across * down }, () => read),
  );
  return {
    count: unitColumns * unitRows,
    // Only first coefficients come in units where blocks are told apart, and they need no place.
    read: () => all.every((read) => read(0)),
  };
}
