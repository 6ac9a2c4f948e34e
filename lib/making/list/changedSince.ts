import { jobChangedSince } from '@/lib/making/standard/jobDigest';
import { sameValue } from '@/lib/merging/sameValue';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';

/** What a standard holds of a job, so that a change of it can be named. */
const changedParts = ['lines', 'pieces', 'blank', 'prints', 'recipe'] as const;
export type ChangedPart = (typeof changedParts)[number];

/** A job that is otherwise than when its run began. */
export interface JobSince {
  /** As it was called frozen. */
  readonly name: string;
  /** Removed, or on another device alone. */
  readonly isGone: boolean;
  /** What of it changed, as far as the standard holds it; none where only its prices and rates did. */
  readonly parts: readonly ChangedPart[];
}

/**
 * Jobs of a run that are otherwise than when it began, whether they still make a clock or not; what was frozen stays.
 *
 * @param frozen what the run is held against; null where it has not begun
 * @param inputOf the documents of a job as they are now; null where it is not here
 */
export function changedSince(
  frozen: Pick<RunStandard, 'works'> | null,
  inputOf: (jobId: string) => JobInput | null,
): readonly JobSince[] {
  return (frozen?.works ?? []).flatMap((work): readonly JobSince[] => {
    const input = inputOf(work.jobId);
    if (input === null) return [{ name: work.name, isGone: true, parts: [] }];
    return jobChangedSince(work, input)
      ? [{ name: work.name, isGone: false, parts: partsOf(work, input) }]
      : [];
  });
}

// Helpers

function partsOf(work: StandardWork, { job }: JobInput): readonly ChangedPart[] {
  const pairs = work.lines.flatMap((frozen) => {
    const now = job.lines.find(({ id }) => id === frozen.lineId);
    return now === undefined ? [] : [{ frozen, now }];
  });
  const prints = pairs.flatMap(({ frozen, now }) =>
    frozen.placements.map((print) => ({
      frozen: print,
      now: now.placements.find(({ id }) => id === print.placementId),
    })),
  );
  const changed: Readonly<Record<ChangedPart, boolean>> = {
    lines: pairs.length !== work.lines.length || job.lines.length !== work.lines.length,
    pieces: pairs.some(({ frozen, now }) => !sameValue(wantedOf(frozen.sizes), askedOf(now.quantities))),
    blank: pairs.some(({ frozen, now }) => frozen.blankId !== now.blankId),
    prints:
      pairs.some(({ frozen, now }) => frozen.placements.length !== now.placements.length) ||
      prints.some(
        ({ frozen, now }) =>
          now === undefined || now.artworkId !== frozen.artworkId || now.position !== frozen.position,
      ),
    recipe: prints.some(({ frozen, now }) => now !== undefined && !sameValue(frozen.recipe, now.recipe)),
  };
  return changedParts.filter((part) => changed[part]);
}

/** Pieces by size, those of which none are wanted left out. */
const wantedOf = (sizes: StandardWork['lines'][number]['sizes']): Readonly<Record<string, number>> =>
  bySize(sizes.map(({ size, wanted }) => [size, wanted]));

const askedOf = (
  quantities: JobInput['job']['lines'][number]['quantities'],
): Readonly<Record<string, number>> =>
  bySize(quantities.map(({ size, quantity }) => [size, Math.ceil(quantity)]));

const bySize = (pairs: readonly (readonly [string, number])[]): Readonly<Record<string, number>> =>
  Object.fromEntries(pairs.filter(([, pieces]) => pieces > 0));
