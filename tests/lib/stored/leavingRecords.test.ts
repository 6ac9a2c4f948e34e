import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { leavingRecords } from '@/lib/stored/leavingRecords';
import { readDocument } from '@/lib/stored/readDocument';
import { readEntry } from '@/lib/stored/readEntry';
import { readPaper } from '@/lib/stored/readPaper';
import type { Registry } from '@/lib/stored/registry';
import { aStoredJob, type SmallJob, smallPaperKinds, smallRegistry } from './smallRegistry';

const jobWas = z.looseObject({ poured: z.array(z.number()), offers: z.array(z.string()) });

/** The small job in a version more: what was poured and offered is entries and papers from then on. */
const job: Registry<{ readonly job: SmallJob }>['job'] = {
  ...smallRegistry.job,
  version: 3,
  steps: {
    ...smallRegistry.job.steps,
    2: (body) => {
      const { poured: _, offers: __, ...rest } = jobWas.parse(body);
      return rest;
    },
  },
  partings: {
    2: (body, { id, at }) => {
      const { poured, offers } = jobWas.parse(body);
      return {
        entries: poured.map((mL) => ({
          kind: 'inkRefill',
          version: 1,
          at: at + 1,
          body: { day: '2026-11-03', mL },
        })),
        papers: offers.map((text, index) => {
          const number = { count: index + 1, letter: null };
          return {
            kind: 'offer',
            version: 1,
            at,
            body: { number, text },
            ...{ series: id, number, about: { kind: 'job', id } },
          };
        }),
      };
    },
  },
};
const registry = { ...smallRegistry, job };

const older = (poured: readonly number[], offers: readonly string[] = []) =>
  aStoredJob({ body: { name: 'Club order', lines: [], poured, offers } });
const left = (raw: unknown) => {
  const reading = readDocument(raw, registry);
  if (reading.state !== 'readable') throw new Error(JSON.stringify(reading.findings));
  return reading.left;
};

describe('what leaves an older record', () => {
  it('is told with it as entries, papers and the entries that issue them, and is not in it any more', () => {
    const raw = older([40], ['Ten shirts']);
    expect(readDocument(raw, registry)).toMatchObject({
      state: 'readable',
      document: { version: 3, body: { name: 'Club order', lines: [] } },
    });
    const { entries, papers } = left(raw);
    const [paper] = papers;
    expect(entries).toMatchObject([
      { kind: 'inkRefill', version: 1, count: 1, at: 1001, body: { mL: 40 } },
      { kind: 'issuing', version: 1, count: 1, at: 1000, body: { paperId: paper?.id } },
    ]);
    expect(papers).toMatchObject([
      {
        series: 'job-1',
        number: { count: 1, letter: null },
        about: { kind: 'job', id: 'job-1' },
        file: null,
        // Of {"number":{"count":1,"letter":null},"text":"Ten shirts"}, by sha256sum.
        sha256: 'd22a2b98e9b947e5a1f9c2a78331a18ef9eb34ea6c850840f336fdaa77dcf4b8',
      },
    ]);
  });

  it('can be read as any other, by the schemas of entries and papers', () => {
    const { entries, papers } = left(older([40], ['Ten shirts']));
    expect(entries.map((entry) => readEntry(entry, entryKinds))).toEqual(
      entries.map((entry) => ({ state: 'readable', entry })),
    );
    expect(papers.map((paper) => readPaper(paper, smallPaperKinds))).toEqual(
      papers.map((paper) => ({ state: 'readable', paper })),
    );
  });

  it('is the same whenever it is read, and what an older copy lacks is the same still', () => {
    expect(left(older([40, 60]))).toEqual(left(older([40, 60])));
    expect(left(older([60, 40, 80])).entries).toEqual(
      expect.arrayContaining([...left(older([40, 60])).entries]),
    );
  });

  it('stays two where it says the same twice, of which an older copy with one gives the first', () => {
    const two = left(older([40, 40])).entries.map(({ id }) => id);
    expect(new Set(two).size).toBe(2);
    expect(left(older([40])).entries.map(({ id }) => id)).toEqual(two.slice(0, 1));
  });

  it('is another where it left another document', () => {
    const entry = { kind: 'inkRefill', version: 1, at: 5, body: { mL: 1 } };
    const ids = ['one', 'two'].map(
      (id) => leavingRecords({ kind: 'job', id }, [{ entries: [entry], papers: [] }]).entries[0]?.id,
    );
    expect(ids[0]).not.toBe(ids[1]);
    expect(ids[0]).toMatch(/^[0-9a-f]{20}-1$/);
  });

  it('leaves a record that a parting cannot take unread and as it was', () => {
    const raw = aStoredJob({ body: { name: 'Club order', lines: [], poured: 'much' } });
    expect(readDocument(raw, registry)).toMatchObject({
      state: 'unreadable',
      raw,
      findings: [{ code: 'stepFailed', fromVersion: 2 }],
    });
  });
});

describe('a kept paper', () => {
  const [paper] = left(older([], ['Ten shirts'])).papers;

  it('whose text is not what it was is told as damaged and kept as it was found', () => {
    const raw = { ...paper, body: { number: { count: 1, letter: null }, text: 'Nine shirts' } };
    expect(readPaper(raw, smallPaperKinds)).toMatchObject({
      state: 'unreadable',
      id: paper?.id,
      raw,
      findings: [{ code: 'paperDamaged' }],
    });
  });

  it('of a later build is told as such, and one of no known kind', () => {
    expect(readPaper({ ...paper, version: 2 }, smallPaperKinds)).toMatchObject({
      findings: [{ code: 'newerVersion' }],
    });
    expect(readPaper({ ...paper, kind: 'letter' }, smallPaperKinds)).toMatchObject({
      findings: [{ code: 'unknownKind', kind: 'letter' }],
    });
  });
});
