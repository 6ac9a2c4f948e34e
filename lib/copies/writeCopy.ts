import { utf8ToBytes } from '@noble/hashes/utils.js';
import { type EntryToWrite, MOST_ARCHIVE_BYTES, MOST_ENTRIES, writeArchive } from './archive/writeArchive';
import type { CopyFile, LackingFile } from './copy';
import { type CopyContent, copyLines } from './copyText';
import { fileEntryName, TEXT_NAME } from './entryNames';

interface WritingCopy {
  /** The bytes of a file; null where they are not to be had. Asked for one after the other. */
  readonly readFile: (sha256: string) => Promise<Uint8Array | null>;
  /** Told of each file that is named and not in the copy. */
  readonly leftOut: (file: LackingFile) => void;
  /** Taken between pieces, so that whoever shares the thread gets a turn. */
  readonly pause: () => Promise<void>;
}

/** Writes a copy piece by piece: its text first, then one file after the other, none of which is held any longer. */
export const writeCopy = (content: CopyContent, writing: WritingCopy): AsyncGenerator<Uint8Array> =>
  writeArchive(entriesOf(content, writing), { madeAt: content.madeAt, pause: writing.pause });

async function* entriesOf(
  content: CopyContent,
  { readFile, leftOut, pause }: WritingCopy,
): AsyncGenerator<EntryToWrite> {
  const lines: Uint8Array[] = [];
  for (const line of copyLines(content)) {
    lines.push(utf8ToBytes(line));
    await pause();
  }
  yield { name: TEXT_NAME, pieces: lines };
  let bytes = lines.reduce((sum, { length }) => sum + length, 0);
  for (const [at, file] of content.files.entries()) {
    const tell = (why: LackingFile['why']) => leftOut(lacking(file, why));
    // One entry is the text.
    if (at + 1 >= MOST_ENTRIES || bytes + file.bytes > MOST_ARCHIVE_BYTES) {
      tell('tooLarge');
      continue;
    }
    const piece = await readFile(file.sha256);
    if (piece === null) tell('leftOut');
    else {
      bytes += piece.length;
      yield { name: fileEntryName(file.sha256), pieces: [piece] };
    }
  }
}

const lacking = ({ sha256, name }: CopyFile, why: LackingFile['why']): LackingFile => ({ sha256, name, why });
