import { describe, expect, it } from 'vitest';
import { type Visit, visitMark } from '@/app/_store/visitMark';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { aDevice, changeJob, jobIn, openTab, rowsOf } from './tabs';

const examples = {
  label: 'Example',
  load: async () => [{ id: 'job-1', kind: 'job', body: aJobBody() } as const],
};

/** The mark of a browser, which outlives its store. */
const aMark = (first: Visit | null = null) => {
  let visit = first;
  const note = (next: Visit) => {
    visit = next;
  };
  return { last: () => visit, note };
};

describe('a visit', () => {
  it('to the example alone is noted as such, and as the maker’s own once anything was changed', async () => {
    const visits = aMark();
    const store = await openTab(aDevice(), 'here', { examples, visits });
    expect(visits.last()).toEqual({ at: 1_000_000, holdsOwn: false });
    changeJob(store, { name: 'Mine' });
    await store.flush();
    expect(visits.last()).toEqual({ at: 1_000_000, holdsOwn: true });
  });

  it('that could keep nothing is not noted', async () => {
    const visits = aMark();
    const store = await openTab(aDevice(), 'here', {
      examples,
      visits,
      database: () => ({ indexedDB: undefined }),
    });
    changeJob(store, { name: 'Mine' });
    await store.flush();
    expect(visits.last()).toBeNull();
  });
});

describe('an empty store', () => {
  it('where the maker’s own things were says so, and shows no example in their place', async () => {
    const device = aDevice();
    const visits = aMark({ at: 7, holdsOwn: true });
    const store = await openTab(device, 'here', { examples, visits });
    expect(store.getState()).toMatchObject({ status: 'wiped', since: 7, documents: [] });
    expect(await rowsOf(device.factory, 'documents')).toEqual([]);
    expect(visits.last()).toEqual({ at: 7, holdsOwn: true });
    expect(changeJob(store, { name: 'Mine' })).toEqual({ state: 'notOpen' });
  });

  it('begins again with the example when asked to, and is no longer told as wiped', async () => {
    const device = aDevice();
    const visits = aMark({ at: 7, holdsOwn: true });
    const store = await openTab(device, 'here', { examples, visits });
    await store.actions.beginAgain();
    expect(store.getState().status).toBe('ready');
    expect(jobIn(store)?.name).toBe('Club order');
    expect(visits.last()).toEqual({ at: 1_000_000, holdsOwn: false });
    store.close();
    expect((await openTab(device, 'next', { examples, visits })).getState().status).toBe('ready');
  });

  it('takes a copy in, and is ready with what the copy held and no example', async () => {
    const visits = aMark({ at: 7, holdsOwn: true });
    const store = await openTab(aDevice(), 'here', { examples, visits });
    const outcome = await store.actions.arrive(
      'Copy',
      {
        drafts: [
          {
            id: 'job-2',
            kind: 'job',
            snapshot: { version: 2, deleted: false, body: aJobBody({ name: 'Back again' }) },
          },
        ],
        ...{ papers: [], entries: [], unreadable: [], files: [], exchanged: [] },
      },
      { mode: 'replace', staying: [] },
    );
    expect(outcome.state).toBe('arrived');
    expect(store.getState()).toMatchObject({ status: 'ready', documents: [{ id: 'job-2' }] });
    expect(visits.last()?.holdsOwn).toBe(true);
  });

  it('of somebody who only saw the example is filled with it again', async () => {
    const store = await openTab(aDevice(), 'here', { examples, visits: aMark({ at: 7, holdsOwn: false }) });
    expect(jobIn(store)?.name).toBe('Club order');
  });

  it('that its owner emptied is not taken for wiped', async () => {
    const device = aDevice();
    const visits = aMark();
    const store = await openTab(device, 'here', { examples, visits });
    store.actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'job-1' }]);
    await store.flush();
    store.close();
    expect((await openTab(device, 'next', { examples, visits })).getState().status).toBe('ready');
  });
});

describe('the mark in the browser', () => {
  it('where there is no small storage knows nothing and fails at nothing', () => {
    expect(visitMark.last()).toBeNull();
    expect(() => visitMark.note({ at: 1, holdsOwn: true })).not.toThrow();
  });
});
