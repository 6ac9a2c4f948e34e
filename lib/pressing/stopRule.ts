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
