import type { StallAnswer, StallOutcome, StallPlanned } from '@/lib/stall/plan/stallPlanned';

/** A weather at one end, with that of each day. */
type End = Pick<StallOutcome, 'weather' | 'weatherIds'>;

/** What bringing fewer is said to do; every part of it is true of the plan. */
interface Fewer {
  readonly fewer: number;
  /** In the best weather, for which the maker brought more. */
  readonly best: End & { readonly profit: 'same' | 'more' };
  readonly worst: End & { readonly better: number };
}

/** A profit that differs by no more than this is the same to whoever earns it. */
const SAME_SHARE = 0.01;
/** Currency units. */
const SAME_AMOUNT = 5;

/**
 * Whether fewer pieces give up nothing in the best weather and lose less in the worst.
 *
 * @param mine with the maker's numbers
 * @param advice with the advice in place of some or all of them
 * @returns null where any part of it is not so
 */
export function sayFewer(
  mine: Pick<StallPlanned, 'pieces' | 'outcomes'>,
  advice: Pick<StallPlanned, 'pieces' | 'outcomes'>,
): Fewer | null {
  const fewer = mine.pieces - advice.pieces;
  const [best, worst] = [
    endsOf(mine.outcomes, advice.outcomes, 1),
    endsOf(mine.outcomes, advice.outcomes, -1),
  ];
  if (fewer <= 0 || best === null || worst === null || best.mine.factor === worst.mine.factor) return null;
  const more = best.advice.profit - best.mine.profit;
  const same = Math.max(SAME_AMOUNT, Math.abs(best.mine.profit) * SAME_SHARE);
  const better = worst.advice.profit - worst.mine.profit;
  if (more < -same || better <= 0) return null;
  return {
    fewer,
    best: { ...endOf(best.mine), profit: more > same ? 'more' : 'same' },
    worst: { ...endOf(worst.mine), better },
  };
}

/**
 * The range whose advice has the most to say for itself alone.
 *
 * @returns null where fewer of no range give up nothing
 */
export function fewerOfRange({
  mine,
  taking,
}: Pick<Extract<StallAnswer, { kind: 'planned' }>, 'mine' | 'taking'>):
  | (Fewer & { readonly rangeId: string })
  | null {
  const told = taking.flatMap((taken) => {
    const fewer = sayFewer(mine, taken);
    return fewer === null ? [] : [{ rangeId: taken.rangeId, ...fewer }];
  });
  return told.toSorted((one, other) => other.fewer - one.fewer)[0] ?? null;
}

// Helpers

const endOf = ({ weather, weatherIds }: StallOutcome): End => ({ weather, weatherIds });

/** The outcomes of both plans in the weather at one end that can be: 1 for that of the largest factor, −1 for the smallest. */
function endsOf(mine: readonly StallOutcome[], advice: readonly StallOutcome[], side: 1 | -1) {
  const [first] = mine
    .filter(({ chance }) => chance > 0)
    .toSorted((one, other) => side * (other.factor - one.factor));
  const same = advice.find(({ weatherIds }) => weatherIds.join() === first?.weatherIds.join());
  return first === undefined || same === undefined ? null : { mine: first, advice: same };
}
