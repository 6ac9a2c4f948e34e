import { type ByteReader, byteReader } from '@/lib/picture/byteReader';
import { MARKER } from './jpegMarkers';

/** Behind the marker that begins every JPEG. */
export const FIRST_SEGMENT = 2;

/** Markers that stand alone, without a length: ITU-T T.81, table B.1. */
const BARE = { temporary: 0x01, first: MARKER.restart, last: 0xd8 } as const;

export interface JpegSegment {
  readonly marker: number;
  /** Where its data begin. */
  readonly at: number;
  readonly data: Uint8Array;
  /** Where the next marker is to stand. */
  readonly next: number;
}

/** Where segments end, and why: at pixels, where the file is cut short, or where it is no JPEG any more. */
interface JpegEnd {
  readonly kind: 'scan' | 'cutShort' | 'noMarker';
  readonly at: number;
}

interface MarkerAt {
  readonly kind: 'marker';
  readonly marker: number;
  readonly at: number;
}

/** Segments before the first pixels of a JPEG, the frame among them; returns how they end. */
export function* jpegSegments(bytes: Uint8Array): Generator<JpegSegment, JpegEnd> {
  const reader = byteReader(bytes);
  for (let from = FIRST_SEGMENT; ; ) {
    const found = markerFrom(reader, from);
    if (found.kind !== 'marker') return found;
    const { marker, at } = found;
    if (marker === MARKER.scan) return { kind: 'scan', at };
    const segment = segmentAt(found, reader, bytes);
    if (segment === null) return { kind: 'cutShort', at };
    yield segment;
    from = segment.next;
  }
}

/** The next marker that does not stand alone; any number of FF bytes may lead one: B.1.1.2. */
export function markerFrom(reader: ByteReader, from: number): MarkerAt | JpegEnd {
  for (let at = from; ; ) {
    const lead = reader.u8(at);
    const marker = reader.u8(at + 1);
    if (lead === null || marker === null) return { kind: 'cutShort', at };
    if (lead !== 0xff) return { kind: 'noMarker', at };
    const isBare = marker === BARE.temporary || (marker >= BARE.first && marker <= BARE.last);
    if (marker !== 0xff && !isBare) return { kind: 'marker', marker, at };
    at += isBare ? 2 : 1;
  }
}

/** What a marker leads; null where the file ends before it says how long that is. */
export function segmentAt(
  { marker, at }: MarkerAt,
  reader: ByteReader,
  bytes: Uint8Array,
): JpegSegment | null {
  const length = reader.u16(at + 2);
  if (length === null) return null;
  const next = at + 2 + length;
  return { marker, at: at + 4, data: bytes.subarray(at + 4, next), next };
}
