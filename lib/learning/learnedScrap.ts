import { compareText } from '@/shared/compareText';
import type { Position } from '@/shared/schemas/blank';
import type { PressFault } from '@/shared/tables/faults';
import type { LearnedFrom, LearnedRun } from './learnedFrom';
import { learnedShare, PRIOR_PRESSES } from './learnedShare';
import type { LearnedPlace, Lesson } from './lesson';
import { measuredPlace } from './measuredRate';
import { eachPlacement } from './openPlacements';

/** What lessons of scrap are folded from: no result of a run is asked. */
type ScrapFrom = Pick<LearnedFrom, 'day'> & {
  readonly documents: Pick<LearnedFrom['documents'], 'jobs'>;
  readonly runs: readonly Omit<LearnedRun, 'result'>[];
};

interface Seen {
  readonly blankId: string;
  readonly pressId: string;
  readonly position: Position;
  readonly standard: number;
  presses: number;
  scrap: number;
  readonly faults: Map<PressFault | null, number>;
  readonly runIds: Set<string>;
}

/**
 * Scrap of each blank at each press and place: the standard of the first of these runs counted like 50 presses, and all
 * presses since. A press nobody noted counts for nothing.
 */
export function learnedScrap({ runs, documents, day }: ScrapFrom): readonly Lesson[] {
  const found = new Map<string, Seen>();
  for (const { runId, standard, facts } of runs) {
    for (const { jobId, lines } of standard.works) {
      for (const { lineId, blankId, placements } of lines) {
        for (const { placementId, pressId, position, scrap } of placements) {
          const own = facts.pressings.filter(
            ({ body }) => body.jobId === jobId && body.lineId === lineId && body.placementId === placementId,
          );
          if (own.length === 0) continue;
          const key = JSON.stringify([blankId, pressId, position]);
          const row = found.get(key) ?? {
            ...{ blankId, pressId, position, standard: scrap, presses: 0, scrap: 0 },
            faults: new Map<PressFault | null, number>(),
            runIds: new Set<string>(),
          };
          row.presses += own.length;
          for (const { body } of own) {
            if (body.result !== 'scrap') continue;
            row.scrap += 1;
            row.faults.set(body.fault, (row.faults.get(body.fault) ?? 0) + 1);
          }
          row.runIds.add(runId);
          found.set(key, row);
        }
      }
    }
  }
  return [...found.values()].map((row): Lesson => {
    const { blankId, pressId, position, standard, presses } = row;
    const { measured, upper, spread } = learnedShare(standard, PRIOR_PRESSES, row.scrap, presses);
    return {
      subject: { of: 'scrap', blankId, pressId, position },
      ...{ standard, measured, upper, spread, unit: 'share', observations: presses, seen: row.scrap },
      faults: partsOf(measured, row),
      runIds: [...row.runIds],
      places: eachPlacement(documents.jobs)
        .filter(
          (one) =>
            one.line.blankId === blankId &&
            one.placement.pressId === pressId &&
            one.placement.position === position,
        )
        .flatMap(({ jobId, line, placement }): readonly LearnedPlace[] =>
          measuredPlace(
            {
              ...{ kind: 'job', id: jobId, before: placement.scrap },
              path: ['lines', line.id, 'placements', placement.id, 'scrap'],
            },
            measured,
            'share',
            day,
            { count: presses },
          ),
        ),
    };
  });
}

// Helpers

/** The learned share, parted as its lost pieces are: what most were lost to first. */
const partsOf = (measured: number, { scrap, faults }: Seen): NonNullable<Lesson['faults']> =>
  [...faults]
    .map(([fault, pieces]) => ({ fault, pieces, share: (measured * pieces) / scrap }))
    .sort((one, other) => other.pieces - one.pieces || compareText(one.fault ?? '', other.fault ?? ''));
