import type { Recipe } from '@/shared/schemas/job';

/** What a piece goes through: heated dry, pressed, left to cool in place, lifted. */
export type PressPhase = 'heat' | 'press' | 'cool' | 'lift';

/** When a piece was begun; s since then are told by the clock of the device. */
export interface PressBegun {
  readonly phase: 'heat' | 'press';
  readonly at: number;
}

/** Where a piece is now. */
export interface PressMoment {
  readonly phase: PressPhase;
  /** Whole s until the phase is over, counted as a clock on the wall does; 0 once it is. */
  readonly secondsLeft: number;
  readonly secondsIn: number;
  /** 0 to 1; 1 once it is over. */
  readonly share: number;
  /** The phase is over and waits for a hand: the blank is hot, or the piece is to be lifted. */
  readonly isOver: boolean;
}

/**
 * @param now ms since 1970
 * @returns a clock that was set back counts as none gone
 */
export function pressMoment({ phase, at }: PressBegun, recipe: Recipe, now: number): PressMoment {
  const gone = Math.max(0, (now - at) / 1000);
  if (phase === 'heat') return within('heat', gone, recipe.preheatSeconds ?? 0, true);
  const { dwellSeconds } = recipe;
  const coolSeconds = recipe.steps.coolSeconds ?? 0;
  if (gone < dwellSeconds) return within('press', gone, dwellSeconds, false);
  if (gone < dwellSeconds + coolSeconds) return within('cool', gone - dwellSeconds, coolSeconds, false);
  return {
    phase: 'lift',
    secondsLeft: 0,
    secondsIn: Math.floor(gone - dwellSeconds - coolSeconds),
    share: 1,
    isOver: true,
  };
}

// Helpers

function within(phase: PressPhase, gone: number, seconds: number, isWaiting: boolean): PressMoment {
  const isOver = isWaiting && gone >= seconds;
  return {
    phase,
    secondsLeft: Math.max(0, Math.ceil(seconds - gone)),
    secondsIn: Math.floor(gone),
    share: seconds === 0 ? 1 : Math.min(1, gone / seconds),
    isOver,
  };
}
