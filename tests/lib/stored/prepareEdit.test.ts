import { describe, expect, it } from 'vitest';
import { prepareEdit } from '@/lib/stored/prepareEdit';
import { aJobBody, aStoredJob, smallRegistry } from './smallRegistry';

const shown = new Map([
  ['job-1', aStoredJob()],
  ['job-2', aStoredJob({ id: 'job-2', deletedAt: 5 })],
]);
const job = { kind: 'job', id: 'job-1' } as const;

describe('prepareEdit', () => {
  it('gives the document before and after', () => {
    const prepared = prepareEdit(
      [{ ...job, do: 'change', to: () => aJobBody({ name: 'Team' }) }],
      shown,
      smallRegistry,
    );
    expect(prepared).toEqual({
      ok: true,
      value: [
        {
          ...job,
          before: { version: 2, deleted: false, body: aJobBody() },
          after: { version: 2, deleted: false, body: aJobBody({ name: 'Team' }) },
        },
      ],
    });
  });

  it('changes nothing where the edit writes what is there', () => {
    expect(prepareEdit([{ ...job, do: 'change', to: () => aJobBody() }], shown, smallRegistry)).toEqual({
      ok: true,
      value: [],
    });
  });

  it('makes one change of several edits of one document', () => {
    const prepared = prepareEdit(
      [
        { ...job, id: 'job-3', do: 'add', body: aJobBody() },
        { ...job, id: 'job-3', do: 'change', to: () => aJobBody({ name: 'Team' }) },
      ],
      shown,
      smallRegistry,
    );
    expect(prepared).toMatchObject({
      ok: true,
      value: [{ id: 'job-3', before: null, after: { body: { name: 'Team' } } }],
    });
  });

  it.each([
    [
      'a body that could not be read again',
      { ...job, do: 'change', to: () => ({ name: '' }) },
      'bodyInvalid',
    ],
    ['a document that is not there', { ...job, id: 'job-9', do: 'delete' }, 'noSuchDocument'],
    ['a document that is deleted', { ...job, id: 'job-2', do: 'delete' }, 'noSuchDocument'],
    ['a document of another kind', { kind: 'blank', id: 'job-1', do: 'delete' }, 'noSuchDocument'],
    ['an id that is taken', { ...job, do: 'add', body: aJobBody() }, 'idTaken'],
    ['an id a deleted document holds', { ...job, id: 'job-2', do: 'add', body: aJobBody() }, 'idTaken'],
  ] as const)('refuses %s', (_what, edit, code) => {
    expect(prepareEdit([edit], shown, smallRegistry)).toMatchObject({ ok: false, problem: [{ code }] });
  });

  it('does nothing of an edit of which one part is refused', () => {
    const edits = [
      { ...job, do: 'delete' },
      { ...job, id: 'job-9', do: 'delete' },
    ] as const;
    expect(prepareEdit(edits, shown, smallRegistry).ok).toBe(false);
  });
});
