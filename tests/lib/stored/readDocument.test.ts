import { describe, expect, it } from 'vitest';
import { readDocument } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { aJobBody, aStoredJob, smallRegistry } from './smallRegistry';

const nothing = { entries: [], papers: [] };

describe('readDocument', () => {
  it('reads a document of today as it is', () => {
    expect(readDocument(aStoredJob(), smallRegistry)).toEqual({
      state: 'readable',
      document: aStoredJob(),
      left: nothing,
    });
  });

  it('takes a body of an older version to the one known today, and leaves its revision', () => {
    const old = aStoredJob({ version: 1, revision: 7, body: { name: 'Fair', copies: 12 } });
    expect(readDocument(old, smallRegistry)).toEqual({
      state: 'readable',
      document: aStoredJob({ revision: 7, body: { name: 'Fair', lines: [{ id: 'first', quantity: 12 }] } }),
      left: nothing,
    });
  });

  it.each([
    ['text', 'hello', 'notADocument'],
    ['null', null, 'notADocument'],
    ['an unknown key beside the body', { ...aStoredJob(), colour: 'red' }, 'notADocument'],
    ['a kind of a later build', { ...aStoredJob(), kind: 'quote' }, 'unknownKind'],
    ['a version of a later build', aStoredJob({ version: 3 }), 'newerVersion'],
    ['a version 0', aStoredJob({ version: 0 }), 'notADocument'],
    ['a body with an unknown key', aStoredJob({ body: { ...aJobBody(), extra: 1 } }), 'bodyInvalid'],
    ['a body with NaN', aStoredJob({ body: aJobBody({ most: Number.NaN }) }), 'bodyInvalid'],
    ['no body', aStoredJob({ body: undefined }), 'bodyInvalid'],
    ['a body its step cannot take', aStoredJob({ version: 1, body: { name: 'Fair' } }), 'stepFailed'],
  ])('keeps %s as it was found, with the reason', (_what, raw, code) => {
    const reading = readDocument(raw, smallRegistry);
    expect(reading).toMatchObject({ state: 'unreadable', findings: [{ code }] });
    expect(reading.state === 'unreadable' && reading.raw).toBe(raw);
  });

  it('tells a missing step from a failed one', () => {
    const gap: Registry = { ...smallRegistry, job: { ...smallRegistry.job, version: 3 } };
    expect(readDocument(aStoredJob(), gap)).toMatchObject({
      findings: [{ code: 'stepMissing', fromVersion: 2 }],
    });
  });

  it('still knows the id and the claimed kind of what it cannot read', () => {
    expect(readDocument({ id: 'job-9', kind: 'job', broken: true }, smallRegistry)).toMatchObject({
      id: 'job-9',
      kind: 'job',
    });
  });
});
