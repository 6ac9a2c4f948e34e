import type { Position } from '@/shared/schemas/blank';
import type { Placement } from '@/shared/schemas/job';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';

/**
 * The newest scrap taken over for a blank, at which a new placement of it begins.
 *
 * @param taken in force, in order
 * @returns of a press and a place; null where none was taken over
 */
export const measuredScrap =
  (taken: readonly RateTaken[], blankId: string) =>
  (pressId: string, position: Position): Placement['scrap'] => {
    const newest = taken.findLast(
      ({ subject }) =>
        subject.of === 'scrap' &&
        subject.blankId === blankId &&
        subject.pressId === pressId &&
        subject.position === position,
    );
    return newest === undefined
      ? null
      : {
          ...{ value: newest.value, unit: 'share', date: newest.day },
          ...{ origin: 'measured', count: newest.observations },
        };
  };
