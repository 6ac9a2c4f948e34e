import type { WindowRule } from '@/lib/statistics/windowAlarms';

/**
 * How likely a rule that is judged after every trial, over the last so many, speaks up at least once: why alarms are
 * judged by the block.
 *
 * A Markov chain over what the window still holds: how long ago each of the last events was, those that have left the
 * window forgotten. Exact; a window of 30 with 4 events has 4,090 such patterns.
 *
 * @param chance of the event in one trial, 0 to 1
 * @param run trials in all
 */
export function rollingAlarmChance({ trials, events }: WindowRule, chance: number, run: number): number {
  if (events <= 0) return 1;
  if (trials < events) return 0;
  let quiet: ReadonlyMap<string, Pattern> = new Map([['', { ages: [], weight: 1 }]]);
  let spoken = 0;
  for (let trial = 0; trial < run; trial += 1) {
    const next = new Map<string, Pattern>();
    for (const { ages, weight } of quiet.values()) {
      const older = ages.map((age) => age + 1).filter((age) => age < trials);
      add(next, older, weight * (1 - chance));
      if (older.length + 1 >= events) spoken += weight * chance;
      else add(next, [0, ...older], weight * chance);
    }
    quiet = next;
  }
  return spoken;
}

// Helpers

interface Pattern {
  /** Trials since each event that the window still holds, the newest first. */
  readonly ages: readonly number[];
  readonly weight: number;
}

function add(patterns: Map<string, Pattern>, ages: readonly number[], weight: number): void {
  const key = ages.join(' ');
  patterns.set(key, { ages, weight: (patterns.get(key)?.weight ?? 0) + weight });
}
