import { type Entry, entrySchema } from '@/shared/schemas/happened';
import { keptBeside } from './asKept';
import { openRecord, type UnreadableRecord } from './openRecord';
import { readBody } from './readBody';
import { type EntryRegistry, entryOf } from './registry';

type EntryReading = { readonly state: 'readable'; readonly entry: Entry } | UnreadableRecord;

/** Reads one kept entry: its wrapping, then its body, brought up to the known version by its kind. */
export function readEntry(raw: unknown, entryKinds: EntryRegistry): EntryReading {
  const opened = openRecord(raw, entrySchema, (name) => entryOf(entryKinds, name));
  if (opened.state === 'unreadable') return opened;
  const { envelope, kind } = opened;
  const body = readBody(envelope.body, envelope.version, kind);
  if (!body.ok) return opened.unreadable(body.problem);
  return {
    state: 'readable',
    entry: { ...envelope, version: kind.version, body: body.value, ...keptBeside(envelope, kind.version) },
  };
}
