import { describe, expect, it } from 'vitest';
import { documentRegistry } from '@/app/_store/documentRegistry';
import { firstDocuments } from '@/app/_store/firstDocuments';
import { newDocuments } from '@/app/_store/newDocuments';
import { readDocument } from '@/lib/stored/readDocument';

describe('firstDocuments', () => {
  it.each([
    ['a Wednesday', new Date(2026, 10, 25, 23, 59), '2026-12-11'],
    ['a Saturday', new Date(2026, 10, 28, 0, 1), '2026-12-15'],
    ['the end of a year', new Date(2026, 11, 31, 12), '2027-01-18'],
  ])('on %s are wanted twelve working days later', async (_day, visit, wantedOn) => {
    const documents = await firstDocuments(visit);
    const wanted = documents.map((document) => document.kind === 'job' && document.body.wantedOn);
    expect(wanted).toContain(wantedOn);
  });

  it('are all readable again once they are kept', async () => {
    const documents = newDocuments(await firstDocuments(new Date(2026, 10, 25)), documentRegistry, 1);
    const kept: readonly unknown[] = JSON.parse(JSON.stringify(documents));
    expect(kept.map((raw) => readDocument(raw, documentRegistry))).toEqual(
      documents.map((document) => ({ state: 'readable', document })),
    );
  });
});
