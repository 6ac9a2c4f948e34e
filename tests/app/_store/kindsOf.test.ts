// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { documentsByKind } from '@/app/_documents/documentsByKind';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';

afterEach(clearScreens);

const shown = () => screenStore().getState().kinds;
const papers = () => screenStore().getState().papers.priceListVersion;
const rename = async (kind: 'priceList' | 'blank' | 'job', id: string) => {
  screenStore().actions.edit('Rename', [
    kind === 'priceList'
      ? { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) }
      : kind === 'blank'
        ? { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) }
        : { do: 'change', kind, id, to: (body) => ({ ...body, name: 'Renamed' }) },
  ]);
};

describe('documents that an edit leaves alone', () => {
  it('stay the same objects, and so do the maps of all other kinds, shown and kept', async () => {
    await screenStore().open();
    const before = shown();
    const sorted = documentsByKind(before, papers());
    rename('priceList', 'club-prices');
    for (const kept of [false, true]) {
      if (kept) await screenStore().flush();
      const after = shown();
      expect(after.priceList).not.toBe(before.priceList);
      for (const kind of ['workshop', 'blank', 'artwork', 'job'] as const) {
        expect(after[kind], kind).toBe(before[kind]);
      }
      const { lists, ...rest } = documentsByKind(after, papers());
      expect(lists).not.toBe(sorted.lists);
      for (const [name, value] of Object.entries(rest)) expect(value, name).toBe(Reflect.get(sorted, name));
    }
  });

  it('of the same kind stay the same objects', async () => {
    await screenStore().open();
    const before = shown().blank.bodies;
    rename('blank', 'white-shirt');
    const after = shown().blank.bodies;
    expect(after).not.toBe(before);
    const moved = Object.keys(before).filter((id) => after[id] !== before[id]);
    expect(moved).toEqual(['white-shirt']);
  });

  it('are parts of the edited one too', async () => {
    await screenStore().open();
    const before = shown().job.bodies['club-order'];
    rename('job', 'club-order');
    await screenStore().flush();
    const after = shown().job.bodies['club-order'];
    expect(after).not.toBe(before);
    expect(after?.lines).toBe(before?.lines);
  });

  it('keep their map when the store is read again', async () => {
    await screenStore().open();
    const before = shown();
    await screenStore().actions.retry();
    expect(shown()).toBe(before);
  });

  it('come back as they were with undo', async () => {
    await screenStore().open();
    const before = shown().blank.bodies['white-shirt'];
    rename('blank', 'white-shirt');
    await screenStore().actions.undo();
    expect(shown().blank.bodies['white-shirt']).toEqual(before);
    expect(shown().blank.bodies['white-shirt']?.sizes).toBe(before?.sizes);
  });
});
