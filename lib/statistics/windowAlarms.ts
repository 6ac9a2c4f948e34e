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
export function blockAlarmChance({ trials, events }: WindowRule, chance: number): number {
  return 1 - atMostChance(events - 1, trials, chance);
}

/** @returns the chance of at most so many events in so many trials, exact up to rounding */
export function atMostChance(events: number, trials: number, chance: number): number {
  // Trial after trial: how many events there were, each count for itself. No factorial grows, nothing cancels.
  let counts: readonly number[] = [1];
  for (let trial = 0; trial < trials; trial += 1) {
    counts = Array.from({ length: Math.min(counts.length + 1, events + 1) }, (_, count) => {
      const stayed = (counts[count] ?? 0) * (1 - chance);
      return count === 0 ? stayed : stayed + (counts[count - 1] ?? 0) * chance;
    });
  }
  return events < 0 ? 0 : Math.min(1, sum(counts));
}

/**
 * How likely a rule that is judged after every trial, over the last so many, speaks up at least once.
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

const sum = (parts: readonly number[]): number => parts.reduce((total, part) => total + part, 0);
