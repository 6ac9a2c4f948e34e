import { describe, expect, it } from 'vitest';
import { carriedWith } from '@/lib/copies/carriedWith';
import { namedFiles } from '@/lib/copies/namedFiles';
import {
  certificate,
  clubDrafts,
  clubEntries,
  clubPapers,
  letter,
  receipt,
  signed,
} from '@/tests/fixtures/clubDocuments';
import { appKinds } from './copyTools';
import { emptyDevice, holding, leave, take } from './modelDevice';

const from = {
  drafts: new Map(clubDrafts().map((draft) => [draft.id, draft])),
  papers: clubPapers,
  entries: clubEntries,
};
const carried = carriedWith({ kind: 'order', id: 'order-1' }, from, appKinds);

describe('an order that is carried', () => {
  it('takes its customer, its jobs with their blanks and pictures, and the workshop along, and no other order', () => {
    expect(carried.drafts.map(({ kind, id }) => `${kind} ${id}`).toSorted()).toEqual([
      'artwork club-crest',
      'artwork hill-path',
      'blank white-shirt',
      'customer club',
      'job club-order',
      'order order-1',
      'workshop workshop',
    ]);
  });

  it('takes its papers along, and the version of a list that it is priced by without the list', () => {
    expect(carried.papers.map(({ id }) => id)).toEqual(['devicea1-1', 'devicea1-2']);
  });

  it('takes along what happened to it, its money, its payouts, its issuings, and what was taken back', () => {
    expect(carried.entries.map(({ count }) => count)).toEqual([
      20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 32, 33,
    ]);
  });

  it('takes the files along that its drafts and entries name', () => {
    const files = namedFiles([...carried.drafts, ...carried.papers, ...carried.entries]);
    const wanted = [letter, signed, certificate, receipt].map(({ attachment }) => ({
      ...{ sha256: attachment.fileId, name: attachment.fileName, bytes: attachment.bytes },
    }));
    expect(files).toEqual(wanted.toSorted((one, other) => (one.sha256 < other.sha256 ? -1 : 1)));
  });

  it('comes to an empty device with all of it, file by file', async () => {
    const files = new Map(
      [letter, signed, certificate, receipt].map(({ content, attachment }) => [attachment.fileId, content]),
    );
    const home = holding(emptyDevice('devicea1', 'A'), {
      ...{ drafts: [...from.drafts.values()], papers: from.papers, entries: from.entries, files },
    });
    const { bytes } = await leave(home, { kind: 'order', id: 'order-1' }, appKinds);
    const { device } = await take(emptyDevice('phone000', 'M'), bytes, { mode: 'beside' }, appKinds);
    expect([...device.files.keys()].toSorted()).toEqual([...files.keys()].toSorted());
    expect([...device.here.drafts.keys()].toSorted()).toEqual(carried.drafts.map(({ id }) => id).toSorted());
    expect(device.here.entries.map(({ count }) => count)).toEqual(carried.entries.map(({ count }) => count));
  });
});
