import { describe, expect, it } from 'vitest';
import { firstDocuments } from '@/app/_store/firstDocuments';
import { newDocuments } from '@/app/_store/newDocuments';
import { kinds } from '@/lib/kinds/kinds';
import { nothingLeft } from '@/lib/stored/leavingRecords';
import { readDocument } from '@/lib/stored/readDocument';

describe('firstDocuments', () => {
  it.each([
    ['a Wednesday', new Date(2026, 10, 25, 23, 59), '2026-12-11'],
    ['a Thursday', new Date(2026, 10, 26, 0, 1), '2026-12-18'],
    ['a Saturday', new Date(2026, 10, 28, 0, 1), '2026-12-18'],
    ['the end of a year', new Date(2026, 11, 31, 12), '2027-01-22'],
  ])('on %s are wanted on the first Friday sixteen days later or more', async (_day, visit, wantedOn) => {
    const documents = await firstDocuments(visit, 'en-US');
    const wanted = documents.map((document) => document.kind === 'job' && document.body.wantedOn);
    expect(wanted).toContain(wantedOn);
  });

  it('are all readable again once they are kept', async () => {
    const documents = newDocuments(await firstDocuments(new Date(2026, 10, 25), 'de-AT'), kinds, 1);
    const kept: readonly unknown[] = JSON.parse(JSON.stringify(documents));
    expect(kept.map((raw) => readDocument(raw, kinds))).toEqual(
      documents.map((document) => ({ state: 'readable', document, left: nothingLeft })),
    );
  });
});
