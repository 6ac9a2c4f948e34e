import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { answerRequest } from '@/app/_requests/answerRequest';
import { isCopy } from '@/app/_requests/copyOfFile';
import { jobOfCopy } from '@/app/_requests/jobOfCopy';
import { kinds } from '@/lib/kinds/kinds';
import type { Entry } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { club, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { appKinds } from '@/tests/lib/copies/copyTools';
import { emptyDevice, holding, leave } from '@/tests/lib/copies/modelDevice';

const draft = (kind: keyof typeof kinds, id: string, body: unknown): Stored => ({
  id,
  kind,
  version: kinds[kind].version,
  revision: 1,
  updatedAt: 1,
  body,
});
const entry = (count: number, kind: string, body: unknown): Entry => ({
  id: `devicea1-${count}`,
  kind,
  version: 1,
  device: 'devicea1',
  count,
  at: count,
  body,
});
const request = club();
const [blankId = ''] = Object.keys(request.blanks);
const size = request.blanks[blankId]?.sizes[0]?.name ?? '';
const [artworkId = ''] = Object.keys(request.artworks);
const lying = { item: { kind: 'blank', blankId, size, lot: null }, place: { kind: 'home' }, grade: 'first' };

const device = holding(emptyDevice('devicea1', 'K'), {
  drafts: [
    draft('workshop', 'workshop', request.workshop),
    ...Object.entries(request.blanks).map(([id, body]) => draft('blank', id, body)),
    ...Object.entries(request.artworks).map(([id, body]) => draft('artwork', id, body)),
    draft('job', 'club-order', request.job),
    draft('job', 'fair-mugs', { ...mugs().job }),
    draft('blank', 'unneeded', Object.values(mugs().blanks)[0]),
  ],
  entries: [
    entry(1, 'stockCount', { ...lying, quantity: 9 }),
    entry(2, 'approval', { artworkId, version: 1 }),
    entry(3, 'inkRefill', { day: '2026-11-01', mL: 70 }),
  ],
});
const asked = { file: 'copy.zip', jobId: null, today: TODAY };
const carried = async () => (await leave(device, { kind: 'job', id: 'club-order' }, appKinds)).bytes;
const everything = async () => (await leave(device, 'everything', appKinds)).bytes;

describe('the job of a copy', () => {
  it('is the one that was carried, priced as it was', async () => {
    const bytes = await carried();
    expect(isCopy(bytes)).toBe(true);
    const copied = await jobOfCopy(bytes, asked);
    if (copied.kind !== 'request') throw new Error(copied.why);
    expect(copied.note).toBeNull();
    const expected = answerRequest(
      { ...request, onHand: { [blankId]: { [size]: 9 } }, approvedVersions: { [artworkId]: 1 } },
      TODAY,
    );
    expect(answerRequest(copied.value, TODAY)).toEqual(expected);
  });

  it('comes with what hangs on it and no more', async () => {
    const json = unzipSync(await carried())['documents.json'];
    const { drafts, entries }: { drafts: { draft: Stored }[]; entries: { entry: Entry }[] } = JSON.parse(
      new TextDecoder().decode(json),
    );
    const ids = drafts.map((line) => line.draft.id).toSorted();
    expect(ids).toEqual(['club-crest', 'club-order', 'hill-path', 'white-shirt', 'workshop']);
    expect(entries.map((line) => line.entry.kind)).toEqual(['stockCount', 'approval']);
  });

  it('is read from the text of the copy alone as well', async () => {
    const json = unzipSync(await carried())['documents.json'] ?? new Uint8Array();
    expect(isCopy(json)).toBe(true);
    expect(await jobOfCopy(json, asked)).toMatchObject({ kind: 'request', note: null });
  });

  it('is named where the copy holds several', async () => {
    const bytes = await everything();
    expect(await jobOfCopy(bytes, asked)).toEqual({
      kind: 'unusable',
      why: `copy.zip holds 2 jobs: name one of them.\n--job club-order (${request.job.name})\n--job fair-mugs (${mugs().job.name})`,
    });
    expect(await jobOfCopy(bytes, { ...asked, jobId: 'club-order' })).toMatchObject({
      kind: 'request',
      value: { job: { name: request.job.name } },
    });
    expect(await jobOfCopy(bytes, { ...asked, jobId: 'gone' })).toMatchObject({
      kind: 'unusable',
      why: expect.stringMatching(/^copy\.zip holds no job gone: name one of them\./),
    });
  });

  it('is priced from what came out of a damaged copy, and that is said', async () => {
    const bytes = await carried();
    const text = new TextDecoder('latin1').decode(bytes);
    const damaged = Uint8Array.from(bytes);
    const at = text.indexOf('"inkRefill"') < 0 ? text.indexOf('"stockCount"') : text.indexOf('"inkRefill"');
    damaged[at + 2] = 0x58;
    const copied = await jobOfCopy(damaged, asked);
    expect(copied).toMatchObject({
      kind: 'request',
      note: expect.stringMatching(/^copy\.zip is damaged: \d+ of \d+ records/),
    });
  });

  it('is refused in a sentence where the file is something else', async () => {
    expect(
      await jobOfCopy(Uint8Array.of(0x50, 0x4b, 5, 6, ...new Array<number>(18).fill(0)), asked),
    ).toMatchObject({
      kind: 'unusable',
      why: expect.stringMatching(/^copy\.zip is no copy made here\. .* Nothing was priced\.$/),
    });
  });
});
