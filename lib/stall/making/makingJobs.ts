import { firstDayOf } from '@/lib/stall/sellingDays';
import type { Job } from '@/shared/schemas/job';
import type { StallDay } from '@/shared/schemas/stallDay';
import { copyToPress, isIdle, jobWithPress } from './pressedJob';
import type { ToPress } from './toPress';

/** Why a job cannot take the numbers of a stall day itself. */
export type KeptWhy = 'done' | 'order' | 'promised' | 'otherDay' | 'idleLine' | 'otherLines';

/** A job that presses for a stall day. */
export interface MakingJob {
  /** The job whose lines the stall day names. */
  readonly designId: string;
  readonly designName: string;
  /** The job as it is to be. */
  readonly job: Job;
  /** The job that is there; null where one is to be made. */
  readonly jobId: string | null;
  /** Why it is not the design's own job; null where it is. */
  readonly why: KeptWhy | null;
  /** It says so already. */
  readonly isSet: boolean;
  readonly rows: readonly {
    readonly lineId: string;
    readonly line: string;
    readonly size: string;
    /** What the job says now; 0 of one that is still to be made. */
    readonly now: number;
    readonly press: number;
  }[];
}

interface MakingScene {
  readonly stallDay: StallDay;
  readonly press: readonly ToPress[];
  readonly jobs: Readonly<Record<string, Job>>;
  /** Jobs of orders. */
  readonly ofOrders: ReadonlySet<string>;
  /** Jobs that other stall days to come are made from. */
  readonly ofOtherDays: ReadonlySet<string>;
}

/**
 * Which jobs press what a stall day is short of. A job of one's own that is still a draft takes the numbers; beside one
 * that is made, promised to somebody or of another fair a job for this day alone is made, and found again by `made`.
 *
 * @returns a row for each job of which anything is to be pressed, in the order of `press`; those that are gone left out
 */
export function makingJobs(scene: MakingScene): readonly MakingJob[] {
  const taken = Object.values(scene.jobs).map(({ name }) => name);
  return [...new Set(scene.press.map(({ jobId }) => jobId))].flatMap((designId) => {
    const design = Object.hasOwn(scene.jobs, designId) ? scene.jobs[designId] : undefined;
    const press = scene.press.filter(({ jobId }) => jobId === designId);
    if (design === undefined || press.every((one) => one.press === 0)) return [];
    const making = makingJob(scene, { designId, design, press, taken });
    if (making.jobId === null) taken.push(making.job.name);
    return [making];
  });
}

// Helpers

interface Design {
  readonly designId: string;
  readonly design: Job;
  readonly press: readonly ToPress[];
  readonly taken: readonly string[];
}

function makingJob(scene: MakingScene, { designId, design, press, taken }: Design): MakingJob {
  const own = jobWithPress(design, press);
  const base = { designId, designName: design.name };
  const isMade = design.state === 'done' || design.archivedOn !== null;
  if (!isMade && sameQuantities(design, own) && lineWhy(design, press) === null) {
    return {
      ...base,
      jobId: designId,
      job: design,
      why: null,
      isSet: true,
      rows: rowsOf(own, design, press),
    };
  }
  const why = keptWhy(scene, designId, design, press);
  if (why === null) {
    return { ...base, jobId: designId, job: own, why, isSet: false, rows: rowsOf(own, design, press) };
  }
  const copy = copyToPress(design, press, {
    name: scene.stallDay.name,
    wantedOn: firstDayOf(scene.stallDay),
    taken,
  });
  const made = madeBefore(scene, designId);
  if (made === null) {
    return { ...base, jobId: null, job: copy, why, isSet: false, rows: rowsOf(copy, null, press) };
  }
  const [jobId, before] = made;
  const after = renewed(before, copy);
  // The same object as long as nothing in it changes.
  const isSet = sameQuantities(before, after);
  const job = isSet ? before : after;
  return { ...{ ...base, jobId, job, why, isSet }, rows: rowsOf(job, before, press) };
}

/** In the order in which a maker would name them. */
function keptWhy(
  { ofOrders, ofOtherDays }: MakingScene,
  designId: string,
  design: Job,
  press: readonly ToPress[],
): KeptWhy | null {
  if (design.state === 'done' || design.archivedOn !== null) return 'done';
  if (ofOrders.has(designId)) return 'order';
  const isOfSomebody = design.lines.some(
    ({ orderedQuantity, nameList }) => orderedQuantity !== null || nameList !== '',
  );
  if (design.state !== 'draft' || isOfSomebody) return 'promised';
  if (ofOtherDays.has(designId)) return 'otherDay';
  return lineWhy(design, press);
}

/** A line without pieces stops a job, and one of no stall day would be pressed along. */
function lineWhy(design: Job, press: readonly ToPress[]): KeptWhy | null {
  if (design.lines.some((line) => isIdle(line, press))) return 'idleLine';
  return design.lines.every(({ id }) => press.some(({ lineId }) => lineId === id)) ? null : 'otherLines';
}

/** @returns the job made for the day earlier that can still be changed. */
function madeBefore(
  { stallDay, jobs }: MakingScene,
  designId: string,
): readonly [id: string, job: Job] | null {
  for (const { jobId, of } of stallDay.made) {
    const job = of === designId && Object.hasOwn(jobs, jobId) ? jobs[jobId] : undefined;
    if (job !== undefined && job.state === 'draft' && job.archivedOn === null) return [jobId, job];
  }
  return null;
}

/** Lines that its maker has worked on keep everything but their quantities. */
const renewed = (before: Job, copy: Job): Job => ({
  ...before,
  lines: copy.lines.map((line) => {
    const own = before.lines.find(({ id }) => id === line.id);
    return own === undefined ? line : { ...own, quantities: line.quantities };
  }),
});

const rowsOf = (job: Job, before: Job | null, press: readonly ToPress[]): MakingJob['rows'] =>
  job.lines
    .filter(({ id }) => press.some(({ lineId }) => lineId === id))
    .flatMap(({ id, name, quantities }) =>
      quantities.map(({ size, quantity }) => ({
        ...{ lineId: id, line: name, size, press: quantity },
        now: quantityIn(before, id, size),
      })),
    )
    .filter(({ now, press: pieces }) => now > 0 || pieces > 0);

const quantityIn = (job: Job | null, lineId: string, size: string): number =>
  job?.lines.find(({ id }) => id === lineId)?.quantities.find((one) => one.size === size)?.quantity ?? 0;

/** Sizes of which none is wanted are the same as sizes that are not named. */
const sameQuantities = (one: Job, other: Job): boolean =>
  JSON.stringify(wantedOf(one)) === JSON.stringify(wantedOf(other));

const wantedOf = (job: Job) =>
  job.lines.map(({ id, quantities }) => [
    id,
    quantities
      .filter(({ quantity }) => quantity > 0)
      .map(({ size, quantity }) => [size, quantity] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  ]);
