import type { UnreadableRecord } from '@/lib/stored/openRecord';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';

/** All there is on a device, or one draft with what hangs on it. */
export type CopyScope = 'everything' | { readonly kind: string; readonly id: string; readonly name: string };

/** Who wrote it; `letter` stands in the numbers of its papers. */
export interface CopyDevice {
  readonly id: string;
  readonly letter: string;
}

/** A file that lies beside the documents, under the hash of its bytes. */
export interface CopyFile {
  /** In lower-case hexadecimal; in a copy from before it is worked out from the bytes. */
  readonly sha256: string;
  readonly name: string;
  readonly bytes: number;
}

/** What was read of a copy: whole records and whole files only. */
export interface Copy {
  readonly formatVersion: 1 | 2;
  readonly of: CopyScope;
  /** Null where the line that says it is damaged. */
  readonly madeAt: number | null;
  /** Null in a copy from before devices were told apart. */
  readonly device: CopyDevice | null;
  /** What its maker called the device; null where it had no name. */
  readonly madeOn: string | null;
  /** With tombstones, in the version of shape known here. */
  readonly drafts: readonly Stored[];
  /** Hashes that each draft has had, by its id, the latest last; none for copies from before. */
  readonly hashes: ReadonlyMap<string, readonly string[]>;
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
  /**
   * Entries that only a draft of an earlier shape holds, by its id, such as a stock that stood in a blank. The same
   * draft here may have gone on without them.
   */
  readonly leftByDrafts: ReadonlyMap<string, readonly Entry[]>;
  /** Kept as they are: of a newer shape, an unknown kind, or unreadable where the copy was made already. */
  readonly unreadable: readonly UnreadableRecord[];
  readonly files: readonly CopyFile[];
  readonly lacks: CopyLacks;
}

/** What a copy should hold and does not, by name; nothing of it is guessed. */
export interface CopyLacks {
  /** The file ends before its end: it was not fetched or written whole. */
  readonly endsEarly: boolean;
  /** Whole records that came out; `of` is null where even that cannot be made out. */
  readonly records: { readonly found: number; readonly of: number | null };
  readonly files: readonly LackingFile[];
  /** Entries of the archive that were not taken. */
  readonly refused: readonly RefusedEntry[];
}

export interface LackingFile {
  readonly sha256: string;
  readonly name: string;
  /** `leftOut`: it was not there already where the copy was made. */
  readonly why: 'missing' | 'damaged' | 'tooLarge' | 'leftOut';
}

export interface RefusedEntry {
  /** As it stands in the archive, shortened. */
  readonly name: string;
  readonly why: 'climbs' | 'notOurs' | 'twice' | 'tooLarge' | 'packedOtherwise';
}

/** Why a file is no copy; told before anything is asked. */
export type NotACopy =
  | {
      readonly code: 'notOurs';
      readonly looksLike: 'empty' | 'encryptedZip' | 'otherZip' | 'otherJson' | 'picture' | 'pdf' | 'other';
    }
  /** A newer Pressminute wrote it in a way that is not known here. */
  | { readonly code: 'newerFormat'; readonly formatVersion: number; readonly known: number }
  | { readonly code: 'tooLarge'; readonly bytes: number; readonly most: number }
  /** It is a copy, but not one record of it is whole. */
  | { readonly code: 'nothingWhole' }
  /** The device could not read the file. */
  | { readonly code: 'notReadable'; readonly message: string };
