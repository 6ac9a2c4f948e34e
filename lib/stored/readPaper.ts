import { type Paper, paperSchema } from '@/shared/schemas/happened';
import { keptBeside } from './asKept';
import { isPaperSound } from './isPaperSound';
import { openRecord, type UnreadableRecord } from './openRecord';
import { readBody } from './readBody';
import { entryOf, type PaperRegistry } from './registry';

type PaperReading = { readonly state: 'readable'; readonly paper: Paper } | UnreadableRecord;

/**
 * Reads one kept paper: its wrapping, whether it is still what went out, then its body, brought up to the known version
 * by its kind.
 */
export function readPaper(raw: unknown, paperKinds: PaperRegistry): PaperReading {
  const opened = openRecord(raw, paperSchema, (name) => entryOf(paperKinds, name));
  if (opened.state === 'unreadable') return opened;
  const { envelope, kind } = opened;
  if (!isPaperSound(raw)) return opened.unreadable({ code: 'paperDamaged' });
  const body = readBody(envelope.body, envelope.version, kind);
  if (!body.ok) return opened.unreadable(body.problem);
  return {
    state: 'readable',
    paper: { ...envelope, version: kind.version, body: body.value, ...keptBeside(envelope, kind.version) },
  };
}
