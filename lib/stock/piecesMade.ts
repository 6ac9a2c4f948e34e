import type { Entry } from '@/shared/schemas/happened';
import type { Pressing } from '@/shared/schemas/runEvents';
import type { RunStandard } from '@/shared/schemas/runPapers';

/** What became of the blanks of one size in a run. */
export interface PiecesMade {
  readonly jobId: string;
  readonly lineId: string;
  readonly blankId: string;
  readonly isBrought: boolean;
  readonly size: string;
  readonly wanted: number;
  /** Went into the first press. */
  readonly begun: number;
  /** Lost at any press. */
  readonly spoiled: number;
  readonly good: number;
  readonly seconds: number;
  /** Begun, and neither lost nor through the last press; below 0 where more came out than went in. */
  readonly unfinished: number;
}

/**
 * Counts pieces from presses: a blank is begun at the first press of its line, and is what the last one says of it.
 *
 * @param pressings in force, in any order; the same entry twice counts once
 */
export function piecesMade(
  { works }: Pick<RunStandard, 'works'>,
  pressings: readonly Entry<'pressing', Pressing>[],
): readonly PiecesMade[] {
  const all = [...new Map(pressings.map((entry) => [entry.id, entry.body])).values()];
  return works.flatMap(({ jobId, lines }) =>
    lines.flatMap(({ lineId, blankId, isBrought, sizes, placements }) =>
      sizes.map(({ size, wanted }): PiecesMade => {
        const own = all.filter(
          (body) => body.jobId === jobId && body.lineId === lineId && body.size === size,
        );
        const first = placements.at(0)?.placementId;
        const last = placements.at(-1)?.placementId;
        const many = (is: (body: Pressing) => boolean) => own.filter(is).length;
        const begun = many(({ placementId }) => placementId === first);
        const spoiled = many(({ result }) => result === 'scrap');
        const good = many(({ placementId, result }) => placementId === last && result === 'good');
        const seconds = many(({ placementId, result }) => placementId === last && result === 'second');
        return {
          ...{ jobId, lineId, blankId, isBrought, size, wanted },
          ...{ begun, spoiled, good, seconds, unfinished: begun - spoiled - good - seconds },
        };
      }),
    ),
  );
}
