import { describe, expect, it } from 'vitest';
import { sha256OfBytes, sha256OfValue } from '@/lib/stored/sha256';
import { breakOffAt } from './breakOff';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  changeJob,
  type Device,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

interface Number {
  readonly count: number;
  readonly letter: string | null;
}
const pdf = new TextEncoder().encode('%PDF-1.7 twenty shirts');
const offer = (text = 'Twenty shirts', series = 'job-1') =>
  ({
    kind: 'offer',
    about: { kind: 'job', id: 'job-1' },
    series,
    body: (number: Number) => ({ number, text }),
    file: () => ({ name: 'offer.pdf', content: pdf }),
  }) as const;
const offers = (store: SmallStore) =>
  store.getState().papers.offer.map(({ number, withdrawn }) => [number.count, withdrawn]);
const tables = ['papers', 'entries', 'files', 'steps', 'contents', 'meta'] as const;
const everything = (device: Device) => Promise.all(tables.map((table) => rowsOf(device.factory, table)));

describe('issuing', () => {
  it('keeps the paper, its file under the SHA-256 of its bytes, and the entry that says so', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const outcome = await store.actions.issue('Offer', offer());
    const id = store.getState().device?.id ?? '';
    const letter = store.getState().device?.letter ?? '';
    const paper = {
      id: `${id}-1`,
      kind: 'offer',
      version: 1,
      device: id,
      count: 1,
      at: 1_000_000,
      series: 'job-1',
      number: { count: 1, letter },
      about: { kind: 'job', id: 'job-1' },
      sha256: sha256OfValue({ text: 'Twenty shirts', number: { letter, count: 1 } }),
      file: { sha256: sha256OfBytes(pdf), name: 'offer.pdf', bytes: pdf.length },
      body: { number: { count: 1, letter }, text: 'Twenty shirts' },
    };
    expect(outcome).toEqual({ state: 'issued', paper });
    expect(await rowsOf(device.factory, 'papers')).toEqual([paper]);
    expect(await rowsOf(device.factory, 'entries')).toMatchObject([
      { id: `${id}-2`, kind: 'issuing', body: { paperId: `${id}-1` } },
    ]);
    expect((await store.actions.readFile(sha256OfBytes(pdf)))?.name).toBe('offer.pdf');
    expect(store.getState().papers.offer).toEqual([{ ...paper, withdrawn: false }]);
  });

  it('numbers each series for itself, after all that are known of it, by whatever device', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await store.actions.issue('Offer', offer());
    const [row] = (await rowsOf(device.factory, 'papers')) as readonly object[];
    await writeRow(device.factory, 'papers', {
      ...row,
      id: 'other000-7',
      device: 'other000',
      number: { count: 41, letter: 'B' },
    });
    // A paper nothing here can read, and one set aside, have their numbers all the same.
    await writeRow(device.factory, 'papers', {
      id: 'x',
      kind: 'offer',
      series: 'unread',
      number: { count: 5 },
    });
    await writeRow(device.factory, 'aside', { key: '1', raw: { series: 'aside', number: { count: 8 } } });
    const countOf = async (series: string) => {
      const outcome = await store.actions.issue('Offer', offer('More', series));
      return outcome.state === 'issued' ? outcome.paper.number.count : null;
    };
    expect(await countOf('job-1')).toBe(42);
    expect(await countOf('job-2')).toBe(1);
    expect(await countOf('unread')).toBe(6);
    expect(await countOf('aside')).toBe(9);
  });

  it('asked for twice in quick succession gives one paper of a series, and the next press another', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const [one, two, other] = await Promise.all([
      store.actions.issue('Offer', offer()),
      store.actions.issue('Offer', offer()),
      store.actions.issue('Offer', offer('Other', 'job-2')),
    ]);
    expect(two).toEqual(one);
    expect(other).toMatchObject({ paper: { series: 'job-2', number: { count: 1 } } });
    expect(offers(store)).toHaveLength(2);
    expect(await store.actions.issue('Offer', offer())).toMatchObject({ paper: { number: { count: 2 } } });
  });

  it('a text with half a sign in it is told as that, uses no number, and is no failure of the disk', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const before = await everything(device);
    expect(await store.actions.issue('Offer', offer('half \ud83d'))).toEqual({
      state: 'notKept',
      why: 'brokenText',
    });
    expect(store.getState().kept.state).toBe('kept');
    expect(await everything(device)).toEqual(before);
    expect(await store.actions.issue('Offer', offer())).toMatchObject({ paper: { number: { count: 1 } } });
  });

  it('in two tabs at the same moment gives two numbers', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    const outcomes = await Promise.all([here, there].map((tab) => tab.actions.issue('Offer', offer())));
    const counts = outcomes.flatMap((outcome) =>
      outcome.state === 'issued' ? [outcome.paper.number.count] : [],
    );
    expect(counts.toSorted((one, other) => one - other)).toEqual([1, 2]);
    await expect.poll(() => offers(here)).toHaveLength(2);
    await expect.poll(() => offers(there)).toEqual(offers(here));
  });

  it('is withdrawn by undo and out again after redo, and its number is never given again', async () => {
    const store = await openTabWithJob(aDevice());
    await store.actions.issue('Offer', offer());
    await store.actions.undo();
    expect(offers(store)).toEqual([[1, true]]);
    await store.actions.redo();
    expect(offers(store)).toEqual([[1, false]]);
    await store.actions.undo();
    await store.actions.issue('Offer', offer('Other'));
    expect(offers(store)).toEqual([
      [1, true],
      [2, false],
    ]);
  });

  it('is taken back by withdrawing, which is a step of its own; what never went out cannot be', async () => {
    const store = await openTabWithJob(aDevice());
    const outcome = await store.actions.issue('Offer', offer());
    const id = outcome.state === 'issued' ? outcome.paper.id : '';
    expect(store.actions.withdraw('Withdraw 1', id)).toEqual({ state: 'shown' });
    expect(offers(store)).toEqual([[1, true]]);
    await store.flush();
    expect(store.actions.withdraw('Withdraw 1', id)).toEqual({ state: 'unchanged' });
    expect(store.actions.withdraw('Withdraw', 'nobody-1')).toMatchObject({ state: 'refused' });
    expect(store.getState().undoLabel).toBe('Withdraw 1');
    await store.actions.undo();
    expect(offers(store)).toEqual([[1, false]]);
  });

  it('broken off at any request leaves all of it or nothing', async () => {
    let whole = 0;
    for (let nth = 1; whole < 2; nth += 1) {
      const device = aDevice();
      const store = await openTabWithJob(device);
      const before = await everything(device);
      const broken = breakOffAt(nth);
      const outcome = await store.actions.issue('Offer', offer());
      broken.mend();
      if (outcome.state === 'issued') {
        whole += 1;
        expect(broken.requests()).toBeLessThan(nth);
        continue;
      }
      expect(await everything(device), `broken off at request ${nth}`).toEqual(before);
      expect(offers(store)).toEqual([]);
      expect(store.getState().kept).toMatchObject({ state: 'notKept' });
      // The next attempt gets the number that nobody was given.
      expect(await store.actions.issue('Offer', offer())).toMatchObject({ paper: { number: { count: 1 } } });
    }
  });

  it.each(['papers', 'files', 'entries', 'steps', 'contents', 'meta'])(
    'with no room left at the table of %s keeps nothing and says so',
    async (table) => {
      const device = aDevice();
      const store = await openTabWithJob(device);
      const before = await everything(device);
      const { makeRoom } = fillTheDisk('byAbort', table);
      expect(await store.actions.issue('Offer', offer())).toEqual({ state: 'notKept', why: 'diskFull' });
      makeRoom();
      expect(await everything(device)).toEqual(before);
      expect(store.getState()).toMatchObject({ device: null, undoLabel: 'New job' });
    },
  );

  it('waits for no edit that is not kept: nothing goes out before it', async () => {
    const store = await openTabWithJob(aDevice());
    const { makeRoom } = fillTheDisk('byAbort', 'documents');
    changeJob(store, { name: 'Team' });
    expect(await store.actions.issue('Offer', offer())).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(offers(store)).toEqual([]);
    makeRoom();
    await store.actions.retry();
    expect(await store.actions.issue('Offer', offer())).toMatchObject({ state: 'issued' });
  });

  it('waits for what is typed meanwhile, and is not refused for it', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const issuing = store.actions.issue('Offer', offer());
    changeJob(store, { name: 'Team' }, 'name');
    expect(await issuing).toMatchObject({ state: 'issued' });
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Team' } }]);
  });

  it('of a body its schema refuses is a mistake of the caller and leaves nothing', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const before = await everything(device);
    await expect(store.actions.issue('Offer', offer(''))).rejects.toThrow('text');
    expect(await everything(device)).toEqual(before);
    expect(store.getState().kept).toMatchObject({ state: 'kept' });
  });

  it('keeps the file for as long as the paper is kept', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await store.actions.issue('Offer', offer());
    await store.actions.undo();
    store.close();
    await writeRow(device.factory, 'files', { id: 'nobodys', name: 'a.png', content: new Uint8Array([1]) });
    const again = await openTab(device, 'here');
    expect(await again.actions.readFile(sha256OfBytes(pdf))).not.toBeNull();
    expect(await again.actions.readFile('nobodys')).toBeNull();
  });

  it('stands as it went out, byte for byte, whatever is typed, issued and taken back afterwards', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await store.actions.issue('Offer', offer());
    const [paper] = await rowsOf(device.factory, 'papers');
    changeJob(store, { name: 'renamed' });
    await store.actions.issue('Offer', offer('Twenty-one shirts'));
    await store.actions.undo();
    store.close();
    const again = await openTab(device, 'here');
    expect((await rowsOf(device.factory, 'papers'))[0]).toEqual(paper);
    const kept = await again.actions.readFile(sha256OfBytes(pdf));
    const bytes = kept?.content instanceof Blob ? new Uint8Array(await kept.content.arrayBuffer()) : null;
    expect(bytes).toEqual(pdf);
  });

  it('is on the disk before anybody is told', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    expect(await store.actions.issue('Offer', offer())).toMatchObject({ state: 'issued' });
    store.close();
    expect(offers(await openTab(device, 'here'))).toEqual([[1, false]]);
  });
});
