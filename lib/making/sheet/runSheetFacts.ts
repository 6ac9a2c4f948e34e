import { type LaidOut, type SpareStack, spareStacks, stackFinder } from '@/lib/job/spareStacks';
import { type JobSheetFacts, jobSheetFacts, type SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import { laidOutOf } from '@/lib/pressing/laidOutOf';
import { pressTurns } from '@/lib/pressing/pressTurns';
import type { ClockPart, RunStandard } from '@/shared/schemas/making/runPapers';
import type { Cover } from '@/shared/schemas/making/supply';
import { factsAsFrozen, jobAsFrozen } from './asFrozen';

/** Blanks of a size for one line. */
interface SizeStack {
  readonly jobId: string;
  readonly lineId: string;
  readonly size: string;
  readonly wanted: number;
  /** Spares among them; of what several lines share, those the line is expected to need. */
  readonly take: number;
  /** Whoever they are for. */
  readonly spares: number;
  /** Several lines are made of the blank. */
  readonly isShared: boolean;
}

type Named = LaidOut & { readonly blankName: string };

interface RunPress {
  readonly jobId: string;
  /** Its sizes in the order in which they are pressed. */
  readonly of: SheetPlacement;
  /** When it is pressed, in each heating-up. */
  readonly times: readonly ClockPart[];
}

/** What the bench needs to know of a run. */
export interface RunSheetFacts {
  readonly jobs: readonly { readonly job: RunJob; readonly facts: JobSheetFacts }[];
  /** In the order in which they are pressed. */
  readonly stacks: readonly SizeStack[];
  /** Blanks and sizes that several lines share the spares of. */
  readonly shared: readonly SpareStack<Named>[];
  /** In the order of the press. */
  readonly presses: readonly RunPress[];
  readonly pieces: number;
  readonly take: number;
  readonly tests: number;
  readonly clock: readonly ClockPart[];
}

/** What a sheet goes by beside its jobs: their plan, or what was frozen as the run began. */
type SheetOf =
  | { readonly plan: Pick<RunPlan, 'clock' | 'sizes' | 'turns'>; readonly cover: Cover }
  | { readonly standard: RunStandard };

/**
 * What the sheet of a run says, in the order of the work. Every figure is of the plan and of the sums of its jobs, or of
 * the frozen standard.
 */
export function runSheetFacts(jobs: readonly RunJob[], of: SheetOf): RunSheetFacts {
  if ('plan' in of) {
    return factsOf(
      jobs.map((job) => ({ job, facts: factsOfJob(job) })),
      of.plan,
      blanksOfRun(jobs, of.cover),
    );
  }
  const { standard } = of;
  const found = jobs.flatMap((now) => {
    const frozen = standard.works.find(({ jobId }) => jobId === now.work.jobId);
    if (frozen === undefined) return [];
    const job = jobAsFrozen(now, standard);
    return [{ job, facts: factsAsFrozen(factsOfJob(job), frozen) }];
  });
  // Stacks of a job that is not here would stand beside none of its pieces.
  const isHere = (jobId: string) => found.some(({ job }) => job.work.jobId === jobId);
  const blanks = laidOutOf(standard).filter(({ jobId }) => isHere(jobId));
  return factsOf(found, { ...standard, turns: pressTurns(standard) }, blanks);
}

// Helpers

type Found = RunSheetFacts['jobs'];

const factsOfJob = ({ input, costed }: RunJob): JobSheetFacts =>
  jobSheetFacts(input, { layout: costed.laidOut.prints, costSheet: costed.sheet });

function factsOf(
  found: Found,
  plan: {
    readonly clock: RunSheetFacts['clock'];
    readonly sizes: RunPlan['sizes'];
    readonly turns: readonly Turn[];
  },
  blanks: readonly Named[],
): RunSheetFacts {
  const stackOf = stackFinder(blanks);
  const stacks = plan.sizes.flatMap(({ jobId, lineId, size }): readonly SizeStack[] => {
    const one = blanks.find((of) => of.jobId === jobId && of.lineId === lineId && of.size === size);
    if (one === undefined) return [];
    const { spares = 0, isShared = false } = stackOf(one) ?? {};
    return [{ jobId, lineId, size, wanted: one.wanted, take: one.take, spares, isShared }];
  });
  return {
    jobs: found,
    stacks,
    shared: spareStacks(blanks).filter(({ isShared }) => isShared),
    presses: plan.turns.flatMap((turn): readonly RunPress[] => {
      const { jobId, lineId, placementId } = turn;
      const of = found
        .find(({ job }) => job.work.jobId === jobId)
        ?.facts.placements.find((one) => one.lineId === lineId && one.placement.id === placementId);
      if (of === undefined) return [];
      const sizes = stacks.filter(
        (stack) =>
          stack.jobId === jobId &&
          stack.lineId === lineId &&
          of.sizes.some(({ size }) => size === stack.size),
      );
      return [{ jobId, of: { ...of, sizes }, times: timesOf(plan.clock, turn) }];
    }),
    pieces: sum(found.map(({ facts }) => facts.pieces)),
    take: sum(stacks.map((stack) => stack.take)),
    tests: sum(found.map(({ facts }) => facts.tests)),
    clock: plan.clock,
  };
}

type Turn = NonNullable<ClockPart['turn']>;

/** The parts of the clock at which a print is pressed, in each heating-up. */
const timesOf = (clock: readonly ClockPart[], { jobId, lineId, placementId }: Turn): readonly ClockPart[] =>
  clock.filter(
    ({ what, turn }) =>
      what === 'press' && turn?.jobId === jobId && turn.lineId === lineId && turn.placementId === placementId,
  );

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
