import type { PressFault } from '@/shared/tables/faults';
import type { PressedEntry } from './pressedEntry';

/**
 * The same fault twice running stops the press, whatever the counts say; common practice. What cannot be named, and
 * what nobody has named yet, is no same fault.
 *
 * @param pressed of one print, in the order in which they were lifted
 * @returns the fault that the last two have; null where there is none
 */
export function faultTwiceRunning(pressed: readonly PressedEntry[]): PressFault | null {
  const [before, last] = [pressed.at(-2)?.body.fault ?? null, pressed.at(-1)?.body.fault ?? null];
  return last !== null && last !== 'other' && last === before ? last : null;
}

/**
 * How likely two of so many presses running are spoiled by chance alone. Where all are spoiled by one fault that is how
 * often the rule speaks up for nothing; with several faults it is less.
 *
 * @param presses whole, 0 or more
 * @param share of presses that are spoiled, each by itself
 */
export function twiceRunningChance(presses: number, share: number): number {
  // Without two running so far: the last one good, the last one spoiled.
  let [good, spoiled] = [1, 0];
  for (let press = 0; press < presses; press += 1)
    [good, spoiled] = [(good + spoiled) * (1 - share), good * share];
  return 1 - good - spoiled;
}
