import type { StallPlan } from '@/app/_stallDay/stallOnScreen';

interface Band {
  /** Of its outcome: two weathers may bear one name. */
  readonly key: string;
  readonly weather: string;
  readonly chance: number;
  /** Profit with the advice, and with the maker's numbers. */
  readonly advice: number;
  readonly mine: number;
}

interface Bands {
  readonly bands: readonly Band[];
  /** How many weathers there are, drawn or not. */
  readonly all: number;
  readonly ticks: readonly number[];
  /** Where an amount lies across, as a share in percent. */
  readonly at: (amount: number) => string;
}

/** More bands than these are too thin to tell apart: the most likely ones are drawn. */
const MOST = 8;

/**
 * Lays the weathers of a plan out as bands, most likely first.
 *
 * @param nameOf what the weather of an outcome is called
 */
export function bandsOf(
  { mine, advice }: Pick<StallPlan, 'mine' | 'advice'>,
  nameOf: (outcome: StallPlan['mine']['outcomes'][number]) => string,
): Bands {
  const bands = mine.outcomes
    .toSorted((one, other) => other.chance - one.chance)
    .slice(0, MOST)
    .map((outcome): Band => {
      const key = outcomeKey(outcome);
      const advised = advice.outcomes.find((one) => outcomeKey(one) === key);
      const { chance, profit } = outcome;
      return { key, weather: nameOf(outcome), chance, mine: profit, advice: advised?.profit ?? profit };
    });
  const ticks = ticksOf(bands.flatMap((band) => [band.mine, band.advice, 0]));
  const [first = 0, last = 1] = [ticks[0], ticks.at(-1)];
  return {
    bands,
    all: mine.outcomes.length,
    ticks,
    at: (amount) => `${((100 * (amount - first)) / (last - first)).toFixed(3)}%`,
  };
}

/** @returns what tells outcomes of one plan apart. */
export const outcomeKey = ({ weatherIds }: { readonly weatherIds: readonly string[] }): string =>
  weatherIds.join(' ');

/**
 * The ticks whose figures have room side by side: every one, or every second and so on, zero always among them.
 *
 * @param labelPx room that the widest figure needs with the gap to its neighbour
 */
export function toldTicks(ticks: readonly number[], labelPx: number, rowPx: number): readonly number[] {
  const tickPx = rowPx / Math.max(1, ticks.length - 1);
  const every = Math.max(1, Math.ceil(labelPx / tickPx));
  const zero = ticks.indexOf(0);
  return ticks.filter((_, at) => (at - zero) % every === 0);
}

// Helpers

const STEPS = 5;

/** Round amounts from below the least to above the greatest, zero among them. */
function ticksOf(values: readonly number[]): readonly number[] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (least === most) return [0, 1];
  const raw = (most - least) / STEPS;
  const size = 10 ** Math.floor(Math.log10(raw));
  const step = size * ([1, 2, 5, 10].find((times) => times * size >= raw) ?? 10);
  const from = Math.floor(least / step);
  return Array.from({ length: Math.ceil(most / step) - from + 1 }, (_, place) => (from + place) * step);
}
