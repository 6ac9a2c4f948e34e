import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arriving } from '@/app/_transactions/arrive';
import type { Entry, Paper } from '@/shared/schemas/happened';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { cases } from '@/tests/tools/cases';
import { breakOffAt } from './breakOff';
import {
  aDevice,
  type Device,
  jobIn,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

const refill = (mL: number) => ({ kind: 'inkRefill', body: { day: '2026-11-03', mL } }) as const;
const refills = (store: SmallStore) => store.getState().entries.inkRefill.map(({ body }) => body.mL);
const offers = (store: SmallStore) =>
  store.getState().papers.offer.map(({ body, withdrawn }) => [body.text, withdrawn]);
const offer = (text: string) =>
  ({
    kind: 'offer',
    about: { kind: 'job', id: 'job-1' },
    series: 'job-1',
    body: (number: { readonly count: number; readonly letter: string | null }) => ({ number, text }),
  }) as const;

/** Everything of a device, as a copy holds it. */
const copyOf = async (device: Device, store: SmallStore): Promise<Arriving> => ({
  drafts: store.getState().documents.map(({ id, kind, version, body }) => ({
    id,
    kind,
    snapshot: { version, deleted: false, body },
  })),
  papers: (await rowsOf(device.factory, 'papers')) as readonly Paper[],
  entries: (await rowsOf(device.factory, 'entries')) as readonly Entry[],
  unreadable: [],
  files: [],
  exchanged: [],
});
const none: Arriving = { drafts: [], papers: [], entries: [], unreadable: [], files: [], exchanged: [] };
const replace = { mode: 'replace', staying: [] } as const;
const beside = { mode: 'beside' } as const;

/** A device that noted refills and sent an offer out. */
const aUsedDevice = async (mL: readonly number[], text: string) => {
  const device = aDevice();
  const store = await openTabWithJob(device);
  for (const amount of mL) store.actions.note('Refill', [refill(amount)]);
  await store.actions.issue('Offer', offer(text));
  return { device, store, copy: await copyOf(device, store) };
};

describe('an arrival beside what is here', () => {
  it('adds what is not here, and twice is no more than once', async () => {
    const there = await aUsedDevice([10, 20], 'Theirs');
    const here = await aUsedDevice([30], 'Mine');
    expect(await here.store.actions.arrive('Bring in', there.copy, beside)).toEqual({
      state: 'arrived',
      clashing: [],
      isRenamed: false,
    });
    expect(refills(here.store).toSorted()).toEqual([10, 20, 30]);
    expect(offers(here.store)).toHaveLength(2);
    const rows = await rowsOf(here.device.factory, 'entries');
    await here.store.actions.arrive('Bring in', there.copy, beside);
    expect(await rowsOf(here.device.factory, 'entries')).toEqual(rows);
  });

  it('is undone and done again whole', async () => {
    const there = await aUsedDevice([10], 'Theirs');
    const here = await aUsedDevice([30], 'Mine');
    await here.store.actions.arrive('Bring in', there.copy, beside);
    await here.store.actions.undo();
    expect(refills(here.store)).toEqual([30]);
    expect(offers(here.store)).toContainEqual(['Theirs', true]);
    await here.store.actions.redo();
    expect(refills(here.store).toSorted()).toEqual([10, 30]);
    expect(offers(here.store)).toContainEqual(['Theirs', false]);
  });

  it('that was undone counts when it comes again; what was taken back by hand stays taken back', async () => {
    const there = await aUsedDevice([10, 20], 'Theirs');
    const here = await aUsedDevice([], 'Mine');
    await here.store.actions.arrive('Bring in', there.copy, beside);
    await here.store.actions.undo();
    await here.store.actions.arrive('Bring in', there.copy, beside);
    expect(refills(here.store)).toEqual([10, 20]);
    const [ten] = here.store.getState().entries.inkRefill;
    here.store.actions.note('Take back', [{ kind: 'takeBack', body: { entryId: ten?.id ?? '' } }]);
    await here.store.flush();
    await here.store.actions.arrive('Bring in', there.copy, beside);
    expect(refills(here.store)).toEqual([20]);
  });

  it('never overwrites: what says something else under the same id is set aside and told', async () => {
    const here = await aUsedDevice([30], 'Mine');
    const [mine] = (await copyOf(here.device, here.store)).entries;
    if (mine === undefined) throw new Error('nothing was noted');
    const other: Entry = { ...mine, body: { day: '2026-11-03', mL: 99 } };
    const outcome = await here.store.actions.arrive('Bring in', { ...none, entries: [other] }, beside);
    expect(outcome).toEqual({
      state: 'arrived',
      clashing: [{ kind: 'inkRefill', id: mine.id }],
      isRenamed: true,
    });
    expect(refills(here.store)).toEqual([30]);
    expect(await rowsOf(here.device.factory, 'aside')).toMatchObject([{ raw: other }]);
    expect(here.store.getState().unreadable).toMatchObject([{ id: mine.id, raw: other }]);
    await here.store.actions.arrive('Bring in', { ...none, entries: [other] }, beside);
    expect(await rowsOf(here.device.factory, 'aside')).toHaveLength(1);
  });

  it('keeps records nothing here can read where a later build will look for them', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const written = { version: 1, device: 'later000', count: 1, at: 1, body: {} };
    const entry = { ...written, id: 'later000-1', kind: 'holiday' };
    const paper = { ...written, id: 'later000-2', kind: 'invoice', series: 's' };
    const draft = { id: 'd', kind: 'order', version: 1, revision: 1, updatedAt: 1, body: {} };
    await store.actions.arrive('Bring in', { ...none, unreadable: [entry, paper, draft, 5] }, beside);
    expect(await rowsOf(device.factory, 'entries')).toEqual([entry]);
    expect(await rowsOf(device.factory, 'papers')).toEqual([paper]);
    expect(await rowsOf(device.factory, 'documents')).toContainEqual(draft);
    expect(await rowsOf(device.factory, 'aside')).toMatchObject([{ raw: 5 }]);
  });

  it('from a device of the same letter gives the next papers another', async () => {
    const here = await aUsedDevice([], 'Mine');
    const letter = here.store.getState().device?.letter ?? '';
    const [mine] = here.copy.papers;
    if (mine === undefined) throw new Error('nothing was issued');
    const theirs: Paper = { ...mine, id: 'other000-1', device: 'other000', number: { count: 9, letter } };
    await here.store.actions.arrive('Bring in', { ...none, papers: [theirs] }, beside);
    expect(here.store.getState().device?.letter).not.toBe(letter);
    const next = await here.store.actions.issue('Offer', offer('Next'));
    expect(next).toMatchObject({
      paper: { number: { count: 10, letter: here.store.getState().device?.letter }, device: mine.device },
    });
  });
});

describe('a letter that is drawn anew', () => {
  const letters = [...'ABCDEFGHJKLMNPRSTUVWXYZ'];
  const ofOther = (paper: Paper, letter: string): Paper => {
    const device = `other00${letter.toLowerCase()}`;
    return { ...paper, id: `${device}-1`, device, number: { count: 2, letter } };
  };

  it('is none of a device met earlier, when another comes with this one’s', async () => {
    const here = await aUsedDevice([], 'Mine');
    const letter = here.store.getState().device?.letter ?? '';
    const [mine] = here.copy.papers;
    if (mine === undefined) throw new Error('nothing was issued');
    const [free, ...met] = letters.filter((other) => other !== letter);
    const papers = met.map((other) => ofOther(mine, other));
    await here.store.actions.arrive('Bring in', { ...none, papers }, beside);
    expect(here.store.getState().device?.letter).toBe(letter);
    await here.store.actions.arrive('Bring in', { ...none, papers: [ofOther(mine, letter)] }, beside);
    expect(here.store.getState().device?.letter).toBe(free);
  });

  it('of a device that begins to count is none of those whose papers are here', async () => {
    const there = await aUsedDevice([], 'Theirs');
    const [paper] = there.copy.papers;
    if (paper === undefined) throw new Error('nothing was issued');
    const device = aDevice();
    await openTabWithJob(device);
    const [free, ...met] = letters;
    for (const other of met) await writeRow(device.factory, 'papers', ofOther(paper, other));
    const store = await openTab(device, 'again');
    store.actions.note('Refill', [refill(10)]);
    await store.flush();
    expect(store.getState().device?.letter).toBe(free);
  });
});

describe('an arrival in the place of what is here', () => {
  it('on an empty device shows what the copy held', async () => {
    const there = await aUsedDevice([10, 20], 'Theirs');
    await there.store.actions.undo();
    const copy = await copyOf(there.device, there.store);
    const fresh = await openTab(aDevice(), 'here');
    await fresh.actions.arrive('Bring back', copy, replace);
    expect(fresh.getState().entries).toEqual(there.store.getState().entries);
    expect(fresh.getState().papers).toEqual(there.store.getState().papers);
    expect(offers(fresh)).toEqual([['Theirs', true]]);
    expect(jobIn(fresh)).toEqual(jobIn(there.store));
  });

  it('brings an earlier copy of the same device back as it was, though more happened since', async () => {
    const { device, store } = await aUsedDevice([10, 20], 'First');
    const copy = await copyOf(device, store);
    const [ten] = store.getState().entries.inkRefill;
    store.actions.note('Take back', [{ kind: 'takeBack', body: { entryId: ten?.id ?? '' } }, refill(30)]);
    await store.actions.issue('Offer', offer('Second'));
    await store.actions.arrive('Bring back', copy, replace);
    expect(refills(store)).toEqual([10, 20]);
    expect(offers(store)).toEqual([
      ['First', false],
      ['Second', true],
    ]);
    await store.actions.undo();
    expect(refills(store)).toEqual([20, 30]);
    expect(offers(store)).toEqual([
      ['First', false],
      ['Second', false],
    ]);
    await store.actions.redo();
    expect(refills(store)).toEqual([10, 20]);
  });

  it('broken off at any request leaves all of it or nothing', async () => {
    const there = await aUsedDevice([10], 'Theirs');
    const tables = ['documents', 'papers', 'entries', 'steps', 'contents', 'meta', 'aside', 'exchanged'];
    for (let nth = 1, whole = false; !whole; nth += 1) {
      const here = await aUsedDevice([30], 'Mine');
      const everything = () => Promise.all(tables.map((table) => rowsOf(here.device.factory, table)));
      const before = await everything();
      const broken = breakOffAt(nth);
      const outcome = await here.store.actions.arrive('Bring back', there.copy, replace);
      broken.mend();
      whole = outcome.state === 'arrived';
      if (!whole) expect(await everything(), `broken off at request ${nth}`).toEqual(before);
      else expect(refills(here.store)).toEqual([10]);
    }
  });

  /** What is done on a device, in numbers that a random case can draw. */
  const doings = fc.array(
    fc.oneof(
      fc.record({ do: fc.constant('note' as const), mL: fc.integer({ min: 1, max: 500 }) }),
      fc.record({ do: fc.constant('takeBack' as const), nth: fc.nat(50) }),
      fc.constant({ do: 'undo' as const }),
      fc.constant({ do: 'redo' as const }),
    ),
    { maxLength: 8 },
  );
  const doAll = async (
    store: SmallStore,
    device: Device,
    what: readonly (typeof doings extends fc.Arbitrary<infer T> ? T : never)[number][],
  ) => {
    for (const doing of what) {
      if (doing.do === 'note') store.actions.note('Refill', [refill(doing.mL)]);
      else if (doing.do === 'undo') await store.actions.undo();
      else if (doing.do === 'redo') await store.actions.redo();
      else {
        const rows = (await rowsOf(device.factory, 'entries')) as readonly Entry[];
        const row = rows[doing.nth % Math.max(1, rows.length)];
        if (row !== undefined) {
          store.actions.note('Take back', [{ kind: 'takeBack', body: { entryId: row.id } }]);
        }
      }
      await store.flush();
    }
  };

  it('shows what the copy held, undone what was here, and done again what the copy held, whatever was done', async () => {
    await fc.assert(
      fc.asyncProperty(doings, doings, doings, fc.boolean(), async (before, after, elsewhere, isOwn) => {
        const device = aDevice();
        const store = await openTab(device, 'here');
        await doAll(store, device, before);
        const own = { held: refills(store), copy: await copyOf(device, store) };
        await doAll(store, device, after);
        const other = aDevice();
        const otherStore = await openTab(other, 'there');
        await doAll(otherStore, other, elsewhere);
        const { held, copy } = isOwn
          ? own
          : { held: refills(otherStore), copy: await copyOf(other, otherStore) };
        const here = refills(store);
        await store.actions.arrive('Bring back', copy, replace);
        expect(refills(store)).toEqual(held);
        await store.actions.undo();
        expect(refills(store)).toEqual(here);
        await store.actions.redo();
        expect(refills(store)).toEqual(held);
        await store.actions.arrive('Bring back', copy, replace);
        expect(refills(store)).toEqual(held);
        store.close();
        otherStore.close();
      }),
      cases(25),
    );
  });
});

it('an arrival removes drafts that did not come, but for those that stay', async () => {
  const store = await openTabWithJob(aDevice());
  store.actions.edit('New', [{ do: 'add', kind: 'workshop', id: 'workshop', body: { name: 'Shed' } }]);
  const job = { version: 2, deleted: false, body: aJobBody({ name: 'Theirs' }) };
  await store.actions.arrive(
    'Bring back',
    { ...none, drafts: [{ id: 'job-2', kind: 'job', snapshot: job }] },
    { mode: 'replace', staying: ['workshop'] },
  );
  expect(store.getState().documents.map(({ id }) => id)).toEqual(['job-2', 'workshop']);
  await store.actions.undo();
  expect(store.getState().documents.map(({ id }) => id)).toEqual(['job-1', 'workshop']);
});
