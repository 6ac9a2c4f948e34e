import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idOfDouble } from '@/lib/copies/doubles';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { sha256OfValue } from '@/lib/stored/sha256';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { fromSchema } from '@/tests/fixtures/fromSchema';
import { aFile, anEntry, appKinds, archiveOf, readWhole, smallKinds } from '@/tests/lib/copies/copyTools';
import {
  edited,
  emptyDevice,
  holding,
  leave,
  type ModelDevice,
  seenOn,
  take,
} from '@/tests/lib/copies/modelDevice';
import { aStoredJob, type SmallJob } from '@/tests/lib/stored/smallRegistry';
import { cases } from '@/tests/tools/cases';

const files = [aFile('crest'), aFile('badge'), aFile('logo')];
const contents = new Map(files.map(({ file, content }) => [file.sha256, content]));

const draftOf = (kind: keyof typeof kinds, id: string): fc.Arbitrary<Stored> =>
  fc
    .record({
      body: fromSchema(kinds[kind].schema).filter((body) => kinds[kind].schema.safeParse(body).success),
      at: fc.integer({ min: 1, max: 1_000_000 }),
      removed: fc.boolean(),
      picture: fc.constantFrom(...files),
    })
    .map(({ body, at, removed, picture }) => ({
      id,
      kind,
      version: kinds[kind].version,
      // Edited: as it was first made, under an id of no random digits, it would be an example.
      revision: 2,
      updatedAt: at,
      ...(removed && kind !== 'workshop' ? { deletedAt: at } : {}),
      body: withPicture(kinds[kind].schema.parse(body), picture.file.sha256),
    }));

const withPicture = (body: object, fileId: string): unknown =>
  'picture' in body && typeof body.picture === 'object' && body.picture !== null
    ? { ...body, picture: { ...body.picture, fileId } }
    : body;

const paperSchema = paperKinds.priceListVersion.schema;
const paperBodies = fromSchema(paperSchema).filter((body) => paperSchema.safeParse(body).success);

const aPaper = (count: number, drawn: unknown): Paper => {
  const body: unknown = JSON.parse(JSON.stringify(drawn));
  return {
    id: `devicea1-${count}`,
    kind: 'priceListVersion',
    version: 1,
    device: 'devicea1',
    count,
    at: 5,
    body,
    series: 'd',
    number: { count, letter: 'K' },
    about: { kind: 'priceList', id: 'd' },
    sha256: sha256OfValue(body),
    file: null,
  };
};

/** What happens on a device, one after the other; a taking back names one before it. */
const happenings = fc
  .array(
    fc.record({
      kind: fc.constantFrom('inkRefill', 'stockCount', 'approval', 'takeBack'),
      of: fc.nat({ max: 5 }),
    }),
    { maxLength: 6 },
  )
  .map((drawn) =>
    drawn.map(({ kind, of }, at): Entry => {
      const entry = anEntry(at + 1);
      switch (kind) {
        case 'stockCount': {
          const item = { kind: 'blank', blankId: 'a', size: 'M', lot: null };
          return { ...entry, kind, body: { item, place: { kind: 'home' }, grade: 'first', quantity: of } };
        }
        case 'approval':
          return { ...entry, kind, body: { artworkId: 'b', version: of === 0 ? null : of } };
        case 'takeBack':
          return at === 0 ? entry : { ...entry, kind, body: { entryId: anEntry(1 + (of % at)).id } };
        default:
          return entry;
      }
    }),
  );

/** A workshop with drafts of every kind, entries, papers and the pictures that are named. */
const devices: fc.Arbitrary<ModelDevice> = fc
  .record({
    drafts: fc.tuple(
      draftOf('workshop', 'workshop'),
      draftOf('blank', 'a'),
      draftOf('artwork', 'b'),
      draftOf('job', 'c'),
      draftOf('priceList', 'd'),
    ),
    entries: happenings,
    papers: fc.array(paperBodies, { maxLength: 2 }),
  })
  .map(({ drafts, entries, papers }) =>
    holding(emptyDevice('devicea1', 'K'), {
      drafts,
      entries,
      papers: papers.map((body, at) => aPaper(at + 10, body)),
      files: contents,
    }),
  );

const named = (device: ModelDevice): ReadonlySet<string> => {
  const text = JSON.stringify([...device.here.drafts.values()]);
  return new Set([...device.files.keys()].filter((sha256) => text.includes(sha256)));
};

describe('a copy of everything', () => {
  it('brought back on an empty device gives what was there, pictures included', async () => {
    await fc.assert(
      fc.asyncProperty(devices, async (device) => {
        const { bytes } = await leave(device, 'everything', appKinds);
        const { device: restored } = await take(
          emptyDevice('deviceb2', 'M'),
          bytes,
          { mode: 'replace' },
          appKinds,
        );
        const wanted = [...named(device)].toSorted();
        expect(seenOn(restored)).toEqual({ ...seenOn(device), files: wanted });
        for (const sha256 of wanted) expect(restored.files.get(sha256)).toEqual(contents.get(sha256));
      }),
      cases(30),
    );
  });

  it('brought in where it was made changes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(
        devices,
        fc.constantFrom('beside' as const, 'replace' as const),
        async (device, mode) => {
          const { device: after, bytes } = await leave(device, 'everything', appKinds);
          expect(seenOn((await take(after, bytes, { mode }, appKinds)).device)).toEqual(seenOn(device));
        },
      ),
      cases(20),
    );
  });

  it('brought in beside keeps everything that is here, and brings everything that comes', async () => {
    await fc.assert(
      fc.asyncProperty(devices, devices, async (mine, theirs) => {
        const { bytes } = await leave(theirs, 'everything', appKinds);
        const { device: after, plan } = await take(mine, bytes, { mode: 'beside' }, appKinds);
        const bodies = [...after.here.drafts.values()].map(({ body }) => JSON.stringify(body));
        for (const { state, mine: here, theirs: there } of plan.meetings) {
          if (here !== null && here.deletedAt === undefined && here.kind !== 'workshop') {
            expect(bodies).toContain(JSON.stringify(here.body));
          }
          const lies = state === 'clash' ? idOfDouble(there) : there.id;
          if (there.kind !== 'workshop' && state !== 'newerHere') {
            expect(after.here.drafts.has(lies)).toBe(true);
          }
        }
        expect([...after.here.drafts.values()].filter(({ kind }) => kind === 'workshop')).toHaveLength(1);
        const again = await take(after, bytes, { mode: 'beside' }, appKinds);
        expect(seenOn(again.device)).toEqual(seenOn(after));
      }),
      cases(30),
    );
  });
});

const start = holding(emptyDevice('devicea1', 'K'), {
  drafts: [
    { id: 'workshop', kind: 'workshop', version: 1, revision: 1, updatedAt: 1, body: { name: 'Mine' } },
    aStoredJob({
      body: {
        name: 'Order',
        lines: [
          { id: 's', quantity: 1 },
          { id: 'm', quantity: 1 },
        ],
        most: 90,
      },
    }),
  ],
});
const other = emptyDevice('deviceb2', 'M');
const both = async () => {
  const out = await leave(start, 'everything', smallKinds);
  return { laptop: out.device, phone: (await take(other, out.bytes, { mode: 'beside' }, smallKinds)).device };
};
const bodyOf = (device: ModelDevice, id = 'job-1') =>
  device.here.drafts.get(id)?.body as SmallJob | undefined;

describe('a job that two devices share', () => {
  it('has the edits of both once they meet, whatever the clocks say', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 2, max: 50 }),
        fc.integer({ min: 2, max: 50 }),
        fc.integer({ min: 0, max: 9_000_000 }),
        fc.integer({ min: 0, max: 9_000_000 }),
        async (small, medium, phoneAt, laptopAt) => {
          const { laptop, phone } = await both();
          const setTo = (line: string, quantity: number) => (job: SmallJob) => ({
            ...job,
            lines: job.lines.map((own) => (own.id === line ? { ...own, quantity } : own)),
          });
          const onPhone = edited(phone, 'job-1', setTo('s', small), phoneAt);
          const onLaptop = edited(laptop, 'job-1', setTo('m', medium), laptopAt);
          const sent = await leave(onPhone, { kind: 'job', id: 'job-1' }, smallKinds);
          const met = await take(onLaptop, sent.bytes, { mode: 'beside' }, smallKinds);
          expect(bodyOf(met.device)?.lines).toEqual([
            { id: 's', quantity: small },
            { id: 'm', quantity: medium },
          ]);
          // And back: the phone takes over what it sees to come from its own.
          const back = await leave(met.device, { kind: 'job', id: 'job-1' }, smallKinds);
          const home = await take(sent.device, back.bytes, { mode: 'beside' }, smallKinds);
          expect(bodyOf(home.device)).toEqual(bodyOf(met.device));
          // A second time nothing is new on either.
          const again = await take(met.device, sent.bytes, { mode: 'beside' }, smallKinds);
          expect(seenOn(again.device)).toEqual(seenOn(met.device));
          const homeAgain = await take(home.device, back.bytes, { mode: 'beside' }, smallKinds);
          expect(seenOn(homeAgain.device)).toEqual(seenOn(home.device));
        },
      ),
      cases(40),
    );
  });

  it('still meets what both last had after copies were made in between', async () => {
    let { laptop, phone } = await both();
    for (const most of [91, 92, 93]) {
      laptop = edited(laptop, 'job-1', (job: SmallJob) => ({ ...job, most }), most);
      laptop = (await leave(laptop, 'everything', smallKinds)).device;
    }
    phone = edited(phone, 'job-1', (job: SmallJob) => ({ ...job, name: 'Order for Ann' }), 50);
    const { bytes } = await leave(phone, { kind: 'job', id: 'job-1' }, smallKinds);
    const { device, plan } = await take(laptop, bytes, { mode: 'beside' }, smallKinds);
    expect(plan.counts.states).toMatchObject({ merged: 1, clash: 0 });
    expect(bodyOf(device)).toMatchObject({ name: 'Order for Ann', most: 93 });
  });

  it('is two jobs where both named it otherwise, and stays two when the same comes again', async () => {
    const { laptop, phone } = await both();
    const named = (name: string) => (job: SmallJob) => ({ ...job, name });
    const { bytes } = await leave(edited(phone, 'job-1', named('Ann'), 60), 'everything', smallKinds);
    const mine = edited(laptop, 'job-1', named('Ben'), 70);
    const first = await take(mine, bytes, { mode: 'beside' }, smallKinds);
    expect(first.plan.meetings.find(({ id }) => id === 'job-1')).toMatchObject({
      state: 'clash',
      clashes: [['name']],
      choices: ['both', 'mine', 'theirs'],
    });
    const names = [...first.device.here.drafts.values()].map(({ body }) => (body as SmallJob).name);
    expect(names.toSorted()).toEqual(['Ann, from the copy', 'Ben', 'Mine']);
    const second = await take(first.device, bytes, { mode: 'beside' }, smallKinds);
    expect(seenOn(second.device)).toEqual(seenOn(first.device));
  });

  it('says of one that was carried that it is from the other device', async () => {
    const { laptop, phone } = await both();
    const named = (name: string) => (job: SmallJob) => ({ ...job, name });
    const carried = { kind: 'job', id: 'job-1' };
    const { bytes } = await leave(edited(phone, 'job-1', named('Ann'), 60), carried, smallKinds);
    const mine = edited(laptop, 'job-1', named('Ben'), 70);
    const { device } = await take(mine, bytes, { mode: 'beside' }, smallKinds);
    const names = [...device.here.drafts.values()].map(({ body }) => (body as SmallJob).name);
    expect(names).toContain('Ann, from the other device');
  });
});

describe('entries of two devices', () => {
  const someEntries = (device: string): fc.Arbitrary<readonly Entry[]> =>
    fc
      .integer({ min: 0, max: 5 })
      .map((count) => Array.from({ length: count }, (_, at) => anEntry(at + 1, device)));

  it('are all there on both once they have met, in whichever order', async () => {
    await fc.assert(
      fc.asyncProperty(someEntries('devicea1'), someEntries('deviceb2'), async (one, two) => {
        const a = holding(start, { entries: one });
        const b = holding(other, { entries: two });
        const fromA = (await leave(a, 'everything', smallKinds)).bytes;
        const fromB = (await leave(b, 'everything', smallKinds)).bytes;
        const onA = (await take(a, fromB, { mode: 'beside' }, smallKinds)).device;
        const onB = (await take(b, fromA, { mode: 'beside' }, smallKinds)).device;
        expect(seenOn(onA).entries).toEqual(seenOn(onB).entries);
        expect(onA.here.entries).toHaveLength(one.length + two.length);
      }),
      cases(30),
    );
  });

  it('of one id that say two things are told, and what is here stays', async () => {
    const mine = holding(start, { entries: [anEntry(1)] });
    const forged = { ...anEntry(1), body: { day: '2026-11-20', mL: 10 } };
    const bytes = await archiveOf({
      ...(await readWhole(await archiveOf())).copy,
      what: 'everything',
      madeAt: 1,
      entries: [forged],
      unreadable: [],
    });
    const { plan, device } = await take(mine, bytes, { mode: 'beside' }, smallKinds);
    expect(plan.otherContent).toEqual([forged]);
    expect(device.here.entries).toEqual([anEntry(1)]);
  });
});
