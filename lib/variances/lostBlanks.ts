import type { BlankFault, Pressing } from '@/shared/schemas/making/runEvents';
import type { GoodsFault, PressFault } from '@/shared/tables/faults';

/** Blanks that went for one reason, and its share of the gap. */
export interface LostBlanks {
  /** `unknown` are those that were used and that nobody says anything of. */
  readonly at: 'press' | 'blank' | 'unknown';
  readonly fault: PressFault | GoodsFault | null;
  readonly pieces: number;
  /** Currency units, unrounded; all add to the gap. */
  readonly amount: number;
}

/**
 * What more or fewer blanks cost, shared over the reasons they went for, by pieces; the most first.
 *
 * @param gap of the use of blanks, currency units
 * @param unaccounted blanks used beyond those that came good or are noted as lost
 */
export function lostBlanks(
  gap: number,
  pressings: readonly Pressing[],
  blankFaults: readonly BlankFault[],
  unaccounted: number,
): readonly LostBlanks[] {
  const counts = new Map<string, Omit<LostBlanks, 'amount'>>();
  const add = (at: LostBlanks['at'], fault: LostBlanks['fault'], pieces: number) => {
    const key = `${at} ${fault}`;
    if (pieces > 0) counts.set(key, { at, fault, pieces: (counts.get(key)?.pieces ?? 0) + pieces });
  };
  for (const { result, fault } of pressings) if (result === 'scrap') add('press', fault, 1);
  for (const { fault, pieces } of blankFaults) add('blank', fault, pieces);
  add('unknown', null, unaccounted);
  const all = [...counts.values()].reduce((sum, { pieces }) => sum + pieces, 0);
  return [...counts.values()]
    .map((one) => ({ ...one, amount: (gap * one.pieces) / all }))
    .toSorted((one, other) => other.pieces - one.pieces);
}
