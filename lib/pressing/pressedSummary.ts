import { grouped } from '@/shared/grouped';
import type { PressFault } from '@/shared/tables/faults';
import type { PressedRun } from './foldPressings';

/** What came of one size of one line. Pieces. */
interface SizeMade {
  readonly jobId: string;
  readonly lineId: string;
  readonly lineName: string;
  readonly size: string;
  readonly wanted: number;
  /** Out of the last press. */
  readonly good: number;
  readonly seconds: number;
  /** Scrap of any press. */
  readonly lost: number;
}

/** What a run came to at the press. */
export interface PressedSummary {
  readonly sizes: readonly SizeMade[];
  readonly wanted: number;
  readonly good: number;
  readonly seconds: number;
  readonly lost: number;
  /** Still wanted; once nothing is left that can be pressed, no blank is left for them. */
  readonly toGo: number;
  /** Lost by fault, most first; null of those that nobody named. */
  readonly lostBy: readonly { readonly fault: PressFault | null; readonly pieces: number }[];
}

/** @returns counts by size and what was lost by fault, of all prints together */
export function pressedSummary({ turns }: Pick<PressedRun, 'turns'>): PressedSummary {
  const lines = [...grouped(turns, ({ jobId, lineId }) => `${jobId} ${lineId}`).values()];
  const sizes = lines.flatMap((prints): readonly SizeMade[] => {
    const last = prints.find(({ isLast }) => isLast);
    if (last === undefined) return [];
    const { jobId, lineId, lineName } = last;
    return last.counts.map(({ size, wanted, good, seconds }) => {
      const here = prints.flatMap(({ counts }) => counts.filter((one) => one.size === size));
      return { jobId, lineId, lineName, size, wanted, good, seconds, lost: sum(here, ({ scrap }) => scrap) };
    });
  });
  const faults = new Map<PressFault | null, number>();
  for (const { counts } of turns)
    for (const { scrapByFault } of counts)
      for (const [fault, pieces] of scrapByFault) faults.set(fault, (faults.get(fault) ?? 0) + pieces);
  return {
    sizes,
    wanted: sum(sizes, ({ wanted }) => wanted),
    good: sum(sizes, ({ good }) => good),
    seconds: sum(sizes, ({ seconds }) => seconds),
    lost: sum(sizes, ({ lost }) => lost),
    toGo: sum(sizes, ({ wanted, good }) => Math.max(0, wanted - good)),
    lostBy: [...faults]
      .map(([fault, pieces]) => ({ fault, pieces }))
      .toSorted((one, other) => other.pieces - one.pieces),
  };
}

// Helpers

const sum = <Of>(all: readonly Of[], of: (one: Of) => number): number =>
  all.reduce((so, one) => so + of(one), 0);
