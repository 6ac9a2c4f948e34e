import { type IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { describe, expect, it, onTestFinished } from 'vitest';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { kinds } from '@/lib/kinds/kinds';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import backup from '@/tests/fixtures/stored/backupBeforeEntries.json' with { type: 'json' };
import { eventually } from '@/tests/tools/eventually';
import { formerDevice, formerTables, tabOn } from './formerStore';
import { fillTheDisk } from './fullDisk';
import { bringBack, rowsOf } from './tabs';

const file = new Blob([JSON.stringify(backup)]);

type Tab = ReturnType<typeof tabOn>;

const openOn = async (factory: IDBFactory): Promise<Tab> => {
  const store = tabOn(factory);
  onTestFinished(store.close);
  await store.open();
  return store;
};

/** What screens make of it. */
const figuresOf = (store: Tab) => {
  const { entries, papers } = store.getState();
  return {
    onHand: onHand(foldStock([...entries.stockCount, ...entries.stockMove, ...entries.stockTransfer])),
    refills: entries.inkRefill.map(({ body }) => [body.day, body.mL]).toSorted(),
    prints: entries.inkPrints.map(({ body }) => [body.day, body.name, body.prints, body.sessions]).toSorted(),
    approved: approvedVersions(entries.approval),
    versions: papers.priceListVersion.map(({ number, withdrawn, body, about }) => [
      number,
      withdrawn,
      body.issuedOn,
      body.items[0]?.breaks.map(({ from, each }) => [from, each]),
      about.id,
    ]),
  };
};

/** As they were typed into the build before; prices as its paper showed them. */
const breaks = [
  [1, 17_450],
  [4, 5450],
  [8, 3500],
  [12, 2800],
  [22, 2200],
  [50, 1800],
];
const typed = {
  onHand: { 'white-shirt': { M: 14, L: 30, '2XL': 3 }, 'white-mug': { '330 mL': 36 } },
  refills: [
    ['2026-10-02', 210],
    ['2026-10-28', 190.5],
    ['2026-11-20', 205],
  ],
  prints: [
    ['2026-10-05', 'Club shirts', 60, 2],
    ['2026-10-12', 'Mugs for the fair', 40, 1],
    ['2026-10-12', 'Mugs for the fair', 40, 1],
    ['2026-11-03', 'Tote bags', 24, 1],
    ['2026-11-15', 'Samples', 6, 0],
  ],
  approved: { 'club-crest': 1, 'hill-path': 1, 'fern-strip': 1, 'otter-strip': 1, 'star-map-strip': 1 },
  versions: [
    [{ count: 1, letter: null }, false, '2026-11-26', breaks, 'club-prices'],
    [{ count: 2, letter: null }, false, '2026-11-26', breaks, 'club-prices'],
  ],
};

/** SHA-256 of the one picture that both artworks hold, by Python's hashlib. */
const PICTURE = '54468957af4a4d47ec250c60c7d4c6cfd7208574396db9084a46d514c1509e4b';

const everything = async (factory: IDBFactory) =>
  Object.fromEntries(
    await Promise.all(
      ['documents', 'steps', 'contents', 'meta', 'aside', 'files', 'entries', 'papers'].map(
        async (table) => [table, await rowsOf(factory, table)] as const,
      ),
    ),
  );

describe('a store of the build before', () => {
  it('opens with every figure, and what left the documents is kept by itself', async () => {
    const factory = await formerDevice();
    const store = await openOn(factory);
    expect(figuresOf(store)).toEqual(typed);
    expect(store.getState()).toMatchObject({ status: 'ready', kept: { state: 'kept' } });
    // Five of prints, three refills, five approvals, four counts, two papers issued.
    expect(await rowsOf(factory, 'entries')).toHaveLength(19);
    expect(await rowsOf(factory, 'papers')).toHaveLength(2);
    const rows = (await rowsOf(factory, 'documents')) as readonly {
      id: string;
      kind: string;
      version: number;
    }[];
    expect(rows.map(({ id }) => id)).toEqual(formerTables.documents.map(({ id }) => id));
    expect(rows.filter(({ id }) => id !== 'torn-mat').map(({ kind, version }) => [kind, version])).toEqual(
      formerTables.documents
        .filter(({ id }) => id !== 'torn-mat')
        .map(({ kind }) => [kind, { workshop: 7, blank: 4, artwork: 5, job: 4, priceList: 3 }[kind]]),
    );
  });

  it('keeps what nothing can read, the removed job and every step of its history', async () => {
    const factory = await formerDevice();
    const store = await openOn(factory);
    expect(store.getState().unreadable.map(({ id }) => id)).toEqual(['torn-mat']);
    expect(await rowsOf(factory, 'documents')).toContainEqual(
      formerTables.documents.find(({ id }) => id === 'torn-mat'),
    );
    expect(store.getState().removed.map(({ id }) => id)).toEqual(['fair-mugs']);
    expect(await rowsOf(factory, 'steps')).toEqual(formerTables.steps);
  });

  it('keeps a picture that two artworks hold once, under what is in it', async () => {
    const factory = await formerDevice();
    const store = await openOn(factory);
    expect(await rowsOf(factory, 'files')).toMatchObject([{ id: PICTURE }]);
    const named = store
      .getState()
      .documents.flatMap((one) =>
        one.kind === 'artwork' && one.body.picture !== null ? [[one.id, one.body.picture.fileId]] : [],
      );
    expect(named).toEqual([
      ['club-crest', PICTURE],
      ['hill-path', PICTURE],
    ]);
    expect((await store.actions.readFile(PICTURE))?.content.size).toBe(
      formerTables.files[0]?.content.base64 === undefined
        ? 0
        : atob(formerTables.files[0].content.base64).length,
    );
    expect(JSON.stringify(await rowsOf(factory, 'contents'))).not.toContain(formerTables.files[0]?.id);
  });

  it('goes into a copy with its pictures, however soon that is asked for', async () => {
    const store = tabOn(await formerDevice());
    onTestFinished(store.close);
    const opening = store.open();
    // On the screen already, while pictures still lie under their former names.
    await eventually(() => expect(store.getState().status).toBe('ready'), { interval: 1 });
    const { file: copy } = await store.actions.makeCopy('everything');
    await opening;
    const look = await store.actions.lookAtCopy(copy);
    expect(look.state === 'copy' ? look.plan.copy.files.map(({ sha256 }) => sha256) : look).toEqual([
      PICTURE,
    ]);
  });

  it('opened again, or by a second tab, is as it was after the first', async () => {
    const factory = await formerDevice();
    (await openOn(factory)).close();
    const once = await everything(factory);
    const again = await openOn(factory);
    expect(figuresOf(again)).toEqual(typed);
    expect(await everything(factory)).toEqual(once);
  });

  it('takes in its own copy without counting anything twice', async () => {
    const factory = await formerDevice();
    const store = await openOn(factory);
    const ids = (rows: readonly unknown[]) => rows.map((row) => (row as { id: string }).id);
    const before = ids(await rowsOf(factory, 'entries'));
    expect(await bringBack(store, file)).toEqual({ state: 'replaced' });
    expect(figuresOf(store)).toEqual(typed);
    expect(ids(await rowsOf(factory, 'entries'))).toEqual(before);
  });

  it('brings all of it out of its copy on an empty device', async () => {
    const factory = await formerDevice();
    const there = await openOn(factory);
    const { IDBFactory: Factory } = await import('fake-indexeddb');
    const here = await openOn(new Factory());
    expect(await bringBack(here, file)).toEqual({ state: 'replaced' });
    expect(figuresOf(here)).toEqual(typed);
    const ids = (store: Tab) => [...store.getState().entries.inkPrints].map(({ id }) => id);
    expect(ids(here)).toEqual(ids(there));
  });

  it('loses nothing to undo and redo all the way, and counts nothing twice', async () => {
    const store = await openOn(await formerDevice());
    const undone: string[] = [];
    const lost: string[] = [];
    for (let outcome = await store.actions.undo(); outcome.state !== 'nothing'; ) {
      if (outcome.state === 'moved') undone.push(outcome.label);
      if (outcome.state === 'lost') lost.push(outcome.label);
      outcome = await store.actions.undo();
    }
    // Stock and approvals bore no time in their documents: which of them a step had set is known no more.
    expect(lost.map((label) => label.split(',')[0])).toEqual([
      'Version the customer approved of Hill path picture',
      'On hand',
      'On hand',
      'On hand',
      'On hand',
    ]);
    expect(undone).toHaveLength(formerTables.steps.length - lost.length);
    expect(figuresOf(store)).toEqual({
      ...typed,
      refills: [],
      prints: [],
      versions: typed.versions.map(([number, , ...rest]) => [number, true, ...rest]),
    });
    for (const label of undone.toReversed()) {
      expect(await store.actions.redo()).toMatchObject({ state: 'moved', label });
    }
    expect(figuresOf(store)).toEqual(typed);
  });
});

describe('a store of the build before on a full disk', () => {
  it('is shown whole, says that it is not kept, and is settled with the first edit once there is room', async () => {
    const factory = await formerDevice();
    const disk = fillTheDisk();
    const store = await openOn(factory);
    expect(figuresOf(store)).toEqual(typed);
    expect(store.getState()).toMatchObject({ status: 'ready', kept: { state: 'notKept', why: 'diskFull' } });
    expect(await rowsOf(factory, 'documents')).toEqual(formerTables.documents);
    disk.makeRoom();
    store.actions.edit('Rename', [
      { do: 'change', kind: 'blank', id: 'white-mug', to: (body) => ({ ...body, name: 'Mug' }) },
    ]);
    await store.flush();
    expect(store.getState().kept.state).toBe('kept');
    store.close();
    const again = await openOn(factory);
    expect(figuresOf(again)).toEqual(typed);
    expect(await rowsOf(factory, 'entries')).toHaveLength(19);
  });
});

describe('a record of an earlier version that could not be read when the store was settled', () => {
  const blank = formerTables.documents.find(({ id }) => id === 'white-shirt');
  const counted = (store: Tab) => onHand(foldStock(store.getState().entries.stockCount))['white-shirt'];
  /** A build that refuses the one blank, and settles all else. */
  const settledByStrictBuild = async () => {
    const factory = await formerDevice();
    const refusing = kinds.blank.schema.refine(({ name }) => name !== blank?.body.name);
    const strict = tabOn(factory, { registry: { ...kinds, blank: { ...kinds.blank, schema: refusing } } });
    await strict.open();
    expect(strict.getState().unreadable.map(({ id }) => id)).toContain('white-shirt');
    strict.close();
    return factory;
  };

  it('keeps its stock when a later build reads it and the maker edits it, or undoes that', async () => {
    const factory = await settledByStrictBuild();
    const store = await openOn(factory);
    expect(counted(store)).toEqual(typed.onHand['white-shirt']);
    store.actions.edit('Rename', [
      { do: 'change', kind: 'blank', id: 'white-shirt', to: (body) => ({ ...body, name: 'Shirt' }) },
    ]);
    await store.flush();
    store.close();
    expect(counted(await openOn(factory))).toEqual(typed.onHand['white-shirt']);
    expect(await rowsOf(factory, 'entries')).toHaveLength(19);
  });

  it('keeps its stock when a copy takes its place', async () => {
    const factory = await settledByStrictBuild();
    const store = await openOn(factory);
    expect(await bringBack(store, file)).toEqual({ state: 'replaced' });
    store.close();
    expect(counted(await openOn(factory))).toEqual(typed.onHand['white-shirt']);
  });
});

describe('settling that is broken off', () => {
  /** Ends the transaction at a write, as a killed browser would; counts them. */
  const breakAt = (nth: number) => {
    const { put } = IDBObjectStore.prototype;
    let writes = 0;
    IDBObjectStore.prototype.put = function broken(this: IDBObjectStore, ...row: Parameters<typeof put>) {
      writes += 1;
      if (writes !== nth) return put.apply(this, row);
      this.transaction.abort();
      throw new DOMException('Killed', 'AbortError');
    };
    const mend = () => {
      IDBObjectStore.prototype.put = put;
    };
    onTestFinished(mend);
    return { mend, writes: () => writes };
  };

  it('at its writes leaves all as it was, or has settled all, and the next visit has every figure', async () => {
    const count = breakAt(0);
    await openOn(await formerDevice());
    const all = count.writes();
    count.mend();
    expect(all).toBeGreaterThan(30);
    // Around the ends each; between them the writes differ in nothing but the row.
    const at = [...Array(all).keys()]
      .map((index) => index + 1)
      .filter((nth) => nth <= 3 || nth > all - 3 || nth % 4 === 0);
    for (const nth of at) {
      const factory = await formerDevice();
      const before = await rowsOf(factory, 'documents');
      const killed = breakAt(nth);
      const store = tabOn(factory);
      await store.open();
      killed.mend();
      expect(figuresOf(store)).toEqual(typed);
      store.close();
      const entries = await rowsOf(factory, 'entries');
      expect([0, 19]).toContain(entries.length);
      if (entries.length === 0) expect(await rowsOf(factory, 'documents')).toEqual(before);
      const names = (await rowsOf(factory, 'files')).map((row) => (row as { id: string }).id);
      expect([[PICTURE], formerTables.files.map(({ id }) => id)]).toContainEqual(names);
      if (nth % 8 === 0 || nth === all) {
        const again = tabOn(factory);
        await again.open();
        expect(figuresOf(again)).toEqual(typed);
        again.close();
      }
    }
  });
});
