import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { carHeld, type LeftInCar } from '@/lib/stall/car/carHeld';
import { pressedFor } from '@/lib/stall/car/dayMoves';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';

/** What stock and closed days say of a stall day. */
export interface StallBefore extends Pick<StallAsked, 'atHome' | 'madeForDay' | 'past'> {
  /** What closed days left in the car. */
  readonly left: readonly LeftInCar[];
}

/** Reads stock and closed days when they change alone: a key on the stall day changes neither, and both grow for years. */
export function useStallBefore(
  { piles, entries, papers }: Pick<ReadyWorkspace, 'piles' | 'entries' | 'papers'>,
  id: string,
): StallBefore {
  const { stockMove: moves } = entries;
  const { stallPlan, dayClose } = papers;
  const held = useMemo(() => carHeld({ piles, moves }, { dayClose }), [piles, moves, dayClose]);
  const atHome = useMemo(() => finishedFor(id, piles, held), [id, piles, held]);
  const madeForDay = useMemo(() => pressedFor(moves, id), [moves, id]);
  // A day that is planned teaches itself nothing.
  const past = useMemo(
    () => pastDaysOf(stallPlan, dayClose).filter(({ stallDayId }) => stallDayId !== id),
    [stallPlan, dayClose, id],
  );
  return { left: held.left, atHome, madeForDay, past };
}
