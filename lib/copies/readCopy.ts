import type { StoreKinds } from '@/lib/stored/registry';
import { type ByteSource, sourceOf } from './archive/byteSource';
import { entryText } from './archive/entryName';
import { readArchive } from './archive/readArchive';
import { headFacts, headOf, recordsFound } from './assembleCopy';
import type { Copy, CopyLacks, NotACopy } from './copy';
import { checkFiles } from './copyFiles';
import type { CopyReading } from './copyReading';
import { MOST_TEXT_BYTES } from './copySchemas';
import { sortEntries } from './entryNames';
import { looksLike } from './looksLike';
import { readFormerCopy } from './readFormerCopy';
import { readRecords } from './readRecords';
import { bareText, type FoundText, textOfCopy } from './textOfCopy';

interface ReadingCopy {
  readonly kinds: StoreKinds;
  /** Taken between pieces, so that whoever shares the thread gets a turn. */
  readonly pause: () => Promise<void>;
}

/**
 * Reads a copy: an archive, its bare text, or one of the files that copies were before. Distrustful and forgiving: what
 * is not ours is told, and of what is damaged all that is whole comes out, with what it lacks.
 */
export async function readCopy(source: ByteSource, reading: ReadingCopy): Promise<CopyReading> {
  const archive = await readArchive(source);
  if (archive === null) return readBare(source, reading);
  const { text: places, files, refused } = sortEntries(archive.entries);
  const found = await textOfCopy(source, places, reading.pause);
  if (found === 'tooLarge') return notACopy({ code: 'tooLarge', bytes: source.size, most: MOST_TEXT_BYTES });
  if (found === 'encrypted') return notACopy({ code: 'notOurs', looksLike: 'encryptedZip' });
  if (found === 'nothingWhole') return notACopy({ code: 'nothingWhole' });
  if (found === 'noText') {
    const { entries } = archive;
    if (archive.endsEarly && source.size < SHORTEST_ENTRY) return notACopy({ code: 'nothingWhole' });
    const isEncrypted = entries.length > 0 && entries.every((entry) => entry.isEncrypted);
    return notACopy({ code: 'notOurs', looksLike: isEncrypted ? 'encryptedZip' : 'otherZip' });
  }
  const checking = (named: Copy['files']) =>
    checkFiles(source, { named, places: files, pause: reading.pause });
  return assembled(found, reading, checking, { endsEarly: archive.endsEarly, refused });
}

/** The header and the name of the entry every copy begins with. */
const SHORTEST_ENTRY = 44;

async function assembled(
  { text, isSound }: FoundText,
  { kinds, pause }: ReadingCopy,
  checking: (named: Copy['files']) => ReturnType<typeof checkFiles>,
  seen: Pick<CopyLacks, 'endsEarly' | 'refused'>,
): Promise<CopyReading> {
  const head = headOf(text);
  if (head !== null && 'code' in head) return notACopy(head);
  if (head === null && text.records.length === 0) {
    return notACopy(isSound ? { code: 'notOurs', looksLike: 'otherZip' } : { code: 'nothingWhole' });
  }
  const records = await readRecords(text.records, kinds, pause);
  const { files, lacking, fileOf } = await checking(records.files);
  return {
    state: 'copy',
    copy: {
      ...headFacts(head),
      ...records,
      files,
      lacks: { ...seen, records: recordsFound(text, head), files: lacking },
    },
    fileOf,
  };
}

async function readBare(source: ByteSource, reading: ReadingCopy): Promise<CopyReading> {
  const start = entryText(await source.read(0, START_BYTES)).replace(BYTE_ORDER_MARK, '');
  if (start.startsWith(ARCHIVE_START)) return notACopy({ code: 'nothingWhole' });
  if (/^\s*\{/.test(start)) {
    const former = await readFormerCopy(source, start, reading);
    if (former !== null) return former;
    const found = await bareText(source, reading.pause);
    if (found.text.head !== null || found.text.records.length > 0) {
      const none = (named: Copy['files']) =>
        checkFiles(sourceOf(new Uint8Array(0)), { named, places: new Map(), pause: reading.pause });
      return assembled(found, reading, none, { endsEarly: !found.isEnded, refused: [] });
    }
  }
  return notACopy({ code: 'notOurs', looksLike: looksLike(start, /^\s*[[{]/.test(start)) });
}

const START_BYTES = 4096;
/** In UTF-8; some editors put it before a text that they save. */
const BYTE_ORDER_MARK = /^\xef\xbb\xbf/;
const ARCHIVE_START = 'PK\u0003\u0004';

const notACopy = (why: NotACopy): CopyReading => ({ state: 'notACopy', why });
