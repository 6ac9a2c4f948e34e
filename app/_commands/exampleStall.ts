import { COPY_FORMAT, COPY_FORMAT_VERSION } from '@/lib/copies/copySchemas';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import { FILE_DAY } from '@/lib/examples/exampleFiles';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { SPRING_FAIR_ID, springFair, springFairDay } from '@/lib/examples/springFair';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { DocumentKind } from '@/lib/kinds/draftFacts';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { planBody } from '@/lib/stall/plan/planBody';
import { planStall } from '@/lib/stall/plan/planStall';
import { noonOf } from '@/shared/days';
import { exampleFairDay } from './exampleFairDay';

/** Which device wrote it; nobody has it. */
const DEVICE = { id: 'exampleexample', letter: 'A' };

/** 120.00 in the tin. */
const FLOAT = [
  { value: 1, count: 40 },
  { value: 5, count: 8 },
  { value: 10, count: 4 },
];

/** @returns the worked fair as a carried file has it, planned, counted and closed, to be laid out for a reader. */
export function exampleStall(grid: Grid) {
  const shirts = fairShirts(FILE_DAY);
  const mugs = fairMugs(FILE_DAY);
  const { workshop } = shirts;
  const stallDay = springFair({
    day: FILE_DAY,
    fairDay: springFairDay(FILE_DAY),
    jobs: { 'fair-shirts': shirts.job, 'fair-mugs': mugs.job },
    times: 1,
    isMetric: false,
  });
  const artworks = { ...shirts.artworks, ...mugs.artworks };
  const drafts = [
    draft('stallDay', SPRING_FAIR_ID, stallDay),
    draft('job', 'fair-shirts', shirts.job),
    draft('job', 'fair-mugs', mugs.job),
    ...Object.entries(shirts.blanks).map(([id, body]) => draft('blank', id, body)),
    ...Object.entries(artworks).map(([id, body]) => draft('artwork', id, body)),
    draft('workshop', 'workshop', workshop),
  ];
  const approvals = exampleApprovals()
    .filter(({ body }) => Object.hasOwn(artworks, body.artworkId))
    .map(({ kind, body }, at) => ({
      ...{ id: `${DEVICE.id}-${at + 1}`, kind, version: entryKinds[kind].version },
      ...{ device: DEVICE.id, count: at + 1, at: noonOf(FILE_DAY), body },
    }));
  const jobs = [
    { jobId: 'fair-shirts', input: shirts },
    { jobId: 'fair-mugs', input: mugs },
  ];
  const answer = planStall(
    { day: FILE_DAY, stallDay, workshop, jobs, atHome: [], madeForDay: [], past: [] },
    grid,
  );
  const asked = { stallDayId: SPRING_FAIR_ID, day: FILE_DAY, stallDay, workshop, answer, float: FLOAT };
  const fixed = planBody(asked);
  if (fixed.kind === 'refused')
    throw new Error(`the worked fair cannot be fixed: ${JSON.stringify(fixed.obstacles)}`);
  const plan = fixed.body({ count: 1, letter: DEVICE.letter });
  const { papers, entries } = exampleFairDay({ plan, device: DEVICE, firstCount: approvals.length + 1 });
  const all = [...approvals, ...entries];
  return {
    format: COPY_FORMAT,
    formatVersion: COPY_FORMAT_VERSION,
    asOf: FILE_DAY,
    what: { kind: 'stallDay', id: SPRING_FAIR_ID, name: stallDay.name },
    madeAt: noonOf(FILE_DAY),
    device: DEVICE,
    madeOn: null,
    counts: {
      ...{ files: 0, drafts: drafts.length, papers: papers.length },
      ...{ entries: all.length, unreadable: 0 },
    },
    files: [],
    drafts,
    papers: papers.map((paper) => ({ paper })),
    entries: all.map((entry) => ({ entry })),
    unreadable: [],
  };
}

// Helpers

const draft = (kind: DocumentKind, id: string, body: unknown) => ({
  draft: { id, kind, version: kinds[kind].version, revision: 1, updatedAt: noonOf(FILE_DAY), body },
  hashes: [],
});
