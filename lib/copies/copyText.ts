import { utf8ToBytes } from '@noble/hashes/utils.js';
import { crc32 } from '@/lib/picture/crc32';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { CopyDevice, CopyFile, CopyScope } from './copy';
import { COPY_FORMAT, COPY_FORMAT_VERSION } from './copySchemas';

/** What goes into a copy, but for the bytes of its files. */
export interface CopyContent {
  readonly what: CopyScope;
  readonly madeAt: number;
  readonly device: CopyDevice | null;
  /** What the maker calls the device. */
  readonly madeOn?: string | null;
  readonly drafts: readonly Stored[];
  readonly hashes: ReadonlyMap<string, readonly string[]>;
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
  /** As they were found. */
  readonly unreadable: readonly unknown[];
  readonly files: readonly CopyFile[];
}

/**
 * Writes the text of a copy, line by line: JSON for whoever opens it, and one record a line with a check of its own, so
 * that damage to a line leaves the others whole.
 */
export function* copyLines(content: CopyContent): Generator<string> {
  const { what, madeAt, device, madeOn = null, drafts, hashes, papers, entries, unreadable, files } = content;
  const counts = {
    files: files.length,
    drafts: drafts.length,
    papers: papers.length,
    entries: entries.length,
    unreadable: unreadable.length,
  };
  const head = {
    format: COPY_FORMAT,
    formatVersion: COPY_FORMAT_VERSION,
    what,
    madeAt,
    device,
    madeOn,
    counts,
  };
  yield `${checkedLine(head).slice(0, -1)},\n`;
  yield* section('files', files, (file) => ({ file }));
  yield ',\n';
  yield* section('drafts', drafts, (draft) => ({ draft, hashes: hashes.get(draft.id) ?? [] }));
  yield ',\n';
  yield* section('papers', papers, (paper) => ({ paper }));
  yield ',\n';
  yield* section('entries', entries, (entry) => ({ entry }));
  yield ',\n';
  yield* section('unreadable', unreadable, (raw) => ({ unreadable: raw }));
  yield '\n}\n';
}

/** @returns JSON of an object whose first key is a check over the text of all that follows it. */
function checkedLine(fields: Readonly<Record<string, unknown>>): string {
  const rest = JSON.stringify(fields).slice(1);
  return `{"check":"${checkOf(rest)}",${rest}`;
}

/** @returns CRC-32 of a text in UTF-8, eight hexadecimal digits. */
export const checkOf = (text: string): string => crc32(utf8ToBytes(text)).toString(16).padStart(8, '0');

// Helpers

function* section<Item>(
  name: string,
  items: readonly Item[],
  fieldsOf: (item: Item) => Readonly<Record<string, unknown>>,
): Generator<string> {
  yield `"${name}":[\n`;
  for (const [at, item] of items.entries()) {
    yield `${checkedLine(fieldsOf(item))}${at < items.length - 1 ? ',' : ''}\n`;
  }
  yield ']';
}
