import type { Job } from '@/shared/schemas/job';
import { learnedScrap } from './learnedScrap';

/** Scrap of a print as high as it may well be by what was logged. */
interface UpperScrap {
  readonly lineId: string;
  readonly placementId: string;
  /** Share of presses, 0 to 0.95. */
  readonly scrap: number;
}

/** More than so many no print may spoil. */
const MOST = 0.95;

/**
 * @param runs all that have a standard, the first begun first
 * @param day YYYY-MM-DD
 * @returns of a job the prints that presses were logged for, each with its upper bound of 90 %
 */
export function upperScrap(
  runs: Parameters<typeof learnedScrap>[0]['runs'],
  day: string,
): (job: Job) => readonly UpperScrap[] {
  const lessons = learnedScrap({ runs, documents: { jobs: [] }, day });
  return ({ lines }) =>
    lines.flatMap(({ id: lineId, blankId, placements }) =>
      placements.flatMap(({ id: placementId, pressId, position }) => {
        const lesson = lessons.find(
          ({ subject }) =>
            subject.of === 'scrap' &&
            subject.blankId === blankId &&
            subject.pressId === pressId &&
            subject.position === position,
        );
        return lesson?.upper == null ? [] : [{ lineId, placementId, scrap: Math.min(MOST, lesson.upper) }];
      }),
    );
}
