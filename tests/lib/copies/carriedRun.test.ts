import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { carriedWith } from '@/lib/copies/carriedWith';
import { kinds } from '@/lib/kinds/kinds';
import type { Entry, Paper } from '@/shared/schemas/happened';
import { runSchema } from '@/shared/schemas/making/run';
import type { Stored } from '@/shared/schemas/stored';
import { appKinds } from './copyTools';
import { emptyDevice, holding, leave, look, type ModelDevice, seenOn, take } from './modelDevice';

const RUN = { kind: 'run', id: 'club-run' } as const;

interface Written {
  readonly drafts: readonly { readonly draft: Stored }[];
  readonly papers: readonly { readonly paper: Paper }[];
  readonly entries: readonly { readonly entry: Entry }[];
}
const worked: Written = JSON.parse(readFileSync('public/examples/club-run.json', 'utf8'));
const standard = worked.papers[0]?.paper.id ?? '';
const otherRun: Stored = {
  ...{ id: 'mugs-run', kind: 'run', version: kinds.run.version, revision: 1, updatedAt: 1_000 },
  body: runSchema.parse({ name: 'Mugs', works: [] }),
};

const written = (device: string, count: number, kind: string, body: unknown): Entry => ({
  ...{ id: `${device}-${count}`, kind, version: 1, device, count, at: 2e12 + count, body },
});
const pressed = worked.entries.map(({ entry }) => entry).find(({ kind }) => kind === 'pressing')?.body;
const press = (device: string, count: number): Entry => written(device, count, 'pressing', pressed);
const step = (device: string, count: number, runId: string): Entry =>
  written(device, count, 'runStep', {
    ...{ runId, standardId: null, day: '2026-12-07', step: { what: 'begun' } },
  });

/** The worked run pressed and noted, and another that was only begun. */
const home = holding(emptyDevice('home0000', 'H'), {
  drafts: [...worked.drafts.map(({ draft }) => draft), otherRun],
  papers: worked.papers.map(({ paper }) => paper),
  entries: [...worked.entries.map(({ entry }) => entry), step('home0000', 1, otherRun.id)],
});
const bring = async (device: ModelDevice, bytes: Uint8Array) =>
  (await take(device, bytes, { mode: 'beside' }, appKinds)).device;

async function phone(id: string, letter: string, entries: readonly Entry[]): Promise<ModelDevice> {
  return holding(await bring(emptyDevice(id, letter), (await leave(home, RUN, appKinds)).bytes), { entries });
}

const onPhone = [
  press('phone000', 1),
  press('phone000', 2),
  written('phone000', 3, 'takeBack', { entryId: 'phone000-2' }),
];
const onTablet = [press('tablet00', 1)];

describe('a run that is carried', () => {
  it('takes along its order, jobs and standard with all that was noted of it, and no other run', () => {
    const carried = carriedWith(RUN, { ...home.here, entries: [...home.here.entries, ...onPhone] }, appKinds);
    const named = carried.drafts.map(({ kind }) => kind);
    expect(named.filter((kind) => kind !== 'artwork' && kind !== 'blank').toSorted()).toEqual([
      ...['customer', 'job', 'order', 'run', 'workshop'],
    ]);
    expect(carried.papers.map(({ id }) => id)).toEqual([standard]);
    const ids = new Set(carried.entries.map(({ id }) => id));
    for (const { entry } of worked.entries) expect(ids).toContain(entry.id);
    for (const { id } of onPhone) expect(ids).toContain(id);
    expect(ids).not.toContain('home0000-1');
  });

  it('is counted as a run that began, and not as a paper that went out', async () => {
    const { bytes } = await leave(home, RUN, appKinds);
    const { counts } = (await look(emptyDevice('phone000', 'P'), bytes, appKinds)).plan;
    expect(counts.newPapers).toBe(0);
    expect(counts.newEntries.runStandard).toBe(1);
  });
});

describe('what two devices pressed of one run', () => {
  it('comes to the same in any order and however often, none lost and none doubled', async () => {
    const files = [
      (await leave(await phone('phone000', 'P', onPhone), RUN, appKinds)).bytes,
      (await leave(await phone('tablet00', 'T', onTablet), RUN, appKinds)).bytes,
    ];
    const ends = [];
    for (const order of [
      [0, 1],
      [1, 0],
      [0, 1, 0, 1, 1],
    ]) {
      let at = home;
      for (const file of order) at = await bring(at, files[file] ?? new Uint8Array());
      ends.push(seenOn(at));
    }
    const [first, ...others] = ends;
    for (const other of others) expect(other).toEqual(first);
    const added = first?.entries.map(({ id }) => id).filter((id) => /^(phone|tablet)/.test(id));
    expect(added).toEqual([...onPhone, ...onTablet].map(({ id }) => id).toSorted());
  });
});
