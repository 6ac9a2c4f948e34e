import { describe, expect, it } from 'vitest';
import type { CopyLook } from '@/app/_store/copies/copyActions';
import { bytesOfFile } from '@/lib/stored/storedFile';
import { aFile, crest } from '@/tests/lib/copies/copyTools';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  changeJob,
  dropRow,
  jobIn,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

const kept = { id: crest.file.sha256, name: 'crest.png', content: new Blob([crest.content]) };

const keptBytes = async (store: SmallStore) => {
  const file = await store.actions.readFile(kept.id);
  return file && bytesOfFile(file);
};

/** A device with a job that has a picture, a refill noted and an offer sent out. */
const aUsedDevice = async () => {
  const device = aDevice();
  const store = await openTabWithJob(device);
  store.actions.editWithFiles(
    'Picture',
    [{ do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, fileId: kept.id }) }],
    [kept],
  );
  store.actions.edit('Workshop', [{ do: 'add', kind: 'workshop', id: 'workshop', body: { name: 'Mine' } }]);
  store.actions.note('Refill', [{ kind: 'inkRefill', body: { day: '2026-11-03', mL: 70 } }]);
  await store.flush();
  await store.actions.issue('Offer', {
    kind: 'offer',
    about: { kind: 'job', id: 'job-1' },
    series: 'job-1',
    body: (number) => ({ number, text: 'Twelve shirts' }),
  });
  return { device, store };
};

type Copied = Extract<CopyLook, { state: 'copy' }>;
const looked = async (store: SmallStore, file: Blob): Promise<Copied> => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  return look;
};
const bodies = (store: SmallStore) => store.getState().documents.map(({ id, body }) => [id, body]);

describe('a copy of everything', () => {
  it('brings all of it back on an empty device, in one step that can be undone', async () => {
    const there = await aUsedDevice();
    const { file, leftOut, notNoted } = await there.store.actions.makeCopy('everything');
    expect({ leftOut, notNoted }).toEqual({ leftOut: [], notNoted: null });
    const here = aDevice();
    const store = await openTab(here, 'here');
    const look = await looked(store, file);
    expect(look.plan.counts).toMatchObject({
      kinds: { job: 1, workshop: 1 },
      files: 1,
      papers: 1,
      entries: 2,
    });
    expect(await store.actions.takeCopy('Copy', look, { mode: 'replace' })).toEqual({ state: 'replaced' });
    expect(bodies(store)).toEqual(bodies(there.store));
    expect(store.getState().entries).toEqual(there.store.getState().entries);
    expect(store.getState().papers).toEqual(there.store.getState().papers);
    expect(await keptBytes(store)).toEqual(crest.content);
    expect(await rowsOf(here.factory, 'entries')).toEqual(await rowsOf(there.device.factory, 'entries'));
    await store.actions.undo();
    expect(store.getState().documents).toEqual([]);
  });

  it('notes when it was made, which another tab and the next visit know too', async () => {
    const { device, store } = await aUsedDevice();
    expect(store.getState().lastCopyAt).toBeNull();
    await store.actions.makeCopy({ kind: 'job', id: 'job-1' });
    expect(store.getState().lastCopyAt).toBeNull();
    await store.actions.makeCopy('everything');
    expect(store.getState().lastCopyAt).toBe(device.clock.now);
    expect((await openTab(device, 'next')).getState().lastCopyAt).toBe(device.clock.now);
  });

  it('counts as the last copy where all that is here came out of it, until something changes', async () => {
    const there = await aUsedDevice();
    const { file } = await there.store.actions.makeCopy('everything');
    const madeAt = there.device.clock.now;
    const here = aDevice();
    here.clock.now = madeAt + 86_400_000;
    const store = await openTab(here, 'here');
    await store.actions.takeCopy('Copy', await looked(store, file), { mode: 'beside' });
    const asCopied = { lastCopyAt: madeAt, copiedUpTo: here.clock.now };
    expect(store.getState()).toMatchObject(asCopied);
    expect(store.getState().documents.every(({ updatedAt }) => updatedAt <= here.clock.now)).toBe(true);
    expect((await openTab(here, 'next')).getState()).toMatchObject(asCopied);
  });

  it.each([
    ['with something else beside it', 'everything', null],
    ['that is one job alone', { kind: 'job', id: 'job-1' }, null],
    ['of which something was left', 'everything', { 'job-1': 'mine' }],
  ] as const)('is no copy of all that is here %s', async (what, scope, choices) => {
    const there = await aUsedDevice();
    const { file } = await there.store.actions.makeCopy(scope);
    const store = await openTab(aDevice(), 'here');
    if (what === 'with something else beside it') {
      store.actions.edit('Add', [{ do: 'add', kind: 'job', id: 'job-2', body: aJobBody() }]);
    }
    const how = { mode: 'beside', ...(choices === null ? {} : { choices }) } as const;
    await store.actions.takeCopy('Copy', await looked(store, file), how);
    expect(store.getState()).toMatchObject({ lastCopyAt: null, copiedUpTo: null });
  });

  it('is made all the same where the disk is full, with what could not be kept, and says so', async () => {
    const { store } = await aUsedDevice();
    fillTheDisk();
    changeJob(store, { name: 'Typed on a full disk' });
    store.actions.note('Refill', [{ kind: 'inkRefill', body: { day: '2026-11-04', mL: 20 } }]);
    const { file, notNoted } = await store.actions.makeCopy('everything');
    expect(notNoted).toBe('diskFull');
    const copy = (await looked(store, file)).plan.copy;
    expect(copy.drafts.find(({ id }) => id === 'job-1')?.body).toMatchObject({
      name: 'Typed on a full disk',
    });
    expect(copy.entries.filter(({ kind }) => kind === 'inkRefill')).toHaveLength(2);
    expect(copy.lacks.files).toEqual([]);
  });

  it('is made where the browser keeps nothing, and says that this could not be noted', async () => {
    const store = await openTabWithJob(aDevice(), 'here', {
      openBackend: async () => ({ state: 'unavailable', why: 'storageForbidden' }),
    });
    const { file, notNoted } = await store.actions.makeCopy('everything');
    expect(notNoted).toBe('storageForbidden');
    expect((await looked(store, file)).plan.copy.drafts).toHaveLength(1);
  });

  it('names a picture that was not there any more', async () => {
    const { store } = await aUsedDevice();
    const lost = aFile('lost').file;
    changeJob(store, { fileId: lost.sha256 });
    await store.flush();
    const { file, leftOut } = await store.actions.makeCopy('everything');
    expect(leftOut).toMatchObject([{ sha256: lost.sha256, why: 'leftOut' }]);
    expect((await looked(store, file)).plan.copy.lacks.files).toMatchObject([
      { sha256: lost.sha256, why: 'missing' },
    ]);
  });

  it('holds pictures that an earlier build named otherwise, though they could not be renamed', async () => {
    const device = aDevice();
    (await openTabWithJob(device)).close();
    const [row] = await rowsOf(device.factory, 'documents');
    const former = { ...(row as object), body: aJobBody({ fileId: 'old-picture-1' }) };
    await writeRow(device.factory, 'documents', former);
    await writeRow(device.factory, 'files', { ...kept, id: 'old-picture-1' });
    // There is no room to rename it.
    fillTheDisk();
    const store = await openTab(device, 'next');
    expect(jobIn(store)?.fileId).toBe('old-picture-1');
    const { file, leftOut } = await store.actions.makeCopy('everything');
    expect(leftOut).toEqual([]);
    const other = await openTab(aDevice(), 'other');
    const look = await looked(other, file);
    expect(look.plan.copy.lacks.files).toEqual([]);
    expect(look.plan.copy.files).toMatchObject([{ sha256: kept.id }]);
    expect(look.plan.copy.drafts).toMatchObject([{ body: { fileId: kept.id } }]);
  });

  it('names a picture of an earlier build that is not there any more', async () => {
    const store = await openTabWithJob(aDevice());
    changeJob(store, { fileId: 'old-picture-1' });
    await store.flush();
    const { leftOut } = await store.actions.makeCopy('everything');
    expect(leftOut).toMatchObject([{ name: 'old-picture-1', why: 'leftOut' }]);
  });

  it('keeps records nothing can read', async () => {
    const { device, store } = await aUsedDevice();
    const later = {
      id: 'order-1',
      kind: 'order',
      version: 1,
      revision: 1,
      updatedAt: 5,
      body: { of: 'later' },
    };
    await writeRow(device.factory, 'documents', later);
    store.close();
    const { file } = await (await openTab(device, 'again')).actions.makeCopy('everything');
    const here = aDevice();
    const other = await openTab(here, 'here');
    await other.actions.takeCopy('Copy', await looked(other, file), { mode: 'beside' });
    expect(await rowsOf(here.factory, 'documents')).toContainEqual(later);
  });
});

describe('a job that a newer build carried', () => {
  it('is told as what nothing here can read, once', async () => {
    const { file } = await (await aUsedDevice()).store.actions.makeCopy({ kind: 'job', id: 'job-1' });
    const zip = await file.text();
    const text = zip.slice(zip.indexOf('{"check"'), zip.indexOf('\n}\n') + 3);
    const newer = new Blob([text.replace('"version":2', '"version":9')]);
    const store = await openTab(aDevice(), 'here');
    const look = await looked(store, newer);
    expect(look.plan.counts).toMatchObject({ kinds: {}, unread: 1 });
    await store.actions.takeCopy('Bring in', look, { mode: 'beside' });
    expect(store.getState().unreadable).toMatchObject([{ id: 'job-1' }]);
    expect((await looked(store, newer)).plan.counts.unread).toBe(0);
  });
});

describe('a picture that was lost here', () => {
  it.each([
    ['is the same', 'same', 'Club order'],
    ['went on since', 'newerHere', 'Team'],
  ])('comes back with a copy though its draft %s', async (_, state, name) => {
    const { device, store } = await aUsedDevice();
    const { file } = await store.actions.makeCopy('everything');
    if (name === 'Team') changeJob(store, { name });
    await store.flush();
    await dropRow(device.factory, 'files', kept.id);
    const look = await looked(store, file);
    expect(look.plan.meetings.find(({ id }) => id === 'job-1')?.state).toBe(state);
    expect(look.plan.counts.filesBack).toBe(1);
    await store.actions.takeCopy('Bring in', look, { mode: 'beside' });
    expect(jobIn(store)?.name).toBe(name);
    expect(await keptBytes(store)).toEqual(crest.content);
    expect((await looked(store, file)).plan.counts.filesBack).toBe(0);
  });
});

describe('a job carried to another device', () => {
  it('comes with its picture and its paper, goes back with what was changed, and twice is no more than once', async () => {
    const laptop = await aUsedDevice();
    const sent = await laptop.store.actions.makeCopy({ kind: 'job', id: 'job-1' });
    const phone = aDevice();
    const onPhone = await openTab(phone, 'phone');
    for (let times = 0; times < 2; times += 1) {
      await onPhone.actions.takeCopy('Bring in', await looked(onPhone, sent.file), { mode: 'beside' });
    }
    expect(jobIn(onPhone)).toEqual(jobIn(laptop.store));
    expect(onPhone.getState().papers.offer).toHaveLength(1);
    expect((await onPhone.actions.readFile(kept.id))?.content).toEqual(kept.content);

    changeJob(onPhone, { name: 'Order, measured' });
    await onPhone.flush();
    changeJob(laptop.store, { lines: [{ id: 'shirts', quantity: 40 }] });
    await laptop.store.flush();
    const back = await onPhone.actions.makeCopy({ kind: 'job', id: 'job-1' });
    const look = await looked(laptop.store, back.file);
    expect(look.plan.meetings.find(({ id }) => id === 'job-1')).toMatchObject({ state: 'merged' });
    await laptop.store.actions.takeCopy('Bring in', look, { mode: 'beside' });
    expect(jobIn(laptop.store)).toMatchObject({ name: 'Order, measured', lines: [{ quantity: 40 }] });
    const before = bodies(laptop.store);
    const again = await looked(laptop.store, back.file);
    await laptop.store.actions.takeCopy('Bring in', again, { mode: 'beside' });
    expect(bodies(laptop.store)).toEqual(before);
  });

  it('comes in by itself again after it was undone, and not once that was done again', async () => {
    const laptop = await aUsedDevice();
    const phone = aDevice();
    const onPhone = await openTab(phone, 'phone');
    const carry = async () => (await laptop.store.actions.makeCopy({ kind: 'job', id: 'job-1' })).file;
    const bringIn = async (file: Blob) => {
      const look = await looked(onPhone, file);
      phone.clock.now += 5000;
      await onPhone.actions.takeCopy('Bring in', look, { mode: 'beside' });
      return look.plan.meetings.find(({ id }) => id === 'job-1')?.state;
    };
    await bringIn(await carry());
    changeJob(laptop.store, { name: 'Measured' });
    await laptop.store.flush();
    const later = await carry();
    expect(await bringIn(later)).toBe('newerThere');
    phone.clock.now += 5000;
    await onPhone.actions.undo();
    expect(jobIn(onPhone)?.name).toBe('Club order');
    await onPhone.actions.redo();
    expect(await bringIn(later)).toBe('same');
    await onPhone.actions.undo();
    await onPhone.actions.undo();
    expect(await bringIn(later)).toBe('newerThere');
    expect(jobIn(onPhone)?.name).toBe('Measured');
    // What was changed since still comes together with what came.
    changeJob(onPhone, { name: 'Phone' });
    await onPhone.flush();
    changeJob(laptop.store, { lines: [{ id: 'shirts', quantity: 40 }] });
    await laptop.store.flush();
    expect(await bringIn(await carry())).toBe('merged');
  });

  it('takes another letter where the other device has this one’s', async () => {
    const laptop = await aUsedDevice();
    const sent = await laptop.store.actions.makeCopy({ kind: 'job', id: 'job-1' });
    const letter = laptop.store.getState().device?.letter;
    const phone = aDevice();
    const onPhone = await openTab(phone, 'phone');
    await writeRow(phone.factory, 'meta', { key: 'device', id: 'phonephone', letter, count: 3 });
    onPhone.close();
    const met = await openTab(phone, 'again');
    const look = await looked(met, sent.file);
    expect(look.plan.letterTaken).toBe(true);
    await met.actions.takeCopy('Bring in', look, { mode: 'beside' });
    expect(met.getState().device?.id).toBe('phonephone');
    expect(met.getState().device?.letter).not.toBe(letter);
  });
});

describe('a copy that takes the place of everything', () => {
  it('removes what it lacks, keeps what the maker keeps, and gives all of it back by undo', async () => {
    const { store } = await aUsedDevice();
    const { file } = await store.actions.makeCopy('everything');
    changeJob(store, { name: 'Changed since' });
    store.actions.edit('New job', [
      { do: 'add', kind: 'job', id: 'job-2', body: aJobBody({ name: 'Since' }) },
    ]);
    await store.flush();
    const before = bodies(store);
    const look = await looked(store, file);
    expect(look.plan.onlyHere.map(({ id }) => id)).toEqual(['job-2']);
    await store.actions.takeCopy('Copy', look, { mode: 'replace' });
    expect(bodies(store).map(([id]) => id)).toEqual(['job-1', 'workshop']);
    expect(jobIn(store)?.name).toBe('Club order');
    await store.actions.undo();
    expect(bodies(store)).toEqual(before);
    await store.actions.takeCopy('Copy', await looked(store, file), {
      mode: 'replace',
      choices: { 'job-1': 'mine' },
    });
    expect(jobIn(store)?.name).toBe('Changed since');
    expect(jobIn(store, 'job-2')).toBeUndefined();
  });
});

describe('entries of a later build in a copy that takes the place of everything', () => {
  const later = { id: 'later000-1', kind: 'tap', version: 1, device: 'later000', count: 1, at: 1, body: {} };

  it('go on counting for the build that can read them, on another device and on their own', async () => {
    const there = await aUsedDevice();
    await writeRow(there.device.factory, 'entries', later);
    const store = await openTab(there.device, 'later');
    const { file } = await store.actions.makeCopy('everything');
    const empty = aDevice();
    for (const [device, into] of [
      [empty, await openTab(empty, 'here')],
      [there.device, store],
    ] as const) {
      const look = await looked(into, file);
      expect(await into.actions.takeCopy('Copy', look, { mode: 'replace' })).toEqual({ state: 'replaced' });
      const rows = await rowsOf(device.factory, 'entries');
      expect(rows).toContainEqual(later);
      expect(rows).not.toContainEqual(expect.objectContaining({ kind: 'takeBack' }));
    }
  });

  it('count no more where the copy lacks them', async () => {
    const { device, store } = await aUsedDevice();
    const { file } = await store.actions.makeCopy('everything');
    await writeRow(device.factory, 'entries', later);
    await store.actions.takeCopy('Copy', await looked(store, file), { mode: 'replace' });
    expect(await rowsOf(device.factory, 'entries')).toContainEqual(
      expect.objectContaining({ body: { entryId: later.id, cause: 'replaced' } }),
    );
  });
});

describe('a file that is no copy', () => {
  it('is told before anything is asked', async () => {
    const store = await openTab(aDevice(), 'here');
    expect(await store.actions.lookAtCopy(new Blob(['%PDF-1.7']))).toEqual({
      state: 'notACopy',
      why: { code: 'notOurs', looksLike: 'pdf' },
    });
  });
});
