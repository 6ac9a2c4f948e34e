import { COPY_FORMAT, COPY_FORMAT_VERSION } from '@/lib/copies/copySchemas';
import { CLUB_CUSTOMER_ID, CLUB_ENQUIRY_ID, clubCustomer, clubEnquiry } from '@/lib/examples/clubEnquiry';
import { clubEventDay } from '@/lib/examples/clubEventDay';
import { clubOrder } from '@/lib/examples/clubOrder';
import { CLUB_RUN_ID, clubRun, clubRunDay, clubRunNoted } from '@/lib/examples/clubRun';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { FILE_DAY } from '@/lib/examples/exampleFiles';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { DocumentKind } from '@/lib/kinds/draftFacts';
import { type EntryKind, entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { foundWorks } from '@/lib/making/foundWorks';
import { planRun } from '@/lib/making/planRun';
import { standardOf } from '@/lib/making/standard/standardOf';
import { sha256OfValue } from '@/lib/stored/sha256';
import { noonOf } from '@/shared/days';

/** Which device wrote it; nobody has it, and no other example bears its id: one beside it would lose what counts alike. */
const DEVICE = { id: 'exampleclubrun', letter: 'A' };
const MS_PER_MINUTE = 60_000;
const NOON = 720;
/** 17:50, before the press is hot. */
const BEGUN = 17 * 60 + 50;
/** 23:05, after all was noted. */
const CLOSED = 23 * 60 + 5;

/**
 * The run of the worked order as a carried file has it, begun, pressed, noted and closed, to be laid out for a reader.
 * Clocks are those of a place whose noon is that of UTC.
 */
export function exampleRun(grid: Grid) {
  const wantedOn = clubEventDay(FILE_DAY);
  const day = clubRunDay(wantedOn);
  const input = clubOrder(FILE_DAY, wantedOn);
  const order = clubEnquiry(FIRST_JOB_ID, wantedOn);
  const run = clubRun({ jobId: FIRST_JOB_ID, orderId: CLUB_ENQUIRY_ID }, day);
  const drafts = [
    draft('run', CLUB_RUN_ID, run),
    draft('order', CLUB_ENQUIRY_ID, order),
    draft('customer', CLUB_CUSTOMER_ID, clubCustomer),
    draft('job', FIRST_JOB_ID, input.job),
    ...Object.entries(input.blanks).map(([id, body]) => draft('blank', id, body)),
    ...Object.entries(input.artworks).map(([id, body]) => draft('artwork', id, body)),
    draft('workshop', 'workshop', input.workshop),
  ];
  let count = 0;
  const counted = (at: number) => {
    count += 1;
    return { id: `${DEVICE.id}-${count}`, device: DEVICE.id, count, at };
  };
  const entry = (kind: EntryKind, at: number, body: unknown) => ({
    ...counted(at),
    ...{ kind, version: entryKinds[kind].version, body },
  });
  const onDay = (minute: number) => Math.round(noonOf(day) + (minute - NOON) * MS_PER_MINUTE);
  const enquired = { what: 'enquired', number: { year: 2026, count: 14, letter: DEVICE.letter } };
  const used = new Set(Object.keys(input.artworks));
  const before = [
    entry('orderEvent', noonOf(FILE_DAY), { orderId: CLUB_ENQUIRY_ID, day: FILE_DAY, step: enquired }),
    ...exampleApprovals()
      .filter(({ body }) => used.has(body.artworkId))
      .map(({ kind, body }) => entry(kind, noonOf(FILE_DAY), body)),
  ];
  const number = { count: 1, letter: DEVICE.letter };
  const body = standardBody(grid, { input, run, number, day });
  const standard = {
    ...counted(onDay(BEGUN)),
    ...{ kind: 'runStandard', version: paperKinds.runStandard.version, series: `runStandard ${CLUB_RUN_ID}` },
    ...{ number, about: { kind: 'run', id: CLUB_RUN_ID }, sha256: sha256OfValue(body), file: null, body },
  };
  const step = (minute: number, what: unknown) =>
    entry('runStep', onDay(minute), { runId: CLUB_RUN_ID, standardId: standard.id, day, step: what });
  const entries = [
    ...before,
    entry('issuing', onDay(BEGUN), { paperId: standard.id }),
    step(BEGUN, { what: 'begun' }),
    ...clubRunNoted({ standardId: standard.id, jobId: FIRST_JOB_ID, day }).map((one) =>
      entry(one.kind, onDay(one.minute), one.body),
    ),
    step(CLOSED, { what: 'closed', note: '' }),
  ];
  return {
    format: COPY_FORMAT,
    formatVersion: COPY_FORMAT_VERSION,
    asOf: FILE_DAY,
    what: { kind: 'run', id: CLUB_RUN_ID, name: run.name },
    madeAt: onDay(CLOSED),
    device: DEVICE,
    madeOn: null,
    counts: { files: 0, drafts: drafts.length, papers: 1, entries: entries.length, unreadable: 0 },
    files: [],
    drafts,
    papers: [{ paper: standard }],
    entries: entries.map((one) => ({ entry: one })),
    unreadable: [],
  };
}

// Helpers

interface OfStandard {
  readonly input: ReturnType<typeof clubOrder>;
  readonly run: ReturnType<typeof clubRun>;
  readonly number: { readonly count: number; readonly letter: string };
  readonly day: string;
}

/** As the run's own screen freezes it. */
function standardBody(grid: Grid, { input, run, number, day }: OfStandard) {
  const found = foundWorks(run, () => input, grid);
  const planned = planRun({ run, found, bench: input.workshop, today: FILE_DAY });
  if (planned.kind === 'troubled')
    throw new Error(`the worked run cannot be planned: ${JSON.stringify(planned.troubles)}`);
  const jobs = found.flatMap((one) => (one.kind === 'costed' ? [one] : []));
  return standardOf({ runId: CLUB_RUN_ID, run, jobs, plan: planned.plan, number, issuedOn: day });
}

const draft = (kind: DocumentKind, id: string, body: unknown) => ({
  draft: { id, kind, version: kinds[kind].version, revision: 1, updatedAt: noonOf(FILE_DAY), body },
  hashes: [],
});
