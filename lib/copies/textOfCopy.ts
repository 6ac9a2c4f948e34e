import { strFromU8 } from 'fflate';
import { crc32 } from '@/lib/picture/crc32';
import { joinedBytes } from '@/lib/picture/joinedBytes';
import type { ArchiveEntry } from './archive/archiveEntry';
import type { ByteSource } from './archive/byteSource';
import { type Unpacking, unpacked } from './archive/unpacked';
import { STORED } from './archive/zipRecords';
import { MOST_TEXT_BYTES } from './copySchemas';
import { type CopyText, lineReader, wholeText } from './readCopyText';

export interface FoundText {
  readonly text: CopyText;
  /** All of it came out as it was written. */
  readonly isSound: boolean;
  /** The source does not end within it. */
  readonly isEnded: boolean;
}

/** `nothingWhole`: there is a text, and not a line of it is what was written. */
type TextFinding = 'encrypted' | 'tooLarge' | 'noText' | 'nothingWhole' | FoundText;

/** Reads the text of a copy from the place in the archive at which most of it is whole. */
export async function textOfCopy(
  source: ByteSource,
  places: readonly ArchiveEntry[],
  pause: () => Promise<void>,
): Promise<TextFinding> {
  let best: FoundText | null = null;
  const endings: Unpacking[] = [];
  for (const place of places) {
    const { ending, isIntact, found } = await textAt(source, place, pause);
    endings.push(isIntact ? 'whole' : ending === 'whole' ? 'damaged' : ending);
    if (found.isSound) return found;
    if (worth(found) > worth(best)) best = found;
  }
  if (best !== null) return best;
  if (places.length > 0 && places.every(({ isEncrypted }) => isEncrypted)) return 'encrypted';
  if (endings.includes('tooLarge')) return 'tooLarge';
  return endings.length === 0 || endings.includes('whole') ? 'noText' : 'nothingWhole';
}

/** Reads a text that lies there by itself. */
export async function bareText(source: ByteSource, pause: () => Promise<void>): Promise<FoundText> {
  const { size } = source;
  const place = { name: '', isEncrypted: false, method: STORED, from: 0, packed: size, bytes: size };
  const { found } = await textAt(source, { ...place, crc: null, at: 0, hasHeader: true }, pause, true);
  const end = strFromU8(await source.read(Math.max(0, size - 64), size), true);
  return { ...found, isEnded: end.trimEnd().endsWith('}') };
}

// Helpers

async function textAt(
  source: ByteSource,
  place: ArchiveEntry,
  pause: () => Promise<void>,
  /** By itself nothing tells whether it is what was written, and a maker may have changed it by hand. */
  isBare = false,
): Promise<{ readonly ending: Unpacking; readonly isIntact: boolean; readonly found: FoundText }> {
  const lines = lineReader();
  let crc = 0;
  const ending = await unpacked(source, place, MOST_TEXT_BYTES, async (piece) => {
    crc = crc32(piece, crc);
    lines.add(piece);
    await pause();
  });
  const isIntact = ending === 'whole' && (isBare || place.crc === crc);
  const text = lines.end(isIntact);
  const found = { text, isSound: isIntact && text.head !== null, isEnded: ending !== 'cut' };
  if (text.head !== null || text.records.length > 0 || !isIntact) return { ending, isIntact, found };
  const pieces: Uint8Array[] = [];
  await unpacked(source, place, MOST_TEXT_BYTES, (piece) => void pieces.push(piece));
  const otherwise = wholeText(strFromU8(joinedBytes(pieces)));
  return {
    ending,
    isIntact,
    found: otherwise === null ? found : { text: otherwise, isSound: true, isEnded: true },
  };
}

const worth = (found: FoundText | null): number =>
  found === null ? 0 : found.text.records.length * 2 + (found.text.head === null ? 0 : 1);
