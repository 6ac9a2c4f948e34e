import type { LearnedFrom, LearnedRun } from './learnedFrom';
import type { LearnedPlace, Lesson } from './lesson';
import { measuredPlace } from './measuredRate';
import { eachPlacement } from './openPlacements';
import { shrunk } from './shrunk';

/** Minutes of the hands at one press, of each blank and place, where the clock says which print it was for. */
export function learnedPressMinutes({ runs, documents, day }: LearnedFrom): readonly Lesson[] {
  const rows = new Map<string, { readonly of: Timed; readonly all: Timed[] }>();
  for (const run of runs) {
    for (const timed of timedPresses(run)) {
      const key = JSON.stringify([timed.blankId, timed.position]);
      const row = rows.get(key) ?? { of: timed, all: [] };
      row.all.push(timed);
      rows.set(key, row);
    }
  }
  // What a job holds is without the allowance for rest, which its sums put on top; the clock and the standard have it in.
  const rest = 1 + (documents.workshop?.body.rates.restAllowance?.value ?? 0);
  return [...rows.values()].map(({ of, all }): Lesson => {
    const { blankId, position, standard } = of;
    const { measured, spread } = shrunk(
      standard,
      all.map(({ each }) => each),
    );
    return {
      subject: { of: 'minutes', element: 'presses', blankId, position },
      ...{ standard, measured, spread, unit: 'min', upper: null, seen: null, observations: all.length },
      runIds: all.map(({ runId }) => runId),
      places: eachPlacement(documents.jobs)
        .filter(({ line, placement }) => line.blankId === blankId && placement.position === position)
        .flatMap(({ jobId, line, placement }): readonly LearnedPlace[] =>
          measuredPlace(
            {
              ...{ kind: 'job', id: jobId, before: placement.handMinutes },
              path: ['lines', line.id, 'placements', placement.id, 'handMinutes'],
            },
            measured / rest,
            'min',
            day,
            { count: all.length },
          ),
        ),
    };
  });
}

// Helpers

interface Timed {
  readonly runId: string;
  readonly blankId: string;
  readonly position: LearnedRun['standard']['works'][number]['lines'][number]['placements'][number]['position'];
  readonly standard: number;
  readonly each: number;
}

/**
 * Pieces that nobody counted with the time are those that were pressed. A time says of which print it is, not of which
 * job: prints of a job and of its copy bear one id, and count as one.
 */
function timedPresses({ runId, standard, facts }: LearnedRun): readonly Timed[] {
  const prints = new Map<string, Omit<Timed, 'each'>>();
  for (const { blankId, placements } of standard.works.flatMap(({ lines }) => lines))
    for (const { placementId, position, handMinutes } of placements)
      if (!prints.has(placementId))
        prints.set(placementId, { runId, blankId, position, standard: handMinutes });
  return [...prints].flatMap(([placementId, print]): readonly Timed[] => {
    const hours = facts.hours
      .map(({ body }) => body)
      .filter((one) => one.element === 'presses' && one.placementId === placementId);
    const minutes = hours.reduce((sum, one) => sum + one.minutes, 0);
    const counted = hours.every(({ pieces }) => pieces !== null)
      ? hours.reduce((sum, { pieces }) => sum + (pieces ?? 0), 0)
      : facts.pressings.filter(({ body }) => body.placementId === placementId).length;
    return minutes === 0 || counted === 0 ? [] : [{ ...print, each: minutes / counted }];
  });
}
