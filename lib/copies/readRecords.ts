import { sameValue } from '@/lib/merging/sameValue';
import { asKept } from '@/lib/stored/asKept';
import { fallingWith } from '@/lib/stored/fallingWith';
import type { LeftRecords } from '@/lib/stored/leavingRecords';
import { claimsOf, type UnreadableRecord } from '@/lib/stored/openRecord';
import { readDocument } from '@/lib/stored/readDocument';
import { readEntry } from '@/lib/stored/readEntry';
import { readPaper } from '@/lib/stored/readPaper';
import { entryOf, type StoreKinds } from '@/lib/stored/registry';
import { travellingEntries } from '@/lib/stored/travellingEntries';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { Copy, CopyFile } from './copy';
import type { CopyRecord } from './copyRecords';
import { copyFileSchema, hashesSchema } from './copySchemas';

/** The records of a copy, each read by the schema of its kind. */
type ReadRecords = Pick<
  Copy,
  'drafts' | 'hashes' | 'papers' | 'entries' | 'leftByDrafts' | 'unreadable' | 'files'
>;

/**
 * Reads the records of a copy. What is of a newer shape or an unknown kind, or has the id of one before it, stays as it
 * was found.
 *
 * @param pause taken after each, so that whoever shares the thread gets a turn
 */
export async function readRecords(
  records: readonly CopyRecord[],
  kinds: StoreKinds,
  pause: () => Promise<void>,
): Promise<ReadRecords> {
  const drafts = new Map<string, Stored>();
  const hashes = new Map<string, readonly string[]>();
  const papers = new Map<string, Paper>();
  const entries = new Map<string, Entry>();
  const left = new Map<string, readonly Entry[]>();
  const files = new Map<string, CopyFile>();
  const unreadable: UnreadableRecord[] = [];
  // What the device set aside because its number was taken there, and what else it could not read.
  const clashing: (Paper | Entry)[] = [];
  const wasUnreadable: (Paper | Entry)[] = [];
  for (const record of records) {
    const read = readRecord(record, kinds);
    if (read.state === 'file') add(files, read.file.sha256, read.file);
    else if (read.state === 'unreadable') unreadable.push(read);
    else if (read.state === 'draft') {
      if (add(drafts, read.draft.id, read.draft)) {
        hashes.set(read.draft.id, read.hashes);
        for (const paper of read.left.papers) add(papers, paper.id, paper);
        // Papers never lose their place, so what issued them comes as well.
        for (const entry of read.left.entries) if (entry.kind === 'issuing') add(entries, entry.id, entry);
        const others = read.left.entries.filter(({ kind }) => kind !== 'issuing');
        if (others.length > 0) left.set(read.draft.id, others);
      } else unreadable.push(aside(record.raw, 'another record of the copy has this id'));
    } else {
      const isNew = read.state === 'paper' ? addOnce(papers, read.paper) : addOnce(entries, read.entry);
      const item = read.state === 'paper' ? read.paper : read.entry;
      if (!isNew) unreadable.push(numberTaken(record.raw));
      if (record.nature === 'unreadable') (isNew ? wasUnreadable : clashing).push(item);
    }
    await pause();
  }
  for (const item of fallingWith(clashing, wasUnreadable)) {
    (entryOf(kinds.paperKinds, item.kind) === undefined ? entries : papers).delete(item.id);
    unreadable.push(numberTaken(asKept(item)));
  }
  // What a draft let go of may stand in the copy by itself as well.
  const leftAlone = [...left].map(
    ([id, own]) => [id, own.filter((entry) => !entries.has(entry.id))] as const,
  );
  return {
    drafts: [...drafts.values()],
    hashes,
    papers: [...papers.values()],
    // A copy of an earlier build may hold what was out of force on its device alone.
    entries: travellingEntries([...entries.values()]),
    leftByDrafts: new Map(leftAlone.filter(([, own]) => own.length > 0)),
    unreadable,
    files: [...files.values()],
  };
}

// Helpers

type ReadRecord =
  | { readonly state: 'file'; readonly file: CopyFile }
  | {
      readonly state: 'draft';
      readonly draft: Stored;
      readonly left: LeftRecords;
      readonly hashes: readonly string[];
    }
  | { readonly state: 'paper'; readonly paper: Paper }
  | { readonly state: 'entry'; readonly entry: Entry }
  | UnreadableRecord;

function readRecord({ nature, raw, hashes }: CopyRecord, kinds: StoreKinds): ReadRecord {
  if (nature === 'file') {
    const file = copyFileSchema.safeParse(raw);
    return file.success ? { state: 'file', file: file.data } : aside(raw, 'it names no file');
  }
  const is = nature === 'unreadable' ? natureOf(raw, kinds) : nature;
  if (is === 'paper') {
    const reading = readPaper(raw, kinds.paperKinds);
    return reading.state === 'unreadable' ? reading : { state: 'paper', paper: reading.paper };
  }
  if (is === 'entry') {
    const reading = readEntry(raw, kinds.entryKinds);
    return reading.state === 'unreadable' ? reading : { state: 'entry', entry: reading.entry };
  }
  const reading = readDocument(raw, kinds.registry);
  if (reading.state === 'unreadable') return reading;
  const known = hashesSchema.safeParse(hashes);
  return {
    state: 'draft',
    draft: reading.document,
    left: reading.left,
    hashes: known.success ? known.data : [],
  };
}

/** What an earlier build could not read, this one may. */
function natureOf(raw: unknown, { paperKinds, entryKinds }: StoreKinds): 'draft' | 'paper' | 'entry' {
  const kind = claimsOf(raw).kind ?? '';
  if (entryOf(paperKinds, kind) !== undefined) return 'paper';
  return entryOf(entryKinds, kind) === undefined ? 'draft' : 'entry';
}

/** What an old draft let go of may stand in the copy by itself as well. */
function addOnce<Item extends Paper | Entry>(into: Map<string, Item>, item: Item): boolean {
  if (add(into, item.id, item)) return true;
  const before = into.get(item.id);
  return before !== undefined && sameValue(asKept(before), asKept(item));
}

/** @returns whether the key was free. */
function add<Item>(into: Map<string, Item>, key: string, item: Item): boolean {
  if (into.has(key)) return false;
  into.set(key, item);
  return true;
}

const numberTaken = (raw: unknown): UnreadableRecord => ({
  state: 'unreadable',
  ...claimsOf(raw),
  raw,
  findings: [{ code: 'numberTaken' }],
});

const aside = (raw: unknown, message: string): UnreadableRecord => ({
  state: 'unreadable',
  ...claimsOf(raw),
  raw,
  findings: [{ code: 'notADocument', issues: [{ path: [], message }] }],
});
