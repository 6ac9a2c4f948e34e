import { describe, expect, it } from 'vitest';
import { recordReason } from '@/app/_words/store/recordWords';
import { kinds } from '@/lib/kinds/kinds';
import { claimedName } from '@/lib/stored/claimedName';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import { readDocument } from '@/lib/stored/readDocument';
import { club } from '@/tests/fixtures/clubJob';

const context = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;

function unreadable(body: unknown, version = kinds.job.version): UnreadableRecord {
  const reading = readDocument(
    { id: 'club-order', kind: 'job', version, revision: 1, updatedAt: 1, body },
    kinds,
  );
  if (reading.state !== 'unreadable') throw new Error('the record can be read');
  return reading;
}

const { job } = club();
const torn = unreadable({ ...job, lines: job.lines.map((line) => ({ ...line, quantities: 'oops' })) });

describe('a record that cannot be read', () => {
  it('goes by the name in it, not by its id', () => {
    expect(claimedName(torn.raw)).toBe('Ramblers Club shirts');
    expect(claimedName(unreadable({ ...job, name: 7 }).raw)).toBeNull();
    expect(claimedName(unreadable('half a record').raw)).toBeNull();
  });

  it('is told of in plain words: which field, what is there, what it must be', () => {
    const reason = recordReason(torn, context);
    expect(reason).toMatch(/of line 1 .* must be a list .*, and is text/);
    expect(reason).not.toMatch(/expected|received|Invalid/);
  });

  it('counts what else is wrong', () => {
    expect(recordReason(unreadable({ name: 'Nothing else' }), context)).toMatch(/And \d+ more\.$/);
  });

  it('of a newer version says so', () => {
    expect(recordReason(unreadable(job, 99), context)).toMatch(/^A newer version of the app wrote it/);
  });
});
