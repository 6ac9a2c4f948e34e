import { FURTHER_EFFORT } from '@/lib/packing/sheet/betterSheets';
import type { KnownLayouts, PackedSheets } from '@/shared/packedSheets';
import type { PlannedSheet } from './apartSheets';
import type { SharedQuestion } from './sharedQuestion';
import { firstSheets, furtherSheets, lengthOfAll } from './sharedSheets';

/** Layouts that are remembered; those not asked for the longest are forgotten. */
const MOST_REMEMBERED = 60;

interface Search {
  readonly first: PackedSheets;
  best: PackedSheets;
  /** Null once it has ended. */
  steps: Generator<PackedSheets | null, PackedSheets> | null;
}

/** What a job needs less than in its first layout. */
interface Spared {
  readonly sheets: number;
  /** Of a roll, mm; null for cut sheets. */
  readonly rollMm: number | null;
}

/** The shared sheets of a job as they are shown while better ones may be looked for. */
export interface SharedLook {
  /** True while a layout that needs less paper is looked for. */
  readonly isLooking: boolean;
  readonly spared: Spared;
  readonly drawn: readonly PlannedSheet[];
}

type Further = typeof furtherSheets;

/**
 * Looks for better layouts than those that are there at once, and remembers them: what one job has in common with the
 * next, and one edit with the one before, is looked for once, and goes on where it was left. The same questions end in
 * the same layouts, whatever was asked between.
 */
export class LayoutSearch {
  readonly #searches = new Map<string, Search>();
  readonly #further: Further;

  constructor(further: Further = furtherSheets) {
    this.#further = further;
  }

  /** @returns the best layouts so far; those that nobody asked before are found at once. */
  known(questions: readonly SharedQuestion[]): KnownLayouts {
    return Object.fromEntries(
      questions.flatMap((question, index) => {
        const search = this.#of(question, stepsFor(index, questions.length));
        return search === null ? [] : [[question.key, search.best] as const];
      }),
    );
  }

  /**
   * Looks on, a slice of some 10 ms at a time.
   *
   * @yields whether something better is known now
   */
  *goOn(questions: readonly SharedQuestion[]): Generator<boolean, void> {
    for (const [index, question] of questions.entries()) {
      const search = this.#of(question, stepsFor(index, questions.length));
      while (search !== null && search.steps !== null) {
        const { done, value } = search.steps.next();
        if (done === true) search.steps = null;
        const isBetter = value !== null && value !== search.best;
        if (value !== null) search.best = value;
        yield isBetter;
      }
    }
  }

  /** @returns whether there is anything left to look for. */
  isAtEnd(questions: readonly SharedQuestion[]): boolean {
    return questions.every(
      (question, index) => (this.#of(question, stepsFor(index, questions.length))?.steps ?? null) === null,
    );
  }

  /** @returns what looking on has spared the first of the questions so far; null where there is none. */
  spared(questions: readonly SharedQuestion[]): Spared | null {
    const [whole] = questions;
    const search = whole === undefined ? null : this.#of(whole, stepsFor(0, questions.length));
    if (whole === undefined || search === null) return null;
    const { first, best } = search;
    const { sheets, rollMm } = whole.apart;
    const length = (packed: PackedSheets) => Math.min(rollMm, lengthOfAll(packed, whole));
    return {
      sheets: Math.min(sheets, first.count) - Math.min(sheets, best.count),
      rollMm: whole.isRoll ? length(first) - length(best) : null,
    };
  }

  #of(question: SharedQuestion, steps: number): Search | null {
    const key = `${steps} ${question.key}`;
    const search = this.#searches.get(key) ?? this.#begun(question, steps);
    if (search === null) return null;
    this.#searches.delete(key);
    this.#searches.set(key, search);
    for (const oldest of this.#searches.keys()) {
      if (this.#searches.size <= MOST_REMEMBERED) break;
      this.#searches.delete(oldest);
    }
    return search;
  }

  #begun(question: SharedQuestion, steps: number): Search | null {
    const best = firstSheets(question);
    if (best === null) return null;
    // A bound that is met ends the search before it begins; of a roll it bounds the number of prints alone.
    const isBest = !question.isRoll && best.count <= best.lowerBound;
    return {
      first: best,
      best,
      steps: isBest ? null : this.#further(question, best, { ...FURTHER_EFFORT, steps }),
    };
  }
}

/** The job as a whole comes first and has half of the work; its lines by themselves share the rest. */
function stepsFor(index: number, questions: number): number {
  const { steps } = FURTHER_EFFORT;
  return questions === 1 ? steps : index === 0 ? steps / 2 : Math.floor(steps / 2 / (questions - 1));
}
