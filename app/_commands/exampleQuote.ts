import { COPY_FORMAT, COPY_FORMAT_VERSION } from '@/lib/copies/copySchemas';
import { CLUB_CUSTOMER_ID, CLUB_ENQUIRY_ID, clubCustomer, clubEnquiry } from '@/lib/examples/clubEnquiry';
import { clubEventDay } from '@/lib/examples/clubEventDay';
import { clubOrder } from '@/lib/examples/clubOrder';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { FILE_DAY } from '@/lib/examples/exampleFiles';
import type { DocumentKind } from '@/lib/kinds/draftFacts';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { noonOf } from '@/shared/days';

/** Which device wrote it; nobody has it, and no other example bears its id. */
const DEVICE = { id: 'exampleclubquote', letter: 'A' };

/** @returns the order of the worked example as a carried file has it, to be laid out for a reader. */
export function exampleQuote() {
  const wantedOn = clubEventDay(FILE_DAY);
  const { workshop, blanks, artworks, job } = clubOrder(FILE_DAY, wantedOn);
  const order = clubEnquiry(FIRST_JOB_ID, wantedOn);
  const drafts = [
    draft('order', CLUB_ENQUIRY_ID, order),
    draft('customer', CLUB_CUSTOMER_ID, clubCustomer),
    draft('job', FIRST_JOB_ID, job),
    ...Object.entries(blanks).map(([id, body]) => draft('blank', id, body)),
    ...Object.entries(artworks).map(([id, body]) => draft('artwork', id, body)),
    draft('workshop', 'workshop', workshop),
  ];
  const enquired = { what: 'enquired', number: { year: 2026, count: 14, letter: DEVICE.letter } };
  const used = new Set(Object.keys(artworks));
  const entries = [
    entry('orderEvent', { orderId: CLUB_ENQUIRY_ID, day: FILE_DAY, step: enquired }),
    ...exampleApprovals()
      .filter(({ body }) => used.has(body.artworkId))
      .map(({ kind, body }) => entry(kind, body)),
  ].map((one, at) => ({ entry: { ...one, id: `${DEVICE.id}-${at + 1}`, count: at + 1 } }));
  return {
    format: COPY_FORMAT,
    formatVersion: COPY_FORMAT_VERSION,
    asOf: FILE_DAY,
    what: { kind: 'order', id: CLUB_ENQUIRY_ID, name: order.name },
    madeAt: noonOf(FILE_DAY),
    device: DEVICE,
    madeOn: null,
    counts: { files: 0, drafts: drafts.length, papers: 0, entries: entries.length, unreadable: 0 },
    files: [],
    drafts,
    papers: [],
    entries,
    unreadable: [],
  };
}

// Helpers

const draft = (kind: DocumentKind, id: string, body: unknown) => ({
  draft: { id, kind, version: kinds[kind].version, revision: 1, updatedAt: noonOf(FILE_DAY), body },
  hashes: [],
});

const entry = (kind: 'orderEvent' | 'approval', body: unknown) => ({
  kind,
  version: entryKinds[kind].version,
  device: DEVICE.id,
  at: noonOf(FILE_DAY),
  body,
});
