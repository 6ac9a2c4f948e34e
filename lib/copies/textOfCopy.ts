import { strFromU8 } from 'fflate';
import type { ArchiveEntry } from './archive/archiveEntry';
import type { ByteSource } from './archive/byteSource';
import { crc32 } from './archive/crc32';
import { type Unpacking, unpacked } from './archive/unpacked';
import { STORED } from './archive/zipRecords';
import { MOST_TEXT_BYTES } from './copySchemas';
import { joinedBytes } from './joinedBytes';
import { type CopyText, lineReader, wholeText } from './readCopyText';

export interface FoundText {
  readonly text: CopyText;
  /** All of it came out as it was written. */
  readonly isSound: boolean;
  /** The source does not end within it. */
  readonly isEnded: boolean;
}

type TextFinding = 'encrypted' | 'tooLarge' | 'noText' | FoundText;

/** Reads the text of a copy from the place in the archive at which most of it is whole. */
export async function textOfCopy(
  source: ByteSource,
  places: readonly ArchiveEntry[],
  pause: () => Promise<void>,
): Promise<TextFinding> {
  let best: FoundText | null = null;
  const endings: Unpacking[] = [];
  for (const place of places) {
    const { ending, found } = await textAt(source, place, pause);
    endings.push(ending);
    if (found.isSound) return found;
    if (worth(found) > worth(best)) best = found;
  }
  if (best !== null) return best;
  if (places.length > 0 && places.every(({ isEncrypted }) => isEncrypted)) return 'encrypted';
  return endings.includes('tooLarge') ? 'tooLarge' : 'noText';
}

/** Reads a text that lies there by itself. */
export async function bareText(source: ByteSource, pause: () => Promise<void>): Promise<FoundText> {
  const { size } = source;
  const place = { name: '', isEncrypted: false, method: STORED, from: 0, packed: size, bytes: size };
  const { found } = await textAt(source, { ...place, crc: null, at: 0, hasHeader: true }, pause);
  const end = strFromU8(await source.read(Math.max(0, size - 64), size), true);
  return { ...found, isEnded: end.trimEnd().endsWith('}') };
}

// Helpers

async function textAt(
  source: ByteSource,
  place: ArchiveEntry,
  pause: () => Promise<void>,
): Promise<{ readonly ending: Unpacking; readonly found: FoundText }> {
  const lines = lineReader();
  let crc = 0;
  const ending = await unpacked(source, place, MOST_TEXT_BYTES, async (piece) => {
    crc = crc32(piece, crc);
    lines.add(piece);
    await pause();
  });
  const isSound = ending === 'whole' && (place.crc === null || place.crc === crc);
  const text = lines.end(isSound);
  const found = { text, isSound: isSound && text.head !== null, isEnded: ending !== 'cut' };
  if (text.head !== null || text.records.length > 0 || !isSound) return { ending, found };
  const pieces: Uint8Array[] = [];
  await unpacked(source, place, MOST_TEXT_BYTES, (piece) => void pieces.push(piece));
  const otherwise = wholeText(strFromU8(joinedBytes(pieces)));
  return { ending, found: otherwise === null ? found : { text: otherwise, isSound: true, isEnded: true } };
}

const worth = (found: FoundText | null): number =>
  found === null ? 0 : found.text.records.length * 2 + (found.text.head === null ? 0 : 1);
