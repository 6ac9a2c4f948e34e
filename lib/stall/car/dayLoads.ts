import { daysInOrder } from '@/lib/stall/sellingDays';

interface WeighedDay {
  readonly day: string;
  readonly weight: number;
}

/**
 * What of some goods goes to the table for each day of selling. Goods are asked for on each day by its part of the
 * visitors, so each has its part of them; a part of a piece is there a day sooner and never a day late.
 *
 * @param pieces brought for all days together, whole
 * @returns whole pieces for each day as the days follow one another, which add up to all
 */
export function dayLoads(pieces: number, days: readonly WeighedDay[]): readonly number[] {
  const weights = daysInOrder({ days }).map(({ weight }) => weight);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  let [reached, loaded] = [0, 0];
  return weights.map((weight) => {
    reached += weight;
    // Weights such as 0.1 and 0.2 reach a whole piece a hair too far.
    const until = Math.min(pieces, Math.max(loaded, Math.ceil((pieces * reached) / all - NOISE)));
    const load = until - loaded;
    loaded = until;
    return load;
  });
}

/**
 * Of what is pressed for several days, how much each of them needs: what lies at home goes first.
 *
 * @param goods pieces brought and at home, whole
 * @returns pieces to press for each day as the days follow one another
 */
export function dayPresses(
  goods: readonly { readonly mine: number; readonly atHome: number }[],
  days: readonly WeighedDay[],
): readonly number[] {
  const pressed = daysInOrder({ days }).map(() => 0);
  for (const { mine, atHome } of goods) {
    let home = Math.max(0, atHome);
    for (const [at, load] of dayLoads(mine, days).entries()) {
      const used = Math.min(home, load);
      home -= used;
      pressed[at] = (pressed[at] ?? 0) + load - used;
    }
  }
  return pressed;
}

// Helpers

const NOISE = 1e-9;
