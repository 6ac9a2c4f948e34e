// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { makerDocuments } from '@/app/_documents/makerDocuments';
import { clearRooms, roomStore } from '../_rooms/rooms';

afterEach(clearRooms);

const shown = () => roomStore().getState().kinds;
const rename = async (kind: 'priceList' | 'blank' | 'job', id: string) => {
  roomStore().actions.edit('Rename', [
    kind === 'priceList'
      ? { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) }
      : kind === 'blank'
        ? { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) }
        : { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) },
  ]);
};

describe('documents that an edit leaves alone', () => {
  it('stay the same objects, and so do the maps of all other kinds, shown and kept', async () => {
    await roomStore().open();
    const before = shown();
    const sorted = makerDocuments(before);
    rename('priceList', 'club-prices');
    for (const kept of [false, true]) {
      if (kept) await roomStore().flush();
      const after = shown();
      expect(after.priceList).not.toBe(before.priceList);
      for (const kind of ['workshop', 'blank', 'artwork', 'job'] as const) {
        expect(after[kind], kind).toBe(before[kind]);
      }
      const { lists, ...rest } = makerDocuments(after);
      expect(lists).not.toBe(sorted.lists);
      for (const [name, value] of Object.entries(rest)) expect(value, name).toBe(Reflect.get(sorted, name));
    }
  });

  it('of the same kind stay the same objects', async () => {
    await roomStore().open();
    const before = shown().blank.bodies;
    rename('blank', 'white-shirt');
    const after = shown().blank.bodies;
    expect(after).not.toBe(before);
    const moved = Object.keys(before).filter((id) => after[id] !== before[id]);
    expect(moved).toEqual(['white-shirt']);
  });

  it('are parts of the edited one too', async () => {
    await roomStore().open();
    const before = shown().job.bodies['club-order'];
    rename('job', 'club-order');
    await roomStore().flush();
    const after = shown().job.bodies['club-order'];
    expect(after).not.toBe(before);
    expect(after?.lines).toBe(before?.lines);
  });

  it('keep their map when the store is read again', async () => {
    await roomStore().open();
    const before = shown();
    await roomStore().actions.retry();
    expect(shown()).toBe(before);
  });

  it('come back as they were with undo', async () => {
    await roomStore().open();
    const before = shown().blank.bodies['white-shirt'];
    rename('blank', 'white-shirt');
    await roomStore().actions.undo();
    expect(shown().blank.bodies['white-shirt']).toEqual(before);
    expect(shown().blank.bodies['white-shirt']?.sizes).toBe(before?.sizes);
  });
});
