import type { WindowRule } from '@/lib/statistics/windowAlarms';
import { blockAlarmChance } from '@/lib/statistics/windowAlarms';
import type { PressedEntry } from './pressedEntry';

/** What is done about it: look closely; stop and find the cause; the recipe counts as proven no more. */
type AlarmAct = 'look' | 'stop' | 'unproven';

export interface AlarmRule extends WindowRule {
  readonly act: AlarmAct;
}

/** Scrap in a block of presses; common practice. */
export const alarmRules: readonly AlarmRule[] = [
  { act: 'look', trials: 10, events: 2 },
  { act: 'stop', trials: 20, events: 3 },
  { act: 'unproven', trials: 30, events: 4 },
];

/** What the limits are made for: at this share of scrap they are to stay quiet. */
export const BASE_SCRAP = 0.03;

/** @returns how likely a rule speaks up in one completed block although no more than the base share is spoiled */
export const falseAlarmChance = (rule: WindowRule): number => blockAlarmChance(rule, BASE_SCRAP);

/** A block in which a rule spoke up. */
export interface ScrapAlarm {
  readonly rule: AlarmRule;
  /** Places of its first and last press, from 0; the last may still be to come. */
  readonly from: number;
  readonly to: number;
  /** The press at which the limit was reached. */
  readonly at: PressedEntry;
  readonly scrap: number;
  /** No press of a later block of the rule was lifted yet. */
  readonly isOfLastBlock: boolean;
}

/**
 * Judges each block once, block after block: no window rolls. A block that has reached its limit has spoken up already,
 * for nothing that follows in it takes that back.
 *
 * @param pressed in the order in which they were lifted
 * @returns alarms by the press that gave them
 */
export function scrapAlarms(pressed: readonly PressedEntry[]): readonly ScrapAlarm[] {
  const places = new Map(pressed.map((entry, place) => [entry, place]));
  return alarmRules
    .flatMap((rule) => {
      const blocks = Math.ceil(pressed.length / rule.trials);
      return Array.from({ length: blocks }, (_, block): readonly ScrapAlarm[] => {
        const from = block * rule.trials;
        const lost = pressed.slice(from, from + rule.trials).filter(({ body }) => body.result === 'scrap');
        const at = lost[rule.events - 1];
        const told = { rule, from, to: from + rule.trials - 1, scrap: lost.length };
        return at === undefined ? [] : [{ ...told, at, isOfLastBlock: block === blocks - 1 }];
      }).flat();
    })
    .toSorted((one, other) => (places.get(one.at) ?? 0) - (places.get(other.at) ?? 0));
}
