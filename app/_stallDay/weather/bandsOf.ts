import type { StallPlan } from '@/app/_stallDay/stallOnScreen';

interface Band {
  readonly weather: string;
  readonly chance: number;
  /** Profit with the advice, and with the maker's numbers. */
  readonly advice: number;
  readonly mine: number;
  /** px from the top. */
  readonly top: number;
  readonly height: number;
}

interface Bands {
  readonly bands: readonly Band[];
  readonly ticks: readonly number[];
  /** Where an amount lies across, as a share in percent. */
  readonly at: (amount: number) => string;
  /** px of all bands with the gaps between them. */
  readonly high: number;
}

const GAP_PX = 3;
/** More bands than these are too thin to tell apart: the most likely ones are drawn. */
const MOST = 8;

/** Lays the weathers of a plan out as bands, most likely first as they are told. */
export function bandsOf({ mine, advice }: StallPlan, allPx: number, leastPx: number): Bands {
  const shown = mine.outcomes
    .toSorted((one, other) => other.chance - one.chance)
    .slice(0, MOST)
    .map(({ weather, chance, profit }) => ({
      weather,
      chance,
      mine: profit,
      advice: advice.outcomes.find((one) => one.weather === weather)?.profit ?? profit,
    }));
  let top = 0;
  const bands = shown.map((band) => {
    const height = Math.max(leastPx, band.chance * allPx);
    const placed = { ...band, top, height };
    top += height + GAP_PX;
    return placed;
  });
  const ticks = ticksOf(bands.flatMap((band) => [band.mine, band.advice, 0]));
  const [first = 0, last = 1] = [ticks[0], ticks.at(-1)];
  return {
    bands,
    ticks,
    at: (amount) => `${((100 * (amount - first)) / (last - first)).toFixed(3)}%`,
    high: Math.max(0, top - GAP_PX),
  };
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
