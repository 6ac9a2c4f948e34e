import type { BenchWork } from './benchWork';

type Stage = 'printer' | 'press' | 'hands';

/** How long a piece keeps each of them busy, min. */
export interface Pace {
  readonly each: Readonly<Record<Stage, number>>;
  /** The one that takes longest decides how fast the work goes. */
  readonly bottleneck: Stage;
}

/** Minutes of a whole job by who is busy. */
export interface StageMinutes {
  readonly pieces: number;
  readonly printer: number;
  readonly press: number;
  readonly hands: number;
}

/** @returns of jobs that are made together; null where no piece is made. */
export function paceOf(jobs: readonly StageMinutes[]): Pace | null {
  const sum = (of: keyof StageMinutes) => jobs.reduce((all, job) => all + job[of], 0);
  const pieces = sum('pieces');
  if (pieces <= 0) return null;
  const each = {
    printer: sum('printer') / pieces,
    press: sum('press') / pieces,
    hands: sum('hands') / pieces,
  };
  // Where two are alike it is the hands that are free for nothing else, then the press.
  const order: readonly Stage[] = ['hands', 'press', 'printer'];
  const bottleneck = order.reduce((most, stage) => (each[stage] > each[most] ? stage : most));
  return { each, bottleneck };
}

/** What has been done of an order. */
interface WorkDone {
  readonly printed: boolean;
  readonly pressed: boolean;
  readonly packed: boolean;
  readonly delivered: boolean;
}

/** @returns what is left of a job's work; what is noted later holds for all that comes before it. */
export function workLeft(work: BenchWork, done: WorkDone): BenchWork {
  const isPacked = done.packed || done.delivered;
  const isPressed = done.pressed || isPacked;
  const after = work.after.filter(({ what }) => !done.delivered && !(isPacked && what !== 'deliver'));
  return {
    before: done.printed || isPressed ? [] : work.before,
    press: isPressed ? null : work.press,
    after,
  };
}
