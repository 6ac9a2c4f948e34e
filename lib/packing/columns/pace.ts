import type { Work } from '@/lib/packing/box';

/** Steps between two pauses; some 4 ms. */
const STEPS_A_SLICE = 30_000;

/** Counts work down and says when it is time to hand the thread back. */
export class Pace {
  #pause: number;

  constructor(private readonly work: Work) {
    this.#pause = work.steps - STEPS_A_SLICE;
  }

  get left(): number {
    return this.work.steps;
  }

  /** @returns whether a slice of work is done since the last time it was */
  spend(steps: number): boolean {
    this.work.steps -= steps;
    if (this.work.steps > this.#pause) return false;
    this.#pause = this.work.steps - STEPS_A_SLICE;
    return true;
  }
}
