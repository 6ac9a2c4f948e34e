import { atLeast } from './enoughGood';

/** So many events among so many trials running. */
export interface WindowRule {
  readonly trials: number;
  readonly events: number;
}

/**
 * How likely a rule speaks up in one completed block, each trial for itself.
 *
 * @param chance of the event in one trial, 0 to 1
 * @returns the chance of at least so many events in the block: the binomial tail, exact
 */
export const blockAlarmChance = ({ trials, events }: WindowRule, chance: number): number =>
  atLeast(trials, events, chance);
