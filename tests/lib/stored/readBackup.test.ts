import { describe, expect, it } from 'vitest';
import { readBackup } from '@/lib/stored/readBackup';
import { aStoredJob, smallRegistry } from './smallRegistry';

const file = (change: object = {}) => ({
  format: 'pressminute-backup',
  formatVersion: 1,
  exportedAt: 5,
  documents: [aStoredJob()],
  unreadable: [{ id: 'odd', half: true }],
  ...change,
});

describe('readBackup', () => {
  it('reads documents and carries what nobody can read', () => {
    expect(readBackup(file(), smallRegistry)).toEqual({
      ok: true,
      value: {
        documents: [aStoredJob()],
        entries: [],
        papers: [],
        unreadable: [{ id: 'odd', half: true }],
        files: [],
      },
    });
  });

  it('takes documents of an older version to the one known today', () => {
    const old = aStoredJob({ version: 1, body: { name: 'Fair', copies: 3 } });
    expect(readBackup(file({ documents: [old] }), smallRegistry)).toMatchObject({
      value: { documents: [{ version: 2, body: { lines: [{ quantity: 3 }] } }] },
    });
  });

  it.each([
    ['nothing', undefined, 'notABackup'],
    ['another format', file({ format: 'other' }), 'notABackup'],
    ['a format of a later build', file({ formatVersion: 2 }), 'notABackup'],
    ['an unknown key', file({ extra: 1 }), 'notABackup'],
    ['an id twice', file({ documents: [aStoredJob(), aStoredJob()] }), 'sameIdTwice'],
    ['a document of a later build', file({ documents: [aStoredJob({ version: 9 })] }), 'documentUnreadable'],
  ])('refuses %s', (_what, raw, code) => {
    expect(readBackup(raw, smallRegistry)).toMatchObject({ ok: false, problem: [{ code }] });
  });

  it('tells every document that cannot be read, not the first', () => {
    const broken = [aStoredJob({ id: 'a', body: 1 }), aStoredJob({ id: 'b', body: 2 })];
    expect(readBackup(file({ documents: broken }), smallRegistry)).toMatchObject({
      problem: [{ id: 'a' }, { id: 'b' }],
    });
  });
});
