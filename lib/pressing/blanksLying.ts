import { type LaidOut, type SpareStack, spareStacks } from '@/lib/job/spareStacks';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { laidOutOf } from './laidOutOf';

/** What became of the blanks of one size of one line so far. Pieces. */
export interface UsedBlanks {
  /** Found before they were pressed. */
  readonly faulty: number;
  /** Gone into the first press. */
  readonly entered: number;
  /** Still to go into it. */
  readonly toEnter: number;
  /** Faulty ones not among them; at any press. */
  readonly lost: number;
}

/** The blanks of one size of one line as they lie. Pieces. */
export interface BlanksOfSize extends LaidOut {
  /** Laid out beyond what all lines want that share the stack, and what is left of that; below 0 so many are lacking. */
  readonly spares: number;
  readonly sparesLeft: number;
  readonly isShared: boolean;
  /** Gone into the first press, and what lies before it for this line. Less than went in where more did than there were. */
  readonly came: number;
  /** Of those still to go in so many have none. */
  readonly short: number;
  /** Lost of this line, faulty ones among them. */
  readonly lost: number;
}

/**
 * Blanks lie in stacks that lines share. A line has first what was laid out for it, then what is left over of the others:
 * a spare is nobody's, and what another still needs is not taken.
 *
 * @returns what lies for a size of a line; nothing for one the standard does not know
 */
export function blanksLying(
  standard: Pick<RunStandard, 'works'>,
  usedOf: (of: LaidOut) => UsedBlanks,
): (of: Pick<LaidOut, 'jobId' | 'lineId' | 'size'>) => BlanksOfSize | undefined {
  const found = new Map(
    spareStacks(laidOutOf(standard)).flatMap((stack) =>
      lyingIn(stack, usedOf).map((one) => [keyOf(one), one]),
    ),
  );
  return (of) => found.get(keyOf(of));
}

// Helpers

function lyingIn(stack: SpareStack, usedOf: (of: LaidOut) => UsedBlanks): readonly BlanksOfSize[] {
  const uses = stack.of.map((of) => {
    const used = usedOf(of);
    return { of, used, there: of.take - used.faulty };
  });
  const pressedMore = Math.max(
    0,
    sum(uses, ({ used, there }) => used.entered - there),
  );
  const left = Math.max(
    0,
    sum(uses, ({ used, there }) => there - used.entered),
  );
  const own = shared(
    left,
    uses.map(({ used, there }) => Math.min(used.toEnter, Math.max(0, there - used.entered))),
  );
  const free = left - sum(own, (one) => one);
  const more = shared(
    free,
    uses.map(({ used }, at) => used.toEnter - (own[at] ?? 0)),
  );
  const spare = free - sum(more, (one) => one);
  // Who pressed more than was laid out for them took what was not there.
  const over = shared(
    pressedMore,
    uses.map(({ used, there }) => Math.max(0, used.entered - there)),
  );
  const sparesLeft = sum(uses, ({ used, there }) => there - used.entered - used.toEnter);
  return uses.map(({ of, used }, at) => {
    const given = (own[at] ?? 0) + (more[at] ?? 0);
    return {
      ...of,
      ...{ spares: stack.spares, sparesLeft, isShared: stack.isShared },
      came: used.entered - (over[at] ?? 0) + given + spare,
      short: used.toEnter - given,
      lost: used.lost + used.faulty,
    };
  });
}

/** @returns what each is given of so many, in turn */
function shared(many: number, wanted: readonly number[]): readonly number[] {
  let left = many;
  return wanted.map((want) => {
    const given = Math.min(left, want);
    left -= given;
    return given;
  });
}

const keyOf = ({ jobId, lineId, size }: Pick<LaidOut, 'jobId' | 'lineId' | 'size'>): string =>
  JSON.stringify([jobId, lineId, size]);

const sum = <Of>(all: readonly Of[], of: (one: Of) => number): number =>
  all.reduce((so, one) => so + of(one), 0);
