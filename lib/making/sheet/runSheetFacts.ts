import { type JobSheetFacts, jobSheetFacts, type SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import { blanksOfJob } from '@/lib/making/standard/blanksOfJob';
import type { ClockPart } from '@/shared/schemas/runPapers';
import type { Cover } from '@/shared/schemas/supply';

/** Blanks of a size in one stack. */
interface SizeStack {
  readonly jobId: string;
  readonly lineId: string;
  readonly size: string;
  readonly wanted: number;
  /** Spares among them. */
  readonly take: number;
}

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
  /** In the order of the press. */
  readonly presses: readonly RunPress[];
  readonly pieces: number;
  readonly take: number;
  readonly tests: number;
  readonly clock: readonly ClockPart[];
}

/** What the sheet of a run says, in the order of the work; every figure is of the plan and of the sums of its jobs. */
export function runSheetFacts(
  jobs: readonly RunJob[],
  plan: Pick<RunPlan, 'clock' | 'sizes' | 'turns'>,
  cover: Cover,
): RunSheetFacts {
  const found = jobs.map((job) => ({
    job,
    facts: jobSheetFacts(job.input, {
      layout: job.costed.laidOut.prints,
      costSheet: job.costed.sheet,
    }),
  }));
  const blanks = jobs.flatMap((job) =>
    blanksOfJob(job, cover).map((one) => ({ jobId: job.work.jobId, ...one })),
  );
  const stacks = plan.sizes.flatMap(({ jobId, lineId, size }): readonly SizeStack[] => {
    const one = blanks.find((of) => of.jobId === jobId && of.lineId === lineId && of.size === size);
    return one === undefined ? [] : [{ jobId, lineId, size, wanted: one.wanted, take: one.take }];
  });
  const times = timesOf(plan);
  return {
    jobs: found,
    stacks,
    presses: plan.turns.flatMap(({ jobId, lineId, placementId }, turn): readonly RunPress[] => {
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
      return [{ jobId, of: { ...of, sizes }, times: times[turn] ?? [] }];
    }),
    pieces: sum(found.map(({ facts }) => facts.pieces)),
    take: sum(stacks.map((stack) => stack.take)),
    tests: sum(found.map(({ facts }) => facts.tests)),
    clock: plan.clock,
  };
}

// Helpers

/** The parts of the clock at which each turn is pressed: a session goes through the turns in their order. */
function timesOf({ clock, turns }: Pick<RunPlan, 'clock' | 'turns'>): readonly (readonly ClockPart[])[] {
  const times: ClockPart[][] = turns.map(() => []);
  const sessions = [...new Set(clock.flatMap(({ session }) => session ?? []))];
  let begin = 0;
  for (const session of sessions) {
    let at = begin;
    let first: number | null = null;
    const parts = clock.filter((one) => one.session === session && one.what === 'press');
    for (const [place, part] of parts.entries()) {
      const isIt = ({ name }: { readonly name: string }) => name === part.name;
      const later = turns.flatMap((turn, index) => (index > at && isIt(turn) ? [index] : []));
      // Two parts of one name are two prints of that name, as long as there are so many; else one with a break in it.
      const isNext: boolean = first === null || later.length >= parts.slice(place).filter(isIt).length;
      const here = turns[at];
      const next: number | undefined =
        (first === null || !isNext) && here !== undefined && isIt(here) ? at : later[0];
      if (next === undefined) continue;
      times[next]?.push(part);
      first ??= next;
      at = next;
    }
    begin = first ?? begin;
  }
  return times;
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
