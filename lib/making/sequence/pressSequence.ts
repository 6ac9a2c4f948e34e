import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { RunJob } from '@/lib/making/runPlan';
import { canonicalText } from '@/lib/stored/canonicalText';
import type { Placement } from '@/shared/schemas/job';
import { celsiusFromFahrenheit } from '@/shared/units';
import type { PressTurn } from './turns';
import { wantedFirst } from './wantedFirst';

/**
 * The order in which the prints of a run are pressed; common practice, from memory. A line keeps the press order of its
 * job. Among the prints that may come next: one of the same press and recipe, so that nothing is set anew; pieces with
 * names last; of lines with one side first, for they are done with; light ink before heavy; what is wanted sooner; else as
 * the jobs stand.
 */
export function pressSequence(jobs: readonly RunJob[]): readonly PressTurn[] {
  const left = jobs.flatMap((job) =>
    job.costed.laidOut.job.lines.map(
      (line): Waiting => ({ jobId: job.work.jobId, wanted: wantedFirst(job), line, slot: 0 }),
    ),
  );
  const turns: PressTurn[] = [];
  let setting: string | null = null;
  for (;;) {
    const open = left.filter(({ line, slot }) => slot < line.placements.length);
    const next = open.reduce<Waiting | null>(
      (best, one) => (best === null || comesBefore(one, best, setting) ? one : best),
      null,
    );
    const resolved = next?.line.placements[next.slot];
    if (next === null || resolved === undefined) return turns;
    const { placement } = resolved;
    const needed = settingOf(placement);
    turns.push({
      jobId: next.jobId,
      lineId: next.line.line.id,
      placementId: placement.id,
      name: placement.name,
      slot: next.slot,
      sameSetting: needed === setting,
    });
    setting = needed;
    next.slot += 1;
  }
}

// Helpers

interface Waiting {
  readonly jobId: string;
  readonly wanted: number;
  readonly line: ResolvedLine;
  slot: number;
}

/** Smaller comes first; one after another, the first that differs decides. */
function ranks({ line, slot, wanted }: Waiting, setting: string | null): readonly number[] {
  const resolved = line.placements[slot];
  if (resolved === undefined) return [];
  return [
    Number(line.line.nameList.trim() !== ''),
    Number(setting !== null && settingOf(resolved.placement) !== setting),
    Number(line.placements.length > 1),
    resolved.totalCoverage.value,
    wanted,
  ];
}

function comesBefore(one: Waiting, other: Waiting, setting: string | null): boolean {
  const [mine, theirs] = [ranks(one, setting), ranks(other, setting)];
  const at = mine.findIndex((rank, index) => rank !== theirs[index]);
  return at >= 0 && (mine[at] ?? 0) < (theirs[at] ?? 0);
}

/** What of a placement is set at the press. */
const settingOf = ({ pressId, recipe }: Placement): string =>
  canonicalText({
    pressId,
    celsius: Math.round(
      recipe.temperature.unit === 'C'
        ? recipe.temperature.value
        : celsiusFromFahrenheit(recipe.temperature.value),
    ),
    dwell: recipe.dwellSeconds,
    pressure: recipe.pressure,
    kpa: recipe.pressureKpa,
  });
