import { describe, expect, it } from 'vitest';
import { carriedWith } from '@/lib/copies/carriedWith';
import { entryCounts, papersCounted } from '@/lib/copies/entryCounts';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { kinds } from '@/lib/kinds/kinds';
import { sha256OfValue } from '@/lib/stored/sha256';
import type { Entry, Paper } from '@/shared/schemas/happened';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { Stored } from '@/shared/schemas/stored';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { appKinds } from './copyTools';
import { emptyDevice, holding, leave, look, type ModelDevice, seenOn, take } from './modelDevice';

const DAY = { kind: 'stallDay', id: 'spring-fair' } as const;
const AUTUMN = 'autumn-fair';

const draft = (kind: keyof typeof kinds, id: string, body: unknown): Stored => ({
  ...{ id, kind, version: kinds[kind].version, revision: 1, updatedAt: 1_000, body },
});
const autumn: StallDay = stallDaySchema.parse({ name: 'Exampleton Autumn Fair', leftoverShare: null });
const drafts = [
  ...exampleDocuments(TEST_DAY).map(({ kind, id, body }) => draft(kind, id, body)),
  draft('stallDay', AUTUMN, autumn),
];

const written = (device: string, count: number, kind: string, body: unknown): Entry => ({
  ...{ id: `${device}-${count}`, kind, version: 1, device, count, at: 1_000 + count, body },
});
const planPaper = (count: number, stallDayId: string): Paper => {
  const body = { ...fairPlan, stallDayId };
  return {
    ...written('home0000', count, 'stallPlan', body),
    series: `stallPlan ${stallDayId}`,
    number: { count: 1, letter: 'A' },
    about: { kind: 'stallDay', id: stallDayId },
    sha256: sha256OfValue(body),
    file: null,
  };
};
const plan = planPaper(1, DAY.id);
const autumnPlan = planPaper(3, AUTUMN);
const tap = (device: string, count: number, of: Tap, stallDayId: string = DAY.id): Entry =>
  written(device, count, 'stallTap', {
    stallDayId,
    planId: stallDayId === DAY.id ? plan.id : autumnPlan.id,
    currency: 'USD',
    tap: of,
  });
const sale = (lineId: string): Tap => ({
  what: 'sale',
  goods: { jobId: 'fair-shirts', lineId, size: 'L' },
  minor: 2800,
  pay: 'cash',
});

const home = holding(emptyDevice('home0000', 'A'), {
  drafts,
  papers: [plan, autumnPlan],
  entries: [
    written('home0000', 2, 'issuing', { paperId: plan.id }),
    written('home0000', 4, 'issuing', { paperId: autumnPlan.id }),
    tap('home0000', 5, sale('otter'), AUTUMN),
  ],
});
const bring = async (device: ModelDevice, bytes: Uint8Array) =>
  (await take(device, bytes, { mode: 'beside' }, appKinds)).device;

/** A phone that got the plan by file and tapped. */
async function phone(id: string, letter: string, taps: readonly Entry[]): Promise<ModelDevice> {
  const { bytes } = await leave(home, DAY, appKinds);
  return holding(await bring(emptyDevice(id, letter), bytes), { entries: taps });
}

const firstTaps = [
  tap('phone000', 1, sale('fern')),
  tap('phone000', 2, sale('otter')),
  tap('phone000', 3, { what: 'next' }),
  written('phone000', 4, 'takeBack', { entryId: 'phone000-2' }),
];
const secondTaps = [tap('tablet00', 1, sale('fern')), tap('tablet00', 2, { what: 'next' })];

describe('a fixed plan, which goes out to nobody,', () => {
  it('is counted by what it is where it comes in and where it would no longer count', async () => {
    const { bytes } = await leave(home, DAY, appKinds);
    const { counts } = (await look(emptyDevice('phone000', 'B'), bytes, appKinds)).plan;
    expect([counts.newPapers, counts.newEntries]).toEqual([0, { stallPlan: 1 }]);
    const issuings = home.here.entries.filter(({ kind }) => kind === 'issuing');
    expect(entryCounts(issuings, home.here.papers)).toEqual({ stallPlan: 2 });
    // One whose paper is not there is a paper all the same.
    expect(entryCounts(issuings, [])).toEqual({ issuing: 2 });
    expect(papersCounted({ issuing: 2, stallPlan: 1, dayClose: 4, stallTap: 9 })).toBe(7);
  });
});

describe('a stall day that is carried', () => {
  it('takes along what is made for it, its plan and its taps, and no other day', () => {
    const from = { ...home.here, entries: [...home.here.entries, ...firstTaps] };
    const carried = carriedWith(DAY, from, appKinds);
    const named = carried.drafts.map(({ kind, id }) => `${kind} ${id}`);
    expect(
      named.filter((name) => !name.startsWith('artwork') && !name.startsWith('blank')).toSorted(),
    ).toEqual(['job fair-mugs', 'job fair-shirts', 'stallDay spring-fair', 'workshop workshop']);
    expect(carried.papers.map(({ id }) => id)).toEqual(['home0000-1']);
    expect(carried.entries.map(({ id }) => id)).toEqual([
      'home0000-2',
      ...['phone000-1', 'phone000-2', 'phone000-3', 'phone000-4'],
    ]);
  });

  it('gives a phone without a workshop all that it counts by: goods, prices, sets and what is earned when', async () => {
    const { here } = await phone('phone000', 'M', []);
    expect(here.papers.map(({ body }) => body)).toEqual([plan.body]);
    expect(here.entries.map(({ kind }) => kind)).toEqual(['issuing']);
  });

  it('does not take the day along that it learns from', () => {
    const learns = { ...autumn, forecast: { from: 'pastDays', stallDayIds: [DAY.id], footfallRatio: 1 } };
    const from = {
      ...home.here,
      drafts: new Map([...home.here.drafts, [AUTUMN, draft('stallDay', AUTUMN, learns)]]),
    };
    const carried = carriedWith({ kind: 'stallDay', id: AUTUMN }, from, appKinds);
    expect(carried.drafts.map(({ id }) => id)).toEqual([AUTUMN, 'workshop']);
  });
});

describe('the counts of two phones', () => {
  it('come to the same in any order and however often, none lost and none doubled', async () => {
    const files = [
      (await leave(await phone('phone000', 'M', firstTaps), DAY, appKinds)).bytes,
      (await leave(await phone('tablet00', 'T', secondTaps), DAY, appKinds)).bytes,
    ];
    const orders = [
      [0, 1],
      [1, 0],
      [0, 1, 0, 1, 1],
    ];
    const ends = [];
    for (const order of orders) {
      let at = home;
      for (const file of order) at = await bring(at, files[file] ?? new Uint8Array());
      ends.push(seenOn(at));
    }
    const [first, ...others] = ends;
    for (const other of others) expect(other).toEqual(first);
    const taps = [...firstTaps, ...secondTaps].map(({ id }) => id);
    expect(first?.entries.map(({ id }) => id).filter((id) => !id.startsWith('home'))).toEqual(
      taps.toSorted(),
    );
  });

  it('come to the same where the phones met each other before', async () => {
    const one = await phone('phone000', 'M', firstTaps);
    const two = await phone('tablet00', 'T', secondTaps);
    const met = await bring(two, (await leave(one, DAY, appKinds)).bytes);
    const straight = await bring(
      await bring(home, (await leave(one, DAY, appKinds)).bytes),
      (await leave(two, DAY, appKinds)).bytes,
    );
    const over = await bring(home, (await leave(met, DAY, appKinds)).bytes);
    expect(seenOn(over)).toEqual(seenOn(straight));
  });
});

describe('a count file of another day', () => {
  it('names the day that it is of, and puts nothing into this one', async () => {
    const phoneOfAutumn = holding(
      await bring(
        emptyDevice('phone000', 'M'),
        (await leave(home, { kind: 'stallDay', id: AUTUMN }, appKinds)).bytes,
      ),
      { entries: [tap('phone000', 1, sale('fern'), AUTUMN)] },
    );
    const { bytes } = await leave(phoneOfAutumn, { kind: 'stallDay', id: AUTUMN }, appKinds);
    const { plan: coming } = await look(home, bytes, appKinds);
    expect(coming.copy.of).toEqual({ kind: 'stallDay', id: AUTUMN, name: autumn.name });
    expect(coming.meetings.map(({ kind, name }) => `${kind} ${name}`)).toContain(
      'stallDay Exampleton Autumn Fair',
    );
    expect(coming.counts.newEntries).toEqual({ stallTap: 1 });
    const after = await bring(home, bytes);
    const ofThis = (device: ModelDevice) =>
      device.here.entries.filter(({ body }) => (body as { stallDayId?: string }).stallDayId === DAY.id);
    expect(ofThis(after)).toEqual(ofThis(home));
  });
});
