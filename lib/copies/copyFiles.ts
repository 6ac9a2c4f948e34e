import { joinedBytes } from '@/lib/picture/joinedBytes';
import { sha256Pieces } from '@/lib/stored/sha256';
import { MOST_FILE_BYTES } from '@/shared/schemas/keptFile';
import type { ArchiveEntry } from './archive/archiveEntry';
import type { ByteSource } from './archive/byteSource';
import { type Unpacking, unpacked } from './archive/unpacked';
import type { CopyFile, LackingFile } from './copy';

interface FilesToCheck {
  /** As the text lists them. */
  readonly named: readonly CopyFile[];
  /** Where each may lie, by its hash. */
  readonly places: ReadonlyMap<string, readonly ArchiveEntry[]>;
  readonly pause: () => Promise<void>;
}

interface CheckedFiles {
  readonly files: readonly CopyFile[];
  readonly lacking: readonly LackingFile[];
  readonly fileOf: (sha256: string) => Promise<Uint8Array<ArrayBuffer> | null>;
}

/** Holds every file of an archive against its hash, a piece at a time; only what agrees is a file of the copy. */
export async function checkFiles(
  source: ByteSource,
  { named, places, pause }: FilesToCheck,
): Promise<CheckedFiles> {
  const files: CopyFile[] = [];
  const lacking: LackingFile[] = [];
  const sound = new Map<string, ArchiveEntry>();
  const names = new Map(named.map(({ sha256, name }) => [sha256, name]));
  for (const sha256 of new Set([...names.keys(), ...places.keys()])) {
    const name = names.get(sha256);
    const found = await soundPlace(source, { sha256, places: places.get(sha256) ?? [], pause });
    if (found.state === 'sound') {
      sound.set(sha256, found.place);
      // The line that names it may be the damaged one.
      files.push({ sha256, name: name ?? sha256.slice(0, 12), bytes: found.bytes });
    } else if (name !== undefined) lacking.push({ sha256, name, why: found.why });
  }
  return {
    files,
    lacking,
    fileOf: async (sha256) => {
      const place = sound.get(sha256);
      return place === undefined ? null : contentAt(source, place);
    },
  };
}

// Helpers

type FoundPlace =
  | { readonly state: 'sound'; readonly place: ArchiveEntry; readonly bytes: number }
  | { readonly state: 'lacking'; readonly why: LackingFile['why'] };

async function soundPlace(
  source: ByteSource,
  { sha256, places, pause }: { sha256: string; places: readonly ArchiveEntry[]; pause: () => Promise<void> },
): Promise<FoundPlace> {
  const endings: Unpacking[] = [];
  for (const place of places) {
    const hash = sha256Pieces();
    let bytes = 0;
    const ending = await unpacked(source, place, MOST_FILE_BYTES, async (piece) => {
      hash.add(piece);
      bytes += piece.length;
      await pause();
    });
    endings.push(ending);
    if (ending === 'whole' && hash.end() === sha256) return { state: 'sound', place, bytes };
  }
  const isMissing = endings.every((ending) => ending === 'cut');
  return {
    state: 'lacking',
    why: isMissing ? 'missing' : endings.includes('tooLarge') ? 'tooLarge' : 'damaged',
  };
}

async function contentAt(source: ByteSource, place: ArchiveEntry): Promise<Uint8Array<ArrayBuffer> | null> {
  const pieces: Uint8Array[] = [];
  const ending = await unpacked(source, place, MOST_FILE_BYTES, (piece) => void pieces.push(piece));
  return ending === 'whole' ? joinedBytes(pieces) : null;
}
