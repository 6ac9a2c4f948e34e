import type { Finding } from '@/shared/finding';
import { failed, ok, type Result } from '@/shared/result';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { documentFindings } from './documentFindings';
import { makeFinding } from './makeFinding';

/**
 * Blanks or artworks that one request may bring along; a job of twelve lines uses 48 at most. Lists know their limit
 * before they look at what is in them, but a schema has read every named entry by the time it could count them.
 */
const MOST_ENTRIES = 1_000;

/**
 * Reads the documents of one job.
 *
 * @param value anything at all
 * @returns the documents, or DOC-01 for everything that their schema refuses
 */
export function readJobInput(value: unknown): Result<JobInput, readonly Finding[]> {
  const crowded = (['blanks', 'artworks'] as const).filter((name) => entriesIn(value, name) > MOST_ENTRIES);
  if (crowded.length > 0) return failed(crowded.map(tooMany));
  const parsed = jobInputSchema.safeParse(value);
  return parsed.success ? ok(parsed.data) : failed(documentFindings(parsed.error, 'request', { value }));
}

function entriesIn(value: unknown, name: string): number {
  const entries: unknown = typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;
  return typeof entries === 'object' && entries !== null ? Object.keys(entries).length : 0;
}

const tooMany = (name: string): Finding =>
  makeFinding({
    id: 'DOC-01',
    severity: 'stop',
    variant: 'tooMany',
    where: { document: 'request', path: [name] },
    facts: { limit: MOST_ENTRIES },
  });
